package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast by WCAG 2.2, 1.4.3 and 1.4.11; how colours look to the colour-blind by Machado, Oliveira and Fernandes 2009, severity
 * 1.0, in linear RGB; how far apart they then are in CIE 1976 L*a*b*, D65.
 */
class PaletteTest {

  private static final Set<Palette> BOXES = EnumSet.of(
      Palette.OVEN, Palette.BURNER, Palette.COOK, Palette.SHELF, Palette.VESSEL);

  /** WCAG 2.2, 1.4.3. */
  private static final double TEXT = 4.5;

  /** WCAG 2.2, 1.4.11. */
  private static final double GRAPHICS = 3;

  /** A just noticeable difference is about 2.3 (Mahy, Van Eycken and Oosterlinck 1994); common practice asks for some times as much. */
  private static final double APART = 15;

  enum Eyes {
    USUAL,
    PROTANOPIA,
    DEUTERANOPIA,
    TRITANOPIA;

    private double[] matrix() {
      return switch (this) {
        case USUAL -> new double[]{1, 0, 0, 0, 1, 0, 0, 0, 1};
        case PROTANOPIA ->
          new double[]{0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
              1.051998};
        case DEUTERANOPIA ->
          new double[]{0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940,
              0.968881};
        case TRITANOPIA ->
          new double[]{1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
              0.303900};
      };
    }

    double[] see(double[] rgb) {
      double[] matrix = matrix();
      return IntStream.range(0, 3)
          .mapToDouble(row -> Math.clamp(
              IntStream.range(0, 3).mapToDouble(i -> matrix[3 * row + i] * rgb[i]).sum(), 0, 1))
          .toArray();
    }
  }

  private static double[] linear(String hex) {
    return IntStream.of(1, 3, 5)
        .mapToDouble(at -> Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0)
        .map(each -> each <= 0.04045 ? each / 12.92 : Math.pow((each + 0.055) / 1.055, 2.4))
        .toArray();
  }

  private static double luminance(String hex) {
    double[] rgb = linear(hex);
    return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
  }

  private static double contrast(String one, String other) {
    double brighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (brighter + 0.05) / (darker + 0.05);
  }

  private static double[] lab(double[] rgb) {
    double x = f((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.95047);
    double y = f(0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]);
    double z = f((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.08883);
    return new double[]{116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double f(double share) {
    return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
  }

  private static double apart(Palette one, Palette other, Eyes eyes) {
    double[] first = lab(eyes.see(linear(one.light())));
    double[] second = lab(eyes.see(linear(other.light())));
    return Math.sqrt(IntStream.range(0, 3).mapToDouble(i -> Math.pow(first[i] - second[i], 2)).sum());
  }

  @ParameterizedTest
  @EnumSource(names = {"INK", "FAINT", "LINK", "NOW"})
  void letters_can_be_read_on_paper_and_in_the_dark(Palette letters) {
    for (Function<Palette, String> shade : shades()) {
      assertThat(contrast(shade.apply(letters), shade.apply(Palette.PAPER))).isGreaterThan(TEXT);
      assertThat(contrast(shade.apply(Palette.INK), shade.apply(Palette.BAND))).isGreaterThan(TEXT);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"OVEN", "BURNER", "COOK", "SHELF", "VESSEL"})
  void letters_can_be_read_in_a_box_and_its_frame_be_seen(Palette box) {
    assertThat(contrast(box.light(), Palette.IN.light())).isGreaterThan(TEXT);
    assertThat(box.dark()).isEqualTo(box.light());
    assertThat(contrast(box.dark(), Palette.PAPER.dark())).isGreaterThan(GRAPHICS);
    assertThat(contrast(Palette.IN.light(), Palette.PAPER.light())).as("the frame").isGreaterThan(GRAPHICS);
  }

  @ParameterizedTest
  @EnumSource(Eyes.class)
  void boxes_are_told_apart_by_all_eyes(Eyes eyes) {
    for (Palette one : BOXES) {
      for (Palette other : BOXES) {
        if (one != other) {
          assertThat(apart(one, other, eyes)).as(one + " and " + other).isGreaterThan(APART);
        }
      }
    }
  }

  private static Iterable<Function<Palette, String>> shades() {
    return List.of(Palette::light, Palette::dark);
  }
}
