package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.audit.Packing.Rectangle;

class PackingTest {

  private static final Rectangle RACK = new Rectangle(55, 38);

  private static Rectangle size(long width, long depth) {
    return new Rectangle(width, depth);
  }

  @Test
  void an_empty_rack_holds_nothing_at_all() {
    assertThat(Packing.fits(List.of(), RACK, 1)).isTrue();
  }

  @Test
  void a_pan_as_large_as_the_rack_fits_and_a_hair_larger_it_does_not() {
    assertThat(Packing.fits(List.of(RACK), RACK, 1)).isTrue();
    assertThat(Packing.fits(List.of(size(56, 38)), RACK, 1)).isFalse();
    assertThat(Packing.fits(List.of(size(55, 39)), RACK, 1)).isFalse();
  }

  @Test
  void a_pan_may_be_turned() {
    assertThat(Packing.fits(List.of(size(38, 55)), RACK, 1)).isTrue();
    assertThat(Packing.fits(List.of(size(39, 55)), RACK, 1)).isFalse();
  }

  @Test
  void two_pans_of_27_stand_one_apart_on_55_and_pans_of_28_do_not() {
    assertThat(Packing.fits(List.of(size(27, 38), size(27, 38)), RACK, 1)).isTrue();
    assertThat(Packing.fits(List.of(size(27, 38), size(28, 38)), RACK, 1)).isFalse();
    assertThat(Packing.fits(List.of(size(27, 38), size(28, 38)), RACK, 0)).isTrue();
  }

  @Test
  void five_pans_stand_round_in_a_wheel_that_no_straight_cut_divides() {
    List<Rectangle> wheel = List.of(size(2, 1), size(2, 1), size(2, 1), size(2, 1), size(1, 1));

    assertThat(Packing.fits(wheel, size(3, 3), 0)).isTrue();
    assertThat(Packing.fits(wheel, size(5, 5), 1)).isTrue();
    assertThat(Packing.fits(wheel, size(4, 4), 1)).isFalse();
  }

  @Test
  void eight_pans_that_fill_the_rack_are_found_and_a_hair_more_is_refused() {
    List<Rectangle> pans = List.of(size(3, 5), size(4, 2), size(4, 3), size(2, 5), size(5, 4), size(4, 4),
        size(4, 5),
        size(5, 1));

    assertThat(Packing.fits(pans, size(9, 12), 0)).isTrue();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** What a seed puts on a small rack. */
  private record Load(List<Rectangle> pans, Rectangle rack, int gap) {

    static Load of(long seed) {
      Random random = new Random(seed);
      List<Rectangle> pans = new ArrayList<>();
      int count = 3 + random.nextInt(3);
      while (pans.size() < count) {
        pans.add(size(1 + random.nextInt(4), 1 + random.nextInt(4)));
      }
      return new Load(pans, size(5 + random.nextInt(3), 5 + random.nextInt(3)), random.nextInt(2));
    }

    boolean fits() {
      return Packing.fits(pans, rack, gap);
    }
  }

  /** Every rectangle in every place, one after another: slow, and plainly right. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_fits_is_what_fits_when_every_place_is_tried(long seed) {
    Load load = Load.of(seed);

    assertThat(load.fits()).isEqualTo(Everywhere.fits(load.pans(), load.rack(), load.gap()));
  }

  @Test
  void the_seeds_try_both_what_fits_and_what_does_not() {
    assertThat(seeds().filter(seed -> Load.of(seed).fits()).count()).isBetween(50L, 150L);
  }
}
