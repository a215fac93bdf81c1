package ovenloom.model.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Temperature;

/**
 * How hot raw food must be cooked in all its parts. What must be cooked hotter stands below in a fridge: keeping raw food
 * apart by how it is arranged is FDA Food Code 3-302.11(A)(1)-(2), and the order by cooking temperature is how health
 * services teach it.
 *
 * <p>Local codes and licensed practice come first.
 *
 * @param tag of the dish that has it in it
 * @param temperature inside, at least
 * @param seconds it is held, at least
 */
public record CookTo(String tag, Temperature temperature, int seconds, Source source) {

  private static final String RAW = "raw";

  /** The clauses were read in states' adoptions, which keep the Code's numbering. */
  private static Source foodCode(String section) {
    return new Source("FDA Food Code", "2017", section);
  }

  /**
   * Every tag that says how hot. An egg counts as one that is pooled or kept hot, which asks for more than one that is fried
   * and served.
   */
  public static final List<CookTo> ALL = List.of(
      new CookTo("raw poultry", Temperature.fahrenheit(165), 0, foodCode("3-401.11(A)(3)")),
      new CookTo("raw ground meat", Temperature.fahrenheit(155), 17, foodCode("3-401.11(A)(2)")),
      new CookTo("raw egg", Temperature.fahrenheit(155), 17, foodCode("3-401.11(A)(2)")),
      new CookTo("raw meat", Temperature.fahrenheit(145), 15, foodCode("3-401.11(A)(1)")),
      new CookTo("raw fish", Temperature.fahrenheit(145), 15, foodCode("3-401.11(A)(1)")));

  /** What the strictest of a dish's tags asks for; absent where nothing in it is raw. */
  public static @Nullable CookTo of(List<String> tags) {
    return tags.stream()
        .map(CookTo::of)
        .filter(Objects::nonNull)
        .max(Comparator.comparing(CookTo::temperature))
        .orElse(null);
  }

  /** Whether a tag says that something is raw, but not what, so that the most is asked of it. */
  public static boolean isOfUnknownFood(String tag) {
    return tag.startsWith(RAW) && ALL.stream().noneMatch(each -> each.tag().equals(tag));
  }

  /** Of raw food that is none of those above, the most is asked: it may be any. */
  private static @Nullable CookTo of(String tag) {
    if (!tag.startsWith(RAW)) {
      return null;
    }
    return ALL.stream().filter(each -> each.tag().equals(tag)).findFirst().orElse(ALL.getFirst());
  }
}
