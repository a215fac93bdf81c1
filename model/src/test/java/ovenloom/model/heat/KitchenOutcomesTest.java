package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.measure.Temperature;

/** What was measured and published of ovens and fridges comes out of the same laws. */
class KitchenOutcomesTest {

  static final double FRIDGE = 3;
  static final double FREEZER = -18;

  /** A wet surface that has crusted over, as that of a roast; fitted to what comes below. */
  private static final double CRUST = 0.1;

  /** The skin of a potato; fitted likewise. */
  private static final double SKIN = 0.045;

  private static final Material POTATO = new Composition(0.79, 0.02, 0.001, 0.16, 0.02, 0.009)
      .at(Temperature.celsius(60));
  private static final Material MEAT = new Composition(0.75, 0.20, 0.03, 0.005, 0, 0.015)
      .at(Temperature.celsius(60));
  private static final Material CHILI = new Material(0.55, 1000, 0.55 / (1000 * 1.4e-7));

  /** FDA Food Code 3-501.14(A): 135 F to 70 F within 2 h, and to 41 F within 6 h in all. */
  private static boolean coolsInTime(double depth, double air, double coefficient) {
    return hours(depth, air, coefficient, 21.11) <= 2 && hours(depth, air, coefficient, 5) <= 6;
  }

  static double hours(double depth, double air, double coefficient, double to) {
    Body pan = new Body(Shape.SLAB, depth / 2, CHILI);
    double fourier = new Conduction(Shape.SLAB, pan.biot(coefficient)).until((to - air) / (57.22 - air));
    return fourier * pan.half() * pan.half() / CHILI.diffusivity() / 3600;
  }

  /** Roberts, Olds, Shanklin, Sauer, Sneed, Food Protection Trends 33(1), 2013: chili and tomato sauce in steel pans. */
  @ParameterizedTest(name = "h {0}")
  @ValueSource(doubles = {12.1, 15, 18, 21, 23})
  void of_pans_of_chili_only_two_inches_in_a_walk_in_freezer_cool_in_time(double coefficient) {
    assertThat(coolsInTime(0.051, FREEZER, coefficient)).isTrue();
    assertThat(coolsInTime(0.076, FREEZER, coefficient)).isFalse();
    assertThat(coolsInTime(0.051, FRIDGE, coefficient)).isFalse();
    assertThat(coolsInTime(0.076, FRIDGE, coefficient)).isFalse();
  }

  /** Dickerson and Read, Cooling rates of foods, 1973: between once and twice as a power, and more where the air blows. */
  @ParameterizedTest(name = "h {0}")
  @CsvSource({"5, 1.14", "10, 1.24", "20, 1.39", "100, 1.76"})
  void twice_the_depth_takes_more_than_twice_and_less_than_four_times_as_long(double coefficient,
      double exponent) {
    double once = hours(0.05, FRIDGE, coefficient, 21.11);
    double twice = hours(0.10, FRIDGE, coefficient, 21.11);

    assertThat(Math.log(twice / once) / Math.log(2)).isCloseTo(exponent, within(0.05));
  }

  private static int minutes(Body body, double from, double to, Surroundings there) {
    TemperatureProfile food = TemperatureProfile.uniform(body, from);
    int minutes = 0;
    while (food.middle() < to) {
      food = food.after(1, there);
      minutes++;
    }
    return minutes;
  }

  static int potato(int fahrenheit) {
    Body body = new Body(Shape.SPHERE, 0.035, POTATO);
    return minutes(body, 20, 96, new Surroundings(Temperature.fahrenheit(fahrenheit), 17, SKIN));
  }

  /** Greatist, Basic baked potatoes: 50-60, 60-70, 70-90, 90-110 min at 400, 375, 350 and 325 F. */
  @Test
  void a_potato_takes_as_long_as_published_in_four_ovens() {
    int[] published = {55, 65, 80, 100};
    int[] ovens = {400, 375, 350, 325};

    IntStream.range(0, 4)
        .forEach(i -> assertThat((double) potato(ovens[i])).as("%d F", ovens[i])
            .isCloseTo(published[i], within(0.12 * published[i])));
    assertThat(potato(325) / (double) potato(400)).isBetween(1.43, 2.0);
  }

  /** The rule that time goes as the ratio of the degrees Fahrenheit would have 350 F take 1.14 times as long as 400 F. */
  @Test
  void time_does_not_go_by_the_ratio_of_degrees() {
    assertThat(potato(350) / (double) potato(400)).isGreaterThan(1.14 * 1.1);
  }

  static final Body RIB = new Body(Shape.SPHERE, 0.086, MEAT);
  static final Surroundings OVEN = new Surroundings(Temperature.celsius(163), 25, CRUST);

  /**
   * Three published times of one roast tell what it seems to be surrounded by at the end: 79 to 82 C in ovens of 149 to 163 C.
   * Cengel and Ghajar, problem 4-77; National Live Stock and Meat Board.
   */
  @Test
  void the_surface_of_a_roast_is_held_down_by_what_dries_off_it() {
    TemperatureProfile roast = TemperatureProfile.uniform(RIB, 4.5).after(200, OVEN);

    assertThat(roast.surface()).isBetween(77.0, 84.0);
  }

  /** Gisslen, Professional Cooking: 3 to 14 K of carry-over. Without evaporation it would be near 30. */
  @Test
  void a_roast_goes_on_warming_in_its_middle_once_it_is_out() {
    assertThat(carriedOver(OVEN)).isBetween(3.0, 14.0);
    assertThat(carriedOver(new Surroundings(OVEN.air(), 25, 0))).isGreaterThan(14);
  }

  static double carriedOver(Surroundings oven) {
    TemperatureProfile roast = TemperatureProfile.uniform(RIB, 4.5).after(minutes(RIB, 4.5, 60, oven), oven);
    double most = roast.middle();
    for (int rest = 0; rest < 90; rest++) {
      roast = roast.after(1, new Surroundings(Temperature.celsius(21), 10, oven.wetness()));
      most = Math.max(most, roast.middle());
    }
    return most - 60;
  }

  /**
   * USDA timetable for turkeys at 325 F, unstuffed, in hours. How much of the weight is in the way of the heat is fitted to one
   * of them; the rest follow.
   */
  @ParameterizedTest(name = "{0} lb")
  @CsvSource({"10, 2.75, 3.0", "13, 3.0, 3.75", "16, 3.75, 4.25", "19, 4.25, 4.5", "22, 4.5, 5.0"})
  void turkeys_of_all_weights_take_as_long_as_in_the_timetable(double pounds, double least, double most) {
    assertThat(turkey(pounds) / 60.0).isBetween(least, most);
  }

  @Test
  void no_turkey_takes_as_long_as_its_weight_alone_would_say() {
    double exponent = Math.log(turkey(22) / (double) turkey(10)) / Math.log(2.2);

    assertThat(exponent).isCloseTo(0.64, within(0.05));
    assertThat(turkey(16) / 60.0 * 22 / 16).isGreaterThan(5.0);
  }

  static int turkey(double pounds) {
    double metres = Math.cbrt(pounds * 0.45359 * 0.4 / 1050 * 3 / (4 * Math.PI));
    return minutes(new Body(Shape.SPHERE, metres, MEAT), 4, 74,
        new Surroundings(Temperature.fahrenheit(325), 20, 0.06));
  }
}
