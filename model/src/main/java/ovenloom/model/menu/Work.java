package ovenloom.model.menu;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A menu laid out as work: each step once for each batch, the links between them, and the vessels their food is in.
 *
 * <p>A step of batch <i>k</i> links to the same batch of an earlier step; a step done once links to all. Between dishes
 * batches link one to one where there are as many, else all to all.
 */
public final class Work {

  private final Event event;
  private final List<BatchStep> steps;
  private final List<BatchLink> links;
  private final List<Filling> fillings;
  private final List<List<BatchLink>> into;
  private final List<List<BatchLink>> outOf;
  private final List<List<Filling>> fillingsOf;
  private final boolean[] goesToTheTable;

  /**
   * As it was laid out.
   *
   * @param steps in an order in which each comes after all it links to
   * @param fillings vessels and the steps they are taken by
   */
  Work(Event event, List<BatchStep> steps, List<BatchLink> links, List<Filling> fillings) {
    this.event = event;
    this.steps = List.copyOf(steps);
    this.links = List.copyOf(links);
    this.fillings = List.copyOf(fillings);
    into = ofEach(this.links, link -> IntStream.of(link.to()));
    outOf = ofEach(this.links, link -> IntStream.of(link.from()));
    fillingsOf = ofEach(this.fillings, filling -> filling.steps().stream().mapToInt(step -> step).distinct());
    goesToTheTable = new boolean[this.steps.size()];
    for (int step = 0; step < goesToTheTable.length; step++) {
      goesToTheTable[step] = this.steps.get(step).dish().food()
          && outOf.get(step).stream().noneMatch(BatchLink::carriesFood);
    }
  }

  private <T> List<List<T>> ofEach(List<T> all, Function<T, IntStream> steps) {
    List<List<T>> each = Stream.generate(() -> (List<T>) new ArrayList<T>())
        .limit(this.steps.size())
        .toList();
    all.forEach(one -> steps.apply(one).forEach(step -> each.get(step).add(one)));
    return each.stream().map(List::copyOf).toList();
  }

  /**
   * Lays out an event.
   *
   * @throws IllegalArgumentException when its links go round in a circle, which {@link Circle} finds beforehand
   */
  public static Work of(Event event) {
    return new Layout(event).work();
  }

  public Event event() {
    return event;
  }

  /** In an order in which each comes after all it links to. */
  public List<BatchStep> steps() {
    return steps;
  }

  public List<BatchLink> links() {
    return links;
  }

  /** Vessels, and the steps they are taken by. */
  public List<Filling> fillings() {
    return fillings;
  }

  public List<BatchLink> into(int step) {
    return into.get(step);
  }

  public List<BatchLink> outOf(int step) {
    return outOf.get(step);
  }

  /** The fillings whose food a step works on or ends with, in the order they were first filled. */
  public List<Filling> fillingsOf(int step) {
    return fillingsOf.get(step);
  }

  /** Whether nothing is made of a step's food but the dish at the table. */
  public boolean goesToTheTable(int step) {
    return goesToTheTable[step];
  }

  /** Whether a step's food waits somewhere after it: for a later step, or for the table. */
  public boolean leavesAStay(int step) {
    if (!steps.get(step).dish().food() || steps.get(step).step().serve()) {
      return false;
    }
    return goesToTheTable(step) || outOf(step).stream().anyMatch(BatchLink::makesAStay);
  }

  /** The step of a dish that does a batch's share. */
  public BatchStep find(String dish, String step, int batch) {
    return steps.stream()
        .filter(each -> each.dish().name().equals(dish) && each.step().name().equals(step))
        .filter(each -> each.batches().holds(batch))
        .findFirst()
        .orElseThrow();
  }
}
