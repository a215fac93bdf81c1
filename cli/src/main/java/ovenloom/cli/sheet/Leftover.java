package ovenloom.cli.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;

/** Food that stays behind in a minute when a share of it is taken. */
record Leftover(Book book, Journey journey, int now) {

  /** {@code Roasting tin with what is left in it: onto the counter until 13:05, for Gravy.} */
  String sentence(String goes) {
    List<Filling> fillings = vessels();
    int count = fillings.stream().mapToInt(Filling::count).sum();
    String what = count == 0 ? "What is left"
        : Words.capital(Words.vessels(fillings)) + " with what is left in " + (count == 1 ? "it" : "them");
    return what + ": " + goes + ", for " + Words.and(List.copyOf(wantedFor())) + ".";
  }

  /** Those it still is in when the first share goes on in others. */
  private List<Filling> vessels() {
    return book.work()
        .fillingsOf(journey.step().index())
        .stream()
        .filter(filling -> takers(true).stream().noneMatch(step -> filling.steps().contains(step.index())))
        .toList();
  }

  private Set<String> wantedFor() {
    Set<String> names = new LinkedHashSet<>();
    Set<Integer> batches = new TreeSet<>();
    for (BatchStep taker : takers(false)) {
      boolean own = taker.dish().name().equals(journey.step().dish().name());
      if (!own) {
        names.add(taker.dish().name());
      } else if (taker.dish().batches() == 1 || taker.step().once()) {
        names.add("later (" + taker.step().name() + ")");
      } else {
        batches.add(taker.batches().first());
      }
    }
    if (!batches.isEmpty()) {
      names.add(Words.batches(batches));
    }
    return names;
  }

  private List<BatchStep> takers(boolean now) {
    return book.fedBy(journey.step())
        .stream()
        .filter(taker -> now ? from(taker) == this.now : from(taker) > this.now)
        .toList();
  }

  private int from(BatchStep taker) {
    return book.run(taker).when().from();
  }
}
