package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

class CoolingTest {

  private static final Temperature ROOM = Temperature.celsius(20);
  private static final Surroundings STILL = new Surroundings(ROOM, 10, 0);

  private static Cooling of(Body body, double wetness) {
    return Cooling.of(body, new Surroundings(ROOM, 10, wetness));
  }

  /** Cengel and Ghajar, chapter 4: above a Fourier number of 0.2 only the first term is left. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void what_gives_off_no_vapour_cools_by_the_first_term(Kind kind) {
    Body body = kind.body(Length.mm(50));
    double left = Math.exp(-body.coolingRate(10) * 40);

    assertThat(of(body, 0).after(40, 90)).isCloseTo(20 + 70 * left, within(1e-6));
    assertThat(of(body, 0).after(40, 5)).as("it warms").isCloseTo(20 - 15 * left, within(1e-6));
    assertThat(of(body, 0.25).after(40, 5)).as("it warms").isCloseTo(20 - 15 * left, within(1e-6));
  }

  /** Both are one law, solved in two ways: by layers, and by the first term alone. */
  @ParameterizedTest
  @CsvSource({"LIQUID, 60, 0.25", "LIQUID, 20, 0.25", "CASSEROLE, 50, 0.1", "WHOLE_BIRD, 130, 0.06",
      "DENSE_ROAST, 120, 0.1"})
  void with_vapour_it_is_as_warm_as_by_layers(Kind kind, double millimetres, double wetness) {
    Body body = kind.body(Length.mm(millimetres));
    Surroundings open = new Surroundings(ROOM, 10, wetness);
    TemperatureProfile layers = TemperatureProfile.uniform(body, 95).after(20, open);
    double began = layers.mean();

    for (int minutes = 10; minutes <= 60; minutes += 10) {
      layers = layers.after(10, open);
      assertThat(of(body, wetness).after(minutes, began)).as("%d min", minutes)
          .isCloseTo(layers.mean(), within(2.5));
    }
  }

  @Test
  void the_time_to_a_temperature_is_when_it_is_so_warm() {
    Cooling soup = of(Kind.LIQUID.body(Length.mm(60)), 0.25);

    assertThat(soup.after(soup.minutesTo(90, 60), 90)).isCloseTo(60, within(1e-6));
    assertThat(soup.minutesTo(60, 60)).isZero();
    assertThat(soup.minutesTo(60, 20)).isInfinite();
    assertThat(soup.after(10, soup.after(20, 90))).isCloseTo(soup.after(30, 90), within(1e-6));
  }

  /** Of water at 80 C in air at 20 C. By the analogy of heat and mass transfer (Lewis), from memory. */
  @Test
  void the_vapour_of_an_open_soup_takes_three_times_what_the_air_does_when_it_is_hot() {
    Surroundings open = new Surroundings(ROOM, 10, Kind.LIQUID.open());

    assertThat(open.takes(80) / 10).isBetween(3.5, 4.5);
    assertThat(open.takes(20)).as("as warm as the air").isEqualTo(10);
    assertThat(open.takes(5)).as("colder").isEqualTo(10);
    assertThat(open.takesAtMost(57, 21.1)).isGreaterThanOrEqualTo(open.takes(57));
    assertThat(open.takesAtMost(57, 21.1)).isGreaterThanOrEqualTo(open.takes(21.1));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void a_lid_lets_out_no_vapour_and_less_heat(Kind kind) {
    Surroundings under = new Surroundings(ROOM, 10, kind.open()).under(kind.lid());

    assertThat(under.wetness()).isZero();
    assertThat(under.coefficient()).isBetween(5.0, 9.0);
  }

  /** By hand: above 10 and 6 one behind the other are 3.75, below 10; half of each. */
  @Test
  void foil_over_a_roast_takes_away_a_third_of_what_the_air_does() {
    assertThat(STILL.under(Kind.DENSE_ROAST.lid()).coefficient()).isCloseTo((10 + 3.75) / 2, within(1e-9));
  }

  @Test
  void what_is_hotter_than_the_table_cools_as_at_its_first_row() {
    Cooling crust = of(Kind.BREAD.body(Length.mm(30)), 0.02);

    assertThat(crust.after(5, 200)).isBetween(crust.after(5, 139), 200.0);
    assertThat(crust.minutesTo(200, 60)).isGreaterThan(crust.minutesTo(139, 60));
  }
}
