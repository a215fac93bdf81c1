package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.heat.Composition;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Matter;

class MatterReaderTest {

  @TempDir
  Path folder;

  private Desktop desk(String more) {
    return new Desktop(folder).put("it.yaml", Desktop.SUPPER
        + "dishes: [{dish: Soup%s, steps: [{do: stir, takes: 5 min}, {do: pour, takes: 1 min, covered: no}]}]%n"
            .formatted(more));
  }

  private Dish soup(String more) {
    return desk(more).event("it.yaml").dishes().getFirst();
  }

  @Test
  void who_says_nothing_need_know_nothing() {
    assertThat(soup("").matter()).isEqualTo(Matter.UNSAID);
  }

  @Test
  void who_knows_what_it_is_made_of_says_so() {
    assertThat(soup(", made of: {water: 72.5 %, protein: 20 %, fat: 6 %, ash: 1.5 %}").matter().madeOf())
        .isEqualTo(new Composition(0.725, 0.2, 0.06, 0, 0, 0.015));
  }

  @Test
  void who_knows_how_it_conducts_says_so() {
    assertThat(soup(", conducts: 0.45 W/(m K)").matter().conducts()).isEqualTo(new Conductivity(450));
    assertThat(soup(", conducts: 0.45 W/mK").matter().conducts()).isEqualTo(new Conductivity(450));
  }

  @Test
  void a_number_without_its_unit_is_a_mistake_that_tells_how_to_write_it() {
    assertThat(desk(", conducts: 0.45").mistakes("it.yaml"))
        .contains("\"0.45\" is not a conductivity", "^^^^", "Did you mean \"0.45 W/(m K)\"?");
  }

  @Test
  void a_step_may_take_the_lid_off() {
    Dish soup = soup(", covered: yes");

    assertThat(soup.matter().covered()).isTrue();
    assertThat(soup.step("stir").covered()).isNull();
    assertThat(soup.step("pour").covered()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "made of: {water: 70 %, fat: 20 %} | add up to",
      "made of: {water: 70 %, wine: 30 %} | wine",
      "made of: {water: lots} | lots",
      "conducts: 40 W/(m K) | from 0.02 to 5",
      "conducts: 0.4 W/(m K | conducts",
      "thick: 0 cm | more than nothing",
      "covered: half | yes"})
  void what_cannot_be_is_a_mistake(String key, String says) {
    assertThat(desk(", " + key).mistakes("it.yaml")).contains(says);
  }
}
