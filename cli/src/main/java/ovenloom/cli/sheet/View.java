package ovenloom.cli.sheet;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which acts of a plan one wants to see. */
public sealed interface View {

  /** Those of them, in the same order. */
  List<Act> of(List<Act> acts);

  /** Whether something that goes on belongs to them. */
  boolean concerns(Going going);

  /** What is shown; nothing where all is. */
  String sentence();

  /** All of them. */
  record Whole() implements View {

    @Override
    public List<Act> of(List<Act> acts) {
      return acts;
    }

    @Override
    public boolean concerns(Going going) {
      return true;
    }

    @Override
    public String sentence() {
      return "";
    }
  }

  /** What one cook does; and of the moments everyone sits down, what goes to the table, whoever brings it. */
  record OfCook(String cook) implements View {

    @Override
    public List<Act> of(List<Act> acts) {
      Set<Integer> sittings = acts.stream()
          .filter(act -> act.turn() == Act.Turn.TABLE)
          .map(Act::at)
          .collect(Collectors.toSet());
      return acts.stream()
          .filter(act -> act.cooks().contains(cook) || (sittings.contains(act.at()) && isServing(act)))
          .toList();
    }

    @Override
    public boolean concerns(Going going) {
      return going.cook().equals(cook);
    }

    private static boolean isServing(Act act) {
      return act.turn() == Act.Turn.TABLE || act.places().touch(Place.TABLE);
    }

    @Override
    public String sentence() {
      return "Only what " + cook + " does, and what goes to the table.";
    }
  }

  /**
   * What is done at one place.
   *
   * @param name as one points at it: {@code the fridge, top shelf}
   */
  record OfPlace(Place place, String name) implements View {

    @Override
    public List<Act> of(List<Act> acts) {
      return acts.stream().filter(act -> act.places().touch(place)).toList();
    }

    @Override
    public boolean concerns(Going going) {
      return going.places().touch(place);
    }

    @Override
    public String sentence() {
      return "Only what concerns " + name + ".";
    }
  }
}
