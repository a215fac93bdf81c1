package ovenloom.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Places;
import ovenloom.model.measure.Stretch;

class EntryTest {

  private static Act act(Act.Turn turn, String thing, String words) {
    return new Act(1071, turn, List.of("Piet"), thing, words, new Places(Set.of(), Set.of(), Set.of()), null);
  }

  private static String headline(String title, Act... acts) {
    return new Entry(Slot.moment(1), List.of("Piet"), new Stretch(1071, 1072), title, List.of(acts))
        .headline();
  }

  @Test
  void what_is_to_be_probed_hides_behind_no_other_dish() {
    assertThat(headline("Mushroom tartlets: Out of the oven",
        act(Act.Turn.PROBE, "Chicken skewers", "Probe the middle: 74 C or more."),
        act(Act.Turn.OUT, "Mushroom tartlets", "Out of the oven.")))
        .isEqualTo("Probe Chicken skewers; Mushroom tartlets: Out of the oven");
  }

  @Test
  void whatever_else_is_touched_is_named() {
    assertThat(headline("Cheese: buy",
        act(Act.Turn.WORK, "Cheese", "Buy: 30 min."),
        act(Act.Turn.OFF, "Oven", "Switch off."),
        act(Act.Turn.IN, "Lemon possets", "Into the fridge.")))
        .isEqualTo("Cheese: buy; also Oven and Lemon possets");
  }

  @Test
  void work_alone_is_called_what_it_is() {
    assertThat(headline("Cheese: buy", act(Act.Turn.WORK, "Cheese", "Buy: 30 min.")))
        .isEqualTo("Cheese: buy");
  }
}
