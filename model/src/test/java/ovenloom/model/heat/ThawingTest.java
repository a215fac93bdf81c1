package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

class ThawingTest {

  private static final int FREEZER = -18;
  private static final double HOURS_A_DAY = 24;

  /** Still air in a fridge, W/(m2 K): around food in its wrapping, and around food without. */
  private static final double WRAPPED = 5;
  private static final double BARE = 8;

  /**
   * Plank's equation, as in ASHRAE Handbook Refrigeration 2006, chapter 10: melting alone, for slab, cylinder and sphere. Here
   * what has melted warms up as well, which takes longer: by less than the share of that heat.
   */
  @ParameterizedTest
  @CsvSource({"SLAB, 0.5, 0.125", "CYLINDER, 0.25, 0.0625", "SPHERE, 0.16667, 0.041667"})
  void ice_melts_as_fast_as_planks_equation_says(Shape shape, double p, double r) {
    Material meat = Kind.DENSE_ROAST.body(Length.mm(50)).material();
    Ice ice = ice(meat);
    double thick = 0.05;
    double seconds = meat.density() * ice.melting() / (4 - Ice.MELTS)
        * (p * thick / 20 + r * thick * thick / meat.conductivity());
    Body body = new Body(shape, thick / 2, meat);

    double hours = hours(TemperatureProfile.uniform(body, Ice.MELTS - 0.01), in(4, 20));

    double warmsUp = meat.heatCapacity() * (4 - Ice.MELTS) / ice.melting();
    assertThat(hours * 3600 / seconds).isBetween(0.99, 1 + warmsUp);
  }

  /** A heat balance: so long until it is at melting, at Newton's law of cooling, and so long until the air has brought its ice's heat. */
  @Test
  void thin_food_thaws_when_the_air_has_brought_the_heat_that_its_ice_takes_up() {
    Body body = new Body(Shape.SLAB, 0.0005, Kind.LIQUID.body(Length.mm(1)).material());
    Material soup = body.material();
    double air = 4;
    double perSecond = 10 / (soup.density() * body.half());

    double ramp = Math.log((air - FREEZER) / (air - Ice.MELTS))
        * ice(soup).heatCapacity() / perSecond;
    double melt = ice(soup).melting() / (perSecond * (air - Ice.MELTS));
    double hours = hours(TemperatureProfile.uniform(body, FREEZER), in(air, 10));

    assertThat(hours * 3600).isCloseTo(ramp + melt, within(60.0 + 0.02 * (ramp + melt)));
  }

  /** A heat balance: 0.75 x 96 K x 3.9 kJ less what the ice and the cold of the fourth part take up, over 3.9 kJ. */
  @Test
  void hot_stock_and_a_frozen_quarter_even_out_without_losing_heat() {
    Body stock = Kind.LIQUID.body(Length.mm(60));
    Material water = stock.material();
    TemperatureProfile hot = TemperatureProfile.uniform(stock, 95);
    TemperatureProfile frozen = TemperatureProfile.uniform(stock, FREEZER);
    double cold = ice(water).heatCapacity() * (Ice.MELTS - FREEZER) + ice(water).melting();
    double celsius = Ice.MELTS + (0.75 * 96 * water.heatCapacity() - 0.25 * cold) / water.heatCapacity();

    TemperatureProfile mixed = TemperatureProfile.together(stock, List.of(hot, hot, hot, frozen));

    assertThat(mixed.isFrozen()).isFalse();
    assertThat(mixed.middle()).isCloseTo(celsius, within(1e-6));
    assertThat(celsius).isBetween(45.0, 55.0);
  }

  @Test
  void as_much_ice_as_water_stays_at_melting_until_one_of_them_is_used_up() {
    Body stock = Kind.LIQUID.body(Length.mm(60));
    Material water = stock.material();
    double enough = ice(water).melting() / water.heatCapacity() / 2;

    TemperatureProfile mixed = TemperatureProfile.together(stock, List.of(
        TemperatureProfile.uniform(stock, Ice.MELTS + enough),
        TemperatureProfile.uniform(stock, Ice.MELTS - 1e-9)));

    assertThat(mixed.middle()).isCloseTo(Ice.MELTS, within(1e-6));
    assertThat(mixed.frozen()).isCloseTo(0.25, within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void what_is_stirred_or_put_into_another_dish_half_thawed_keeps_its_ice_and_its_temperature(Kind kind) {
    Body body = kind.body(Length.mm(40));
    TemperatureProfile half = TemperatureProfile.uniform(body, FREEZER).after(120, in(10, 20));
    TemperatureProfile stirred = half.stirred();

    for (Kind other : Kind.values()) {
      TemperatureProfile poured = half.reshaped(other.body(Length.mm(70)));
      assertThat(poured.frozen()).isCloseTo(stirred.frozen(), within(1e-9));
      assertThat(poured.middle()).isCloseTo(stirred.middle(), within(1e-9));
    }
    assertThat(stirred.middle()).isBetween((double) FREEZER, 10.0);
  }

  /** USDA, days in the fridge, row F35 of the facts; the bands overlap with what a wrapped and a bare bird take. */
  @ParameterizedTest(name = "{0} lb")
  @CsvSource({"8, 1, 3", "12, 3, 4", "16, 3, 5", "20, 4, 6", "24, 5, 6"})
  void a_turkey_thaws_in_the_fridge_in_as_many_days_as_published(double pounds, double least, double most) {
    TemperatureProfile bird = TemperatureProfile.uniform(turkey(pounds), FREEZER);

    assertThat(hours(bird, in(4, WRAPPED)) / HOURS_A_DAY).isGreaterThan(least);
    assertThat(hours(bird, in(4, BARE)) / HOURS_A_DAY).isLessThan(most);
  }

  /** USDA: from frozen at least half as long again, row F34; the laws of heat come near. */
  @ParameterizedTest(name = "{0} lb")
  @CsvSource({"8", "12", "16", "20", "24"})
  void a_turkey_roasts_nearly_half_as_long_again_from_frozen(double pounds) {
    Surroundings oven = new Surroundings(Temperature.fahrenheit(325), 20, 0.06);

    int thawed = minutes(TemperatureProfile.uniform(turkey(pounds), 4), oven);
    int frozen = minutes(TemperatureProfile.uniform(turkey(pounds), FREEZER), oven);

    assertThat(frozen / (double) thawed).isBetween(1.35, 1.5);
  }

  /** A rule that is wrong: were ice no more than cold water, a bird would thaw in hours. */
  @Test
  void without_the_heat_of_melting_a_turkey_would_thaw_before_the_day_is_over() {
    Body bird = turkey(16);
    Material meat = bird.material();
    Body dry = new Body(bird.shape(), bird.half(),
        new Material(meat.conductivity(), meat.density(), meat.heatCapacity()));
    TemperatureProfile food = TemperatureProfile.uniform(dry, FREEZER).after(24 * 60, in(4, BARE));

    assertThat(food.middle()).isGreaterThan(Ice.MELTS);
  }

  /** Four tenths of its weight are in the way of the heat, as for the roasting times. */
  private static Body turkey(double pounds) {
    double metres = Math.cbrt(pounds * 0.45359 * 0.4 / 1050 * 3 / (4 * Math.PI));
    return new Body(Shape.SPHERE, metres, Kind.WHOLE_BIRD.body(Length.mm(100)).material());
  }

  private static Ice ice(Material material) {
    Ice ice = material.ice();
    assertThat(ice).isNotNull();
    return Objects.requireNonNull(ice);
  }

  private static Surroundings in(double celsius, double coefficient) {
    return new Surroundings(Temperature.celsius(celsius), coefficient, 0);
  }

  private static double hours(TemperatureProfile start, Surroundings there) {
    TemperatureProfile now = start;
    int minutes = 0;
    while (now.isFrozen()) {
      now = now.after(1, there);
      minutes++;
    }
    return minutes / 60.0;
  }

  private static int minutes(TemperatureProfile start, Surroundings there) {
    TemperatureProfile now = start;
    int minutes = 0;
    while (now.middle() < 74) {
      now = now.after(1, there);
      minutes++;
    }
    return minutes;
  }

  /** Nothing freezes in half an hour in either, and of one of them that is known beforehand. */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void food_cools_alike_where_it_may_freeze_and_where_it_may_not(Shape shape) {
    TemperatureProfile hot = TemperatureProfile.uniform(
        new Body(shape, 0.03, Kind.DENSE_ROAST.body(Length.mm(50)).material()), 60);

    TemperatureProfile thawed = hot.after(30, in(Ice.MELTS, 20));
    TemperatureProfile maybe = hot.after(30, in(Ice.MELTS - 0.0001, 20));

    assertThat(maybe.middle()).isCloseTo(thawed.middle(), within(1e-3));
    assertThat(maybe.surface()).isCloseTo(thawed.surface(), within(1e-3));
  }
}
