package ovenloom.model.variation;

import java.util.List;

/**
 * One way in which an event may differ: how many ovens, how many guests.
 *
 * @param choices what it may be, by their names; one of them in each variation
 */
public record Axis(String name, List<String> choices) {

  public Axis {
    choices = List.copyOf(choices);
  }

  /** Whether it counts something: each choice is a whole number. */
  public boolean isNumbers() {
    return choices.stream().allMatch(choice -> choice.matches("[0-9]{1,18}"));
  }
}
