package ovenloom.model.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.model.measure.Setting.celsius;
import static ovenloom.model.measure.Setting.fahrenheit;
import static ovenloom.model.measure.Setting.gas;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.GasMark;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;

class DialTest {

  private final Dial ours = new Dial(celsius(60), celsius(250), 5);
  private final Dial american = new Dial(fahrenheit(200), fahrenheit(550), 25);
  private final Dial british = new Dial(gas(GasMark.HALF), gas(GasMark.EIGHT), 1);

  @Test
  void a_celsius_dial_has_a_mark_every_five_degrees() {
    assertThat(ours.marks()).hasSize(39)
        .startsWith(celsius(60), celsius(65))
        .endsWith(celsius(245), celsius(250));
  }

  @Test
  void a_fahrenheit_dial_has_the_very_marks_a_cook_writes() {
    assertThat(american.marks())
        .containsExactlyElementsOf(
            IntStream.rangeClosed(0, 14).mapToObj(step -> fahrenheit(200 + 25 * step)).toList());
  }

  @Test
  void a_dial_that_ends_between_steps_stops_at_the_last_whole_step() {
    assertThat(new Dial(celsius(50), celsius(64), 5).marks()).containsExactly(celsius(50), celsius(55),
        celsius(60));
  }

  @Test
  void a_gas_dial_has_the_marks_of_the_table_between_its_ends() {
    assertThat(british.marks()).hasSize(9)
        .startsWith(gas(GasMark.HALF), gas(GasMark.ONE))
        .endsWith(gas(GasMark.EIGHT));
  }

  @Test
  void what_is_written_350_f_is_set_to_175_on_a_celsius_dial_and_to_gas_4() {
    Temperature written = Temperature.fahrenheit(350);

    assertThat(ours.nearest(written)).isEqualTo(celsius(175));
    assertThat(american.nearest(written)).isEqualTo(fahrenheit(350));
    assertThat(british.nearest(written)).isEqualTo(gas(GasMark.FOUR));
  }

  @Test
  void of_two_marks_as_near_it_takes_the_cooler() {
    assertThat(ours.nearest(Temperature.celsius(182.5))).isEqualTo(celsius(180));
    assertThat(ours.nearest(Temperature.celsius(182.6))).isEqualTo(celsius(185));
  }

  @Test
  void beyond_its_ends_the_nearest_mark_is_the_end() {
    assertThat(ours.nearest(Temperature.celsius(20))).isEqualTo(celsius(60));
    assertThat(ours.nearest(Temperature.celsius(300))).isEqualTo(celsius(250));
  }

  @Test
  void a_mark_is_in_a_window_if_within_half_a_step_of_it() {
    assertThat(marks(ours, 172.5, 182.5)).containsExactly(celsius(170), celsius(175), celsius(180),
        celsius(185));
    assertThat(marks(ours, 172.6, 182.4)).containsExactly(celsius(175), celsius(180));
  }

  @Test
  void half_a_step_is_half_a_step_in_fahrenheit_too() {
    var fine = new Dial(fahrenheit(200), fahrenheit(500), 10);

    for (int written = 205; written < 500; written += 10) {
      Temperature only = Temperature.fahrenheit(written);
      assertThat(fine.within(only, only)).containsExactly(fahrenheit(written - 5), fahrenheit(written + 5));
      assertThat(fine.nearest(only)).isEqualTo(fahrenheit(written - 5));
    }
  }

  @Test
  void a_window_of_one_setting_holds_its_nearest_mark() {
    Temperature only = Temperature.fahrenheit(350);

    assertThat(ours.within(only, only)).containsExactly(celsius(175));
    assertThat(british.within(only, only)).containsExactly(gas(GasMark.FOUR));
  }

  @Test
  void half_a_step_on_a_gas_dial_is_half_of_25_f() {
    assertThat(british.within(Temperature.fahrenheit(362), Temperature.fahrenheit(363)))
        .as("362 is 12 above mark 4, 363 is 12 below mark 5")
        .containsExactly(gas(GasMark.FOUR), gas(GasMark.FIVE));
    assertThat(british.within(Temperature.fahrenheit(363), Temperature.fahrenheit(363)))
        .containsExactly(gas(GasMark.FIVE));
  }

  @Test
  void a_dial_has_one_unit_and_its_ends_in_order() {
    assertThatThrownBy(() -> new Dial(celsius(60), fahrenheit(500), 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Dial(celsius(250), celsius(60), 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Dial(celsius(60), celsius(250), 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Setting> marks(Dial dial, double from, double to) {
    return dial.within(Temperature.celsius(from), Temperature.celsius(to));
  }
}
