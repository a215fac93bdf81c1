package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the printed tables and the worked examples of the textbooks of heat transfer. */
class ConductionTest {

  /** Cengel, Heat and Mass Transfer, table 4-2; Incropera, table 5.1. The cylinder's row is from memory. */
  @ParameterizedTest(name = "{0}, Biot {1}")
  @CsvSource({
      "SLAB, 0.01, 0.0998, 1.0017", "SLAB, 0.1, 0.3111, 1.0161", "SLAB, 0.5, 0.6533, 1.0701",
      "SLAB, 1, 0.8603, 1.1191", "SLAB, 2, 1.0769, 1.1785", "SLAB, 5, 1.3138, 1.2402",
      "SLAB, 10, 1.4289, 1.2620", "SLAB, 100, 1.5552, 1.2731", "SPHERE, 0.1, 0.5423, 1.0298",
      "SPHERE, 1, 1.5708, 1.2732", "SPHERE, 2, 2.0288, 1.4793", "SPHERE, 5, 2.5704, 1.7870",
      "SPHERE, 10, 2.8363, 1.9249", "SPHERE, 100, 3.1102, 1.9990", "CYLINDER, 1, 1.2558, 1.2071"})
  void the_first_term_is_as_printed(Shape shape, double biot, double lambda, double weight) {
    double[] first = new Conduction(shape, biot).firstTerm();

    assertThat(first[0]).isCloseTo(lambda, within(0.0002));
    assertThat(first[1]).isCloseTo(weight, within(0.0002));
  }

  private static double minutes(
      double radius, double h, double k, double diffusivity, double from, double to, double around) {
    double fourier = new Conduction(Shape.SPHERE, h * radius / k).until((around - to) / (around - from));
    return fourier * radius * radius / diffusivity / 60;
  }

  /** Cengel, the example "Boiling eggs": 865 s in the book, from one term and a printed table; 862 s by the whole series. */
  @Test
  void an_egg_of_five_centimetres_is_boiled_in_a_good_fourteen_minutes() {
    assertThat(60 * minutes(0.025, 1200, 0.627, 0.151e-6, 5, 70, 95)).isCloseTo(862, within(2.0));
  }

  /** Cengel and Ghajar, problem 4-70: 839 s by the series; one term alone, at Fourier 0.16, would say 845. */
  @Test
  void the_whole_series_is_summed_where_one_term_is_not_enough() {
    assertThat(60 * minutes(0.0275, 1400, 0.6, 0.14e-6, 8, 70, 97)).isCloseTo(1063, within(3.0));
    assertThat(60 * minutes(0.0275, 800, 0.607, 0.146e-6, 8, 60, 100)).isCloseTo(839, within(2.0));
  }

  /** Kreith, Principles of Heat Transfer: a roast of 1.5 kg as a sphere, 134 minutes, which is 40 minutes a pound. */
  @Test
  void a_roast_takes_what_the_book_says() {
    double diffusivity = 0.5 / (1000 * 4000);
    assertThat(minutes(0.0710, 18, 0.5, diffusivity, 20, 77, 163)).isCloseTo(134, within(1.34));
  }

  /** Cengel, example 4-4, a plate of brass; its chart is read as 282 C. */
  @Test
  void a_plate_of_brass_is_as_hot_outside_as_inside() {
    double biot = 120 * 0.02 / 110;
    double fourier = 33.9e-6 * 7 * 60 / (0.02 * 0.02);
    double surface = 500 - 480 * new Conduction(Shape.SLAB, biot).atTheSurface(fourier);

    assertThat(surface).isCloseTo(279.4, within(0.3));
  }

  /**
   * Chilled lasagna, covered, 5.0 to 5.7 cm deep, at 350 F: 75 to 90 min, Mississippi Recipes for Success, MRS 154. Worked out
   * from it: that needs 12 to 20 W/(m2 K).
   */
  @ParameterizedTest(name = "{0} m, h {1}")
  @CsvSource({"0.050, 12, true", "0.050, 15, true", "0.057, 16, true", "0.057, 20, true", "0.050, 11, false",
      "0.057, 21, false"})
  void a_chilled_lasagna_takes_as_long_as_published_in_an_oven_of_twelve_to_twenty(
      double depth, double h, boolean asPublished) {
    double half = depth / 2;
    double fourier = new Conduction(Shape.SLAB, h * half / 0.5).until((177.0 - 74) / (177 - 5));
    double minutes = fourier * half * half / 1.4e-7 / 60;

    assertThat(75 <= minutes && minutes <= 90).as("%.0f min", minutes).isEqualTo(asPublished);
  }

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void food_only_ever_gets_nearer_to_what_surrounds_it_the_surface_first(long seed) {
    var random = new Random(seed);
    Shape shape = List.of(Shape.SLAB, Shape.CYLINDER, Shape.SPHERE).get(random.nextInt(3));
    Conduction food = new Conduction(shape, Math.exp(random.nextDouble() * 8 - 3));
    double last = 1;
    for (double fourier = 0.01; fourier < 2; fourier *= 1.2) {
      double middle = food.inTheMiddle(fourier);

      assertThat(middle).isLessThanOrEqualTo(last + 1e-9);
      assertThat(food.atTheSurface(fourier)).isLessThanOrEqualTo(middle + 1e-9);
      last = middle;
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_stronger_oven_is_never_slower(long seed) {
    var random = new Random(seed);
    Shape shape = List.of(Shape.SLAB, Shape.CYLINDER, Shape.SPHERE).get(random.nextInt(3));
    double biot = 0.2 + 20 * random.nextDouble();
    double remains = 0.05 + 0.9 * random.nextDouble();

    assertThat(new Conduction(shape, biot * 1.1).until(remains))
        .isLessThan(new Conduction(shape, biot).until(remains));
  }
}
