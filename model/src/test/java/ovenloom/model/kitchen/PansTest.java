package ovenloom.model.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;

class PansTest {

  /** EN 631-1: so many of a part lie in the place of one 1/1 of 530 x 325 mm, in rows and columns. */
  @ParameterizedTest
  @CsvSource({"1/1,1,1", "1/2,2,1", "1/3,3,1", "1/4,2,2", "1/6,3,2", "1/9,3,3", "2/4,1,2"})
  void gastronorm_parts_tile_a_whole(String part, int along, int across) {
    Size size = pan("GN " + part);
    long longer = Math.max(size.width().micrometres(), size.depth().micrometres());
    long shorter = Math.min(size.width().micrometres(), size.depth().micrometres());

    boolean straight = along * longer <= 530_000 && across * shorter <= 325_000;
    boolean turned = along * shorter <= 530_000 && across * longer <= 325_000;
    assertThat(straight || turned).isTrue();
  }

  @Test
  void two_thirds_and_a_third_make_a_whole_and_two_wholes_a_double() {
    assertThat(pan("GN 2/3").width().micrometres() + pan("GN 1/3").depth().micrometres()).isEqualTo(530_000);
    assertThat(pan("GN 2/1").width().micrometres()).isEqualTo(2 * pan("GN 1/1").depth().micrometres());
    assertThat(pan("GN 2/1").depth()).isEqualTo(pan("GN 1/1").width());
  }

  @Test
  void the_depth_stands_behind_a_dash_and_is_one_of_the_standard() {
    assertThat(pan("GN 1/1-65").height()).isEqualTo(Length.mm(65));
    assertThat(pan("gn1/2-100 mm").height()).isEqualTo(Length.mm(100));
    assertThat(pan("GN 1/1").height()).isEqualTo(Length.mm(65));
    assertThat(Pans.size("GN 1/1-70")).isNull();
    assertThat(Pans.size("GN 1/5-65")).isNull();
  }

  @Test
  void two_half_sheets_make_a_full_one() {
    assertThat(2 * pan("half sheet").depth().micrometres())
        .isEqualTo(pan("full sheet").width().micrometres());
    assertThat(pan("half sheet").width()).isEqualTo(pan("full sheet").depth());
  }

  /** The outside of a full American steam table pan is 12 3/4 x 20 3/4 in: interchangeable with GN 1/1. */
  @Test
  void a_hotel_pan_takes_the_place_of_a_gastronorm_one_within_a_few_millimetres() {
    assertThat(Math.abs(pan("hotel pan").width().micrometres() - Length.in(20.75).micrometres()))
        .isLessThan(4_000);
    assertThat(Math.abs(pan("hotel pan").depth().micrometres() - Length.in(12.75).micrometres()))
        .isLessThan(4_000);
    assertThat(pan("half hotel pan 4 in").height()).isEqualTo(Length.in(4));
  }

  /** A 13 x 9 in dish is sold as 13 x 9 x 2 in. */
  @Test
  void a_dish_named_by_its_figures_has_them() {
    assertThat(pan("9x13 in dish")).isEqualTo(new Size(Length.in(9), Length.in(13), Length.in(2)));
    assertThat(pan("20 x 20 x 7 cm tin")).isEqualTo(new Size(Length.cm(20), Length.cm(20), Length.cm(7)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"serving dish", "grandmother's pan", "half hotel pan of soup", "dish", "GN", "9x13 dish"})
  void of_other_names_nothing_is_known(String name) {
    assertThat(Pans.size(name)).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Half Sheet", "half sheet pan", "roasting tin", "loaf tin", "Plate",
      "third hotel pan", "stock  pot"})
  void of_these_a_size_is_known(String name) {
    assertThat(Pans.size(name)).isNotNull();
  }

  private static Size pan(String name) {
    return Objects.requireNonNull(Pans.size(name), name);
  }
}
