package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RackFitTest {

  private static final int MM = 1_000;
  private static final int INCH = 25_400;
  private static final int ONE_CENTIMETRE = 10 * MM;

  private final Footprints footprints = new Footprints();

  private int mm(int width, int depth) {
    return footprints.number(width * MM, depth * MM);
  }

  private int inches(int width, int depth) {
    return footprints.number(width * INCH, depth * INCH);
  }

  private static int[] times(int count, int shape) {
    int[] shapes = new int[count];
    Arrays.fill(shapes, shape);
    return shapes;
  }

  private static boolean fits(RackFit rack, int... shapes) {
    return rack.fits(shapes, shapes.length);
  }

  // Source: Gastronorm plan sizes of EN 631-1. The quarters are taken as 162 mm wide; 163 mm, which
  // some makers print, would need 326 mm of the 325 mm.
  @ParameterizedTest(name = "{0} pans of {1} x {2} mm")
  @CsvSource({
      "2, 325, 265",
      "3, 325, 176",
      "4, 265, 162",
      "4, 325, 132",
      "6, 176, 162",
      "9, 176, 108",
      "2, 530, 162"
  })
  void a_full_gastronorm_pan_gives_room_to_n_pans_of_one_nth_and_not_to_one_more(
      int parts, int width, int depth) {
    var full = new RackFit(footprints, 530 * MM, 325 * MM, 0);
    int part = mm(width, depth);

    assertThat(full.fits(times(parts, part), parts)).isTrue();
    assertThat(full.fits(times(parts + 1, part), parts + 1)).isFalse();
  }

  @Test
  void two_thirds_and_one_third_fill_a_full_gastronorm_pan() {
    var full = new RackFit(footprints, 530 * MM, 325 * MM, 0);

    assertThat(fits(full, mm(354, 325), mm(325, 176))).isTrue();
    assertThat(fits(full, mm(354, 325), mm(325, 177))).isFalse();
  }

  @Test
  void a_double_gastronorm_pan_gives_room_to_two_full_ones() {
    var twice = new RackFit(footprints, 650 * MM, 530 * MM, 0);

    assertThat(fits(twice, mm(530, 325), mm(530, 325))).isTrue();
  }

  // Source: sheet pans of 18 x 26, 13 x 18 and 9 x 13 inches, two halves to a full one.
  @Test
  void two_half_sheets_make_a_full_sheet_and_two_quarters_a_half() {
    var full = new RackFit(footprints, 26 * INCH, 18 * INCH, 0);
    var half = new RackFit(footprints, 18 * INCH, 13 * INCH, 0);

    assertThat(fits(full, inches(13, 18), inches(13, 18))).isTrue();
    assertThat(fits(half, inches(9, 13), inches(9, 13))).isTrue();
    assertThat(fits(full, inches(13, 18), inches(13, 18), inches(1, 1))).isFalse();
  }

  @Test
  void the_gap_is_kept_between_two_pans_and_not_to_the_wall() {
    int pan = mm(200, 300);

    assertThat(fits(new RackFit(footprints, 410 * MM, 300 * MM, ONE_CENTIMETRE), pan, pan))
        .isTrue();
    assertThat(fits(new RackFit(footprints, 410 * MM - 1, 300 * MM, ONE_CENTIMETRE), pan, pan))
        .isFalse();
    assertThat(fits(new RackFit(footprints, 200 * MM, 300 * MM, ONE_CENTIMETRE), pan)).isTrue();
  }

  @Test
  void a_pan_is_turned_when_that_helps() {
    assertThat(fits(new RackFit(footprints, 300 * MM, 200 * MM, 0), mm(200, 300))).isTrue();
    assertThat(fits(new RackFit(footprints, 299 * MM, 200 * MM, 0), mm(200, 300))).isFalse();
  }

  @Test
  void four_long_tins_stand_round_a_square_one_like_the_sails_of_a_mill() {
    var rack = new RackFit(footprints, 300 * MM, 300 * MM, 0);
    int tin = mm(200, 100);

    assertThat(fits(rack, tin, tin, mm(100, 100), tin, tin)).isTrue();
    assertThat(fits(rack, tin, tin, mm(100, 101), tin, tin)).isFalse();
  }

  @Test
  void an_empty_rack_has_room_for_nothing() {
    assertThat(new RackFit(footprints, 1, 1, 0).fits(new int[0], 0)).isTrue();
  }

  @Test
  void forty_ramekins_find_a_layout_that_holds() {
    var rack = new RackFit(footprints, 700 * MM, 470 * MM, ONE_CENTIMETRE);
    int[] ramekins = times(40, mm(75, 75));

    var layout = Objects.requireNonNull(rack.layout(ramekins, 40));

    assertThat(layout.spots()).hasSize(40);
    LayoutCheck.holds(layout, footprints, ramekins, 700 * MM, 470 * MM, ONE_CENTIMETRE);
    assertThat(rack.fits(times(41, mm(75, 75)), 41)).isFalse();
  }

  @Test
  void a_rack_or_a_pan_without_a_width_or_a_depth_is_refused() {
    for (int[] none : new int[][]{{0, MM}, {MM, 0}, {-MM, MM}}) {
      assertThatThrownBy(() -> new RackFit(footprints, none[0], none[1], 0))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(none[0] + " x " + none[1]);
      assertThatThrownBy(() -> footprints.number(none[0], none[1]))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(none[0] + " x " + none[1]);
    }
    assertThatThrownBy(() -> new RackFit(footprints, MM, MM, -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("gap of -1");
  }
}
