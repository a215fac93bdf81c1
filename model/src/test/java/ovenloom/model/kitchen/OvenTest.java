package ovenloom.model.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.GasMark;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;

/** With the fan 20 C less, or 25 F on a dial in Fahrenheit: common practice, as docs/kitchen/ovens.md has it. */
class OvenTest {

  private static final Dial CELSIUS = new Dial(Setting.celsius(50), Setting.celsius(250), 5);
  private static final Dial FAHRENHEIT = new Dial(Setting.fahrenheit(150), Setting.fahrenheit(500), 25);
  private static final Dial GAS = new Dial(Setting.gas(GasMark.ONE), Setting.gas(GasMark.NINE), 1);

  @Test
  void what_is_written_for_180_bakes_at_160_with_the_fan_and_back() {
    for (Dial dial : List.of(CELSIUS, GAS)) {
      assertThat(oven(dial).converts("still", "fan")).isEqualTo(-20);
      assertThat(oven(dial).converts("fan", "still")).isEqualTo(20);
    }
  }

  @Test
  void on_a_dial_in_fahrenheit_350_is_325_with_the_fan() {
    double by = Objects.requireNonNull(oven(FAHRENHEIT).converts("still", "fan"));

    assertThat(Temperature.fahrenheit(350).plusKelvins(by)).isEqualTo(Temperature.fahrenheit(325));
    assertThat(oven(FAHRENHEIT).converts("fan", "still")).isEqualTo(-by);
  }

  @Test
  void the_same_mode_is_as_written_and_steam_says_nothing_of_others() {
    assertThat(oven(CELSIUS).converts("steam", "steam")).isZero();
    assertThat(oven(CELSIUS).converts("steam", "fan")).isNull();
    assertThat(oven(CELSIUS).converts("still", "steam")).isNull();
  }

  private static Oven oven(Dial dial) {
    var warmth = new Warmth(Temperature.celsius(20), Temperature.celsius(180), 16, Temperature.celsius(200),
        Temperature.celsius(150), 15);
    return new Oven("oven", dial, List.of("still", "fan", "steam"), warmth, dial.lowest(),
        List.of(new Rack(Length.cm(46), Length.cm(37), Length.cm(15))), new Power(3000), new Power(1000),
        null,
        Availability.ALWAYS);
  }
}
