package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

class KindTest {

  /** Of water-rich foods from the Choi-Okos polynomials: 1.3 to 1.6e-7 m2/s; bread, which is half air and starch, is below. */
  @ParameterizedTest
  @EnumSource
  void heat_gets_through_it_as_through_food(Kind kind) {
    double diffusivity = kind.body(kind.thickness()).material().diffusivity();

    assertThat(diffusivity).isBetween(kind == Kind.BREAD ? 1.0e-7 : 1.25e-7, 1.6e-7);
  }

  /** A loaf weighs 0.3 to 0.5 kg a litre, a batter or a stew about one: common practice. */
  @Test
  void bread_is_light() {
    assertThat(Kind.BREAD.body(Kind.BREAD.thickness()).material().density()).isBetween(300.0, 500.0);
    assertThat(Kind.CASSEROLE.body(Kind.CASSEROLE.thickness()).material().density()).isBetween(950.0, 1100.0);
  }

  /** A tray bake is cold enough to cut and fill in two hours: common practice. */
  @Test
  void a_thin_cake_is_about_as_warm_as_the_room_after_two_hours() {
    TemperatureProfile baked = TemperatureProfile.uniform(Kind.BREAD.body(Length.mm(30)), 95);

    double mean = baked.after(120, new Surroundings(Temperature.celsius(20), 10, 0)).mean();
    assertThat(mean).isBetween(20.0, 27.0);
  }

  @ParameterizedTest
  @EnumSource
  void its_middle_is_half_of_it_away(Kind kind) {
    assertThat(kind.body(kind.thickness()).half() * 2000).isEqualTo(kind.thickness().micrometres() / 1000.0);
  }
}
