package ovenloom.cli.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The colours of the page, on white paper and in the dark. What is drawn in them is told by words or by a pattern as well. Boxes
 * are the same in both, with dark letters in them.
 */
enum Palette {

  PAPER("#fffdf8", "#14181d"),
  INK("#1d2329", "#e8e4da"),
  FAINT("#5b6168", "#a9aeb4"),
  RULE("#cfc9bb", "#3d444c"),
  LINK("#7a3412", "#f2b48c"),
  NOW("#b3124b", "#ff8fb4"),
  BAND("#f3e6d6", "#3a2f25"),
  IN("#1d2329"),
  OVEN("#ef9f5b"),
  BURNER("#f6e59a"),
  COOK("#86b3e6"),
  SHELF("#cfeee8"),
  VESSEL("#b9a3b8");

  private final String light;
  private final String dark;

  Palette(String light, String dark) {
    this.light = light;
    this.dark = dark;
  }

  Palette(String always) {
    this(always, always);
  }

  String light() {
    return light;
  }

  String dark() {
    return dark;
  }

  /** As custom properties of a style sheet, {@code --oven} and so on, for both. */
  static String style() {
    return ":root{color-scheme:light dark;" + properties(Palette::light) + "}\n"
        + "@media screen and (prefers-color-scheme:dark){:root{" + properties(Palette::dark) + "}}\n";
  }

  private static String properties(Function<Palette, String> colour) {
    return Arrays.stream(values())
        .map(each -> "--" + each.name().toLowerCase(Locale.ROOT) + ":" + colour.apply(each) + ";")
        .collect(Collectors.joining());
  }
}
