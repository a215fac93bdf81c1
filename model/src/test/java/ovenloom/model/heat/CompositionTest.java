package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.measure.Temperature;

/** Choi and Okos 1986, in ASHRAE Handbook Refrigeration 2006, chapter 9; the values below are worked out from its table. */
class CompositionTest {

  private static final Composition WATER = new Composition(1, 0, 0, 0, 0, 0);
  private static final Composition LEAN_MEAT = new Composition(0.75, 0.20, 0.03, 0.005, 0, 0.015);
  private static final Composition POTATO = new Composition(0.79, 0.02, 0.001, 0.16, 0.02, 0.009);

  @ParameterizedTest(name = "at {0} C")
  @CsvSource({"20, 0.6037, 995.74, 4176.6, 1.4515e-7", "50, 0.6425, 987.94, 4185.3, 1.5537e-7"})
  void water_is_as_in_the_table(
      double celsius, double conductivity, double density, double heatCapacity, double diffusivity) {
    Material water = WATER.at(Temperature.celsius(celsius));

    assertThat(water.conductivity()).isCloseTo(conductivity, within(0.0001));
    assertThat(water.density()).isCloseTo(density, within(0.01));
    assertThat(water.heatCapacity()).isCloseTo(heatCapacity, within(0.1));
    assertThat(water.diffusivity()).isCloseTo(diffusivity, within(0.0002e-7));
  }

  @Test
  void lean_meat_and_potato_are_as_worked_out_from_it() {
    isClose(LEAN_MEAT.at(Temperature.celsius(20)), 0.522, 1056, 3624, 1.36e-7);
    isClose(POTATO.at(Temperature.celsius(20)), 0.548, 1076, 3644, 1.40e-7);
    assertThat(LEAN_MEAT.at(Temperature.celsius(60)).conductivity()).isCloseTo(0.567, within(0.001));
    assertThat(LEAN_MEAT.at(Temperature.celsius(60)).diffusivity()).isCloseTo(1.49e-7, within(0.005e-7));
  }

  private static void isClose(Material material, double k, double density, double heatCapacity,
      double diffusivity) {
    assertThat(material.conductivity()).isCloseTo(k, within(0.001));
    assertThat(material.density()).isCloseTo(density, within(1.0));
    assertThat(material.heatCapacity()).isCloseTo(heatCapacity, within(3.0));
    assertThat(material.diffusivity()).isCloseTo(diffusivity, within(0.006e-7));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void heat_gets_through_all_food_rich_in_water_alike(long seed) {
    var random = new Random(seed);
    double water = 0.7 + 0.2 * random.nextDouble();
    double protein = (1 - water) * random.nextDouble();
    Composition food = new Composition(water, protein, 0, 1 - water - protein, 0, 0);

    assertThat(food.at(Temperature.celsius(20)).diffusivity()).isCloseTo(1.45e-7,
        Percentage.withPercentage(10));
  }

  @Test
  void shares_that_do_not_add_up_are_refused() {
    assertThatThrownBy(() -> new Composition(0.7, 0.2, 0, 0, 0, 0)).hasMessageContaining("add up to 0.8");
    assertThatThrownBy(() -> new Composition(1.1, -0.1, 0, 0, 0, 0)).hasMessageContaining("-0.1");
  }
}
