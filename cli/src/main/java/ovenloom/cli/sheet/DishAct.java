package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;

/** An act on some batches of a dish, as a step of it asks. */
record DishAct(int at, Turn turn, List<String> cooks, BatchStep step, Batches batches, String words) {

  DishAct {
    cooks = List.copyOf(cooks);
  }

  /** Tells batches to which the same is done at the same minute in one line. */
  static List<Act> told(List<DishAct> acts) {
    List<Act> told = new ArrayList<>();
    List<DishAct> open = new ArrayList<>(acts);
    while (!open.isEmpty()) {
      DishAct first = open.getFirst();
      List<DishAct> same = open.stream().filter(first::isLike).toList();
      open.removeAll(same);
      told.add(new Act(first.at, first.turn, first.cooks, first.step.dish().name(),
          first.batches(same) + first.words));
    }
    return told;
  }

  private boolean isLike(DishAct other) {
    return at == other.at && turn == other.turn && cooks.equals(other.cooks)
        && step.dish().name().equals(other.step.dish().name()) && words.equals(other.words);
  }

  private String batches(List<DishAct> same) {
    int all = step.dish().batches();
    List<String> numbers = new ArrayList<>();
    for (int batch = 1; batch <= all; batch++) {
      int number = batch;
      if (same.stream().anyMatch(act -> act.batches.holds(number))) {
        numbers.add(Integer.toString(number));
      }
    }
    if (all == 1 || step.step().once()) {
      return "";
    }
    if (numbers.size() == all) {
      return all == 2 ? "Both batches. " : "All " + all + " batches. ";
    }
    return (numbers.size() == 1 ? "Batch " : "Batches ") + Words.and(numbers) + " of " + all + ". ";
  }
}
