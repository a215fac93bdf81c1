package ovenloom.model.kitchen;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Size;

/**
 * How large a pan is that is called by a name the trade knows. Outside measures, without handles that stick out; a file
 * that says otherwise is right.
 */
public final class Pans {

  /** Plan sizes of EN 631-1, millimetres. */
  private static final Map<String, Size> GASTRONORM = Map.of(
      "2/1", mm(650, 530), "1/1", mm(530, 325), "2/3", mm(354, 325), "2/4", mm(530, 162), "1/2", mm(325, 265),
      "1/3", mm(325, 176), "1/4", mm(265, 162), "1/6", mm(176, 162), "1/9", mm(176, 108), "2/8",
      mm(325, 132));

  /** Depths of EN 631-1, millimetres. */
  private static final Set<Integer> GASTRONORM_DEPTHS = Set.of(10, 20, 40, 65, 100, 150, 200);

  /** A pan named without its depth. Common practice: the depth most often bought. */
  private static final int USUAL_DEPTH = 65;

  /** American steam table pans by the gastronorm size whose place they take; see the docs for their source. */
  private static final Map<String, String> HOTEL = Map.of("", "1/1", "full ", "1/1", "half ", "1/2", "third ",
      "1/3",
      "quarter ", "1/4", "sixth ", "1/6", "ninth ", "1/9");

  private static final Pattern GN = Pattern.compile("gn ?([12]/[1-9])(?:[- ]([0-9]{1,3})(?: ?mm)?)?");
  private static final Pattern HOTEL_PAN = Pattern.compile("(|[a-z]+ )hotel pan(?: (.+))?");
  private static final Pattern BY_FIGURES = Pattern.compile("(.+) (?:dish|pan|tin|tray)");
  private static final Map<String, Size> BY_NAME = byName();

  private Pans() {}

  /**
   * The size of a pan by its name: {@code GN 1/1-65}, {@code half sheet}, {@code half hotel pan 4 in},
   * {@code 9x13 in dish}, {@code loaf tin}; or null where the name says nothing of a size.
   */
  public static @Nullable Size size(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Size known = BY_NAME.get(plain.endsWith(" sheet pan") ? plain.replace(" pan", "") : plain);
    if (known != null) {
      return known;
    }
    Matcher gastronorm = GN.matcher(plain);
    if (gastronorm.matches()) {
      return gastronorm(gastronorm.group(1), gastronorm.group(2));
    }
    Matcher hotel = HOTEL_PAN.matcher(plain);
    if (hotel.matches()) {
      return hotel(hotel.group(1), hotel.group(2));
    }
    Matcher figures = BY_FIGURES.matcher(plain);
    return figures.matches() ? byFigures(figures.group(1)) : null;
  }

  private static @Nullable Size gastronorm(String plan, @Nullable String depth) {
    Size size = GASTRONORM.get(plan);
    int deep = depth == null ? USUAL_DEPTH : Integer.parseInt(depth);
    return size == null || !GASTRONORM_DEPTHS.contains(deep) ? null
        : new Size(size.width(), size.depth(), Length.mm(deep));
  }

  private static @Nullable Size hotel(String part, @Nullable String depth) {
    String plan = HOTEL.get(part);
    Size size = plan == null ? null : GASTRONORM.get(plan);
    Length deep = depth == null ? Length.in(2.5)
        : Length.read(depth.replace(" deep", "")) instanceof Parsed.Good<Length>(Length value) ? value : null;
    return size == null || deep == null ? null : new Size(size.width(), size.depth(), deep);
  }

  /** Two figures say nothing of the height; a baking dish is 2 in high (a 13 x 9 in dish is sold as 13 x 9 x 2). */
  private static @Nullable Size byFigures(String figures) {
    if (Size.read(figures) instanceof Parsed.Good<Size>(Size size)) {
      return size.height() == null ? new Size(size.width(), size.depth(), Length.in(2)) : size;
    }
    return null;
  }

  private static Map<String, Size> byName() {
    Map<String, Size> all = new LinkedHashMap<>();
    // American sheet pans, an inch high.
    all.put("full sheet", in(26, 18, 1));
    all.put("three-quarter sheet", in(21, 15, 1));
    all.put("half sheet", in(18, 13, 1));
    all.put("quarter sheet", in(13, 9.5, 1));
    all.put("eighth sheet", in(9, 6.5, 1));
    // Home baking ware by the figures cookbooks give.
    all.put("loaf tin", in(9, 5, 3));
    all.put("small loaf tin", in(8.5, 4.5, 2.5));
    all.put("ring tin", in(10, 10, 3.5));
    // Common practice, no source.
    all.put("pie dish", in(9, 9, 1.5));
    all.put("cake tin", in(9, 9, 2));
    all.put("springform tin", in(9.5, 9.5, 3));
    all.put("tart tin", in(10, 10, 1));
    all.put("muffin tin", in(14, 11, 1.5));
    all.put("ramekin", in(3.5, 3.5, 2));
    all.put("souffle dish", in(7.5, 7.5, 3.5));
    all.put("gratin dish", in(13, 9, 2));
    all.put("baking tray", in(15, 12, 1));
    all.put("roasting tin", in(16, 13, 3));
    all.put("small roasting tin", in(13, 10, 3));
    all.put("casserole", in(11, 9.5, 5.5));
    all.put("saucepan", in(8, 8, 4));
    all.put("small saucepan", in(6.5, 6.5, 3.5));
    all.put("stock pot", in(12, 12, 9));
    all.put("frying pan", in(12, 12, 2.5));
    all.put("bowl", in(11, 11, 5));
    all.put("small bowl", in(7, 7, 3));
    all.put("tub", in(12, 9, 6));
    all.put("basket", in(12, 9, 4));
    all.put("carving board", in(18, 12, 1.5));
    all.put("platter", in(16, 12, 2));
    all.put("plate", in(10.5, 10.5, 1));
    all.put("jug", in(6, 5, 8));
    return all;
  }

  private static Size mm(int width, int depth) {
    return new Size(Length.mm(width), Length.mm(depth));
  }

  private static Size in(double width, double depth, double height) {
    return new Size(Length.in(width), Length.in(depth), Length.in(height));
  }
}
