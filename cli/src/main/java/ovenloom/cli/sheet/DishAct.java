package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Filling;

/**
 * An act on some batches of a dish, as a step of it asks.
 *
 * @param from what it is taken out of; the worktop where it is taken out of nothing
 * @param words what is done next, in sentences
 * @param served what goes to the table in it
 * @param places where it is done
 */
record DishAct(int at, Turn turn, List<String> cooks, BatchStep step, Batches batches, Spot from,
    String words, List<Filling> served, Places places) {

  DishAct {
    cooks = List.copyOf(cooks);
    served = List.copyOf(served);
  }

  DishAct(int at, Turn turn, List<String> cooks, BatchStep step, Batches batches, String words,
      Places places) {
    this(at, turn, cooks, step, batches, new Spot.Bench(), words, List.of(), places);
  }

  /** What batches must have in common to be told in one line. */
  private record Alike(int at, Turn turn, List<String> cooks, String dish, String words, String from) {}

  /** Tells batches to which the same is done at the same minute in one line. */
  static List<Act> told(List<DishAct> acts, Leaving leaving) {
    Map<Alike, List<DishAct>> alike = new LinkedHashMap<>();
    acts.forEach(act -> alike.computeIfAbsent(act.alike(), none -> new ArrayList<>()).add(act));
    return alike.values().stream().map(same -> same.getFirst().line(same, leaving)).toList();
  }

  private Alike alike() {
    return new Alike(at, turn, cooks, step.dish().name(), words, from.place());
  }

  private Act line(List<DishAct> same, Leaving leaving) {
    Spot out = same.stream().map(DishAct::from).reduce(Spot::and).orElse(from);
    List<String> sentences = new ArrayList<>(List.of(batches(same), leaving.sentence(out), words));
    if (turn == Turn.SERVE) {
      List<Filling> vessels = same.stream().flatMap(act -> act.served.stream()).distinct().toList();
      sentences.add("To the table" + Words.in(vessels) + ".");
    }
    sentences.removeIf(String::isEmpty);
    Places all = same.stream().map(DishAct::places).reduce(places, Places::and);
    return new Act(at, turn, cooks, step.dish().name(), String.join(" ", sentences), all, step);
  }

  private String batches(List<DishAct> same) {
    int all = step.dish().batches();
    List<Integer> numbers = new ArrayList<>();
    for (int batch = 1; batch <= all; batch++) {
      int number = batch;
      if (same.stream().anyMatch(act -> act.batches.holds(number))) {
        numbers.add(number);
      }
    }
    if (all == 1 || step.step().once()) {
      return "";
    }
    if (numbers.size() == all) {
      return all == 2 ? "Both batches." : "All " + all + " batches.";
    }
    return Words.capital(Words.batches(numbers)) + " of " + all + ".";
  }
}
