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
import ovenloom.model.measure.Temperature;

class TemperatureProfileTest {

  private static final Material MEAT = new Composition(0.75, 0.20, 0.03, 0.005, 0, 0.015)
      .at(Temperature.celsius(40));
  private static final List<Shape> SHAPES = List.of(Shape.SLAB, Shape.CYLINDER, Shape.SPHERE);

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  /** Layer by layer as by the series of the heat equation, dry. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void dry_food_warms_and_cools_as_the_series_says(long seed) {
    var random = new Random(seed);
    Body body = body(random);
    double coefficient = 8 + 40 * random.nextDouble();
    double from = random.nextInt(90);
    double air = random.nextInt(200);
    Conduction series = new Conduction(body.shape(), body.biot(coefficient));
    TemperatureProfile food = TemperatureProfile.uniform(body, from);

    for (int minutes = 10; minutes <= 120; minutes += 10) {
      food = food.after(10, new Surroundings(Temperature.celsius(air), coefficient, 0));

      double fourier = MEAT.diffusivity() * minutes * 60 / (body.half() * body.half());
      double off = 0.01 * Math.abs(air - from);
      assertThat(food.middle()).isCloseTo(air + (from - air) * series.inTheMiddle(fourier), within(off));
      assertThat(food.surface()).isCloseTo(air + (from - air) * series.atTheSurface(fourier),
          within(2 * off));
    }
  }

  private static Body body(Random random) {
    double half = 0.012 + 0.06 * random.nextDouble();
    return new Body(SHAPES.get(random.nextInt(3)), half, MEAT);
  }

  private static Surroundings around(Random random) {
    return new Surroundings(Temperature.celsius(110 + random.nextInt(130)), 8 + 40 * random.nextDouble(),
        0.1 * random.nextDouble());
  }

  private static int minutesTo(double celsius, Body body, double from, Surroundings oven) {
    TemperatureProfile food = TemperatureProfile.uniform(body, from);
    int minutes = 0;
    while (food.middle() < celsius && minutes < 1000) {
      food = food.after(1, oven);
      minutes++;
    }
    return minutes;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void hotter_is_never_slower_deeper_never_faster_and_a_colder_start_never_faster(long seed) {
    var random = new Random(seed);
    Body body = body(random);
    Surroundings oven = around(random);
    double from = 3 + random.nextInt(20);
    double to = 45 + random.nextInt(25);
    int minutes = minutesTo(to, body, from, oven);

    Surroundings hotter = new Surroundings(oven.air().plusKelvins(10), oven.coefficient(), oven.wetness());
    Body deeper = new Body(body.shape(), body.half() * 1.1, MEAT);
    assertThat(minutesTo(to, body, from, hotter)).isLessThanOrEqualTo(minutes);
    assertThat(minutesTo(to, deeper, from, oven)).isGreaterThanOrEqualTo(minutes);
    assertThat(minutesTo(to, body, from - 3, oven)).isGreaterThanOrEqualTo(minutes);
  }

  /** Through whatever surrounds it, food is never hotter than the hottest nor, dry, colder than the coldest of it. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_heat_comes_from_nothing(long seed) {
    var random = new Random(seed);
    TemperatureProfile food = TemperatureProfile.uniform(body(random), 20);
    double least = 20;
    double most = 20;
    for (int stay = 0; stay < 6; stay++) {
      double air = random.nextInt(240) - 20;
      least = Math.min(least, air);
      most = Math.max(most, air);
      double before = food.mean();
      food = food.after(20, new Surroundings(Temperature.celsius(air), 20, 0));

      assertThat(food.middle()).isBetween(least - 1e-6, most + 1e-6);
      assertThat(food.surface()).isBetween(least - 1e-6, most + 1e-6);
      assertThat(food.mean()).isBetween(Math.min(before, least), Math.max(before, most));
    }
  }

  @Test
  void food_as_warm_as_what_surrounds_it_stays_so() {
    Body body = new Body(Shape.SLAB, 0.02, MEAT);

    TemperatureProfile food = TemperatureProfile.uniform(body, 4)
        .after(600, new Surroundings(Temperature.celsius(4), 10, 0));

    assertThat(food.middle()).isCloseTo(4, within(1e-9));
    assertThat(food.mean()).isCloseTo(4, within(1e-9));
  }

  /** Steam tables, from memory. */
  @ParameterizedTest(name = "{0} C")
  @CsvSource({"0, 611, 12", "20, 2339, 25", "60, 19940, 150", "100, 101325, 150"})
  void water_vapour_has_the_pressure_of_the_steam_tables(double celsius, double pascal, double off) {
    assertThat(Vapour.pressure(celsius)).isCloseTo(pascal, within(off));
  }

  /**
   * By the psychrometer's equation, with its usual constant of 0.00066 a kelvin from memory, air of 60 C with 1 kPa of vapour keeps
   * a wet bulb at 25.8 C.
   */
  @Test
  void a_wet_cloth_in_warm_dry_air_stays_as_cool_as_a_wet_bulb() {
    Body cloth = new Body(Shape.SLAB, 0.001, MEAT);

    TemperatureProfile wet = TemperatureProfile.uniform(cloth, 40)
        .after(120, new Surroundings(Temperature.celsius(60), 20, 1));

    assertThat(wet.surface()).isCloseTo(25.8, within(1.5));
  }
}
