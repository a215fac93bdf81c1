package ovenloom.model.menu;

import java.util.List;

/**
 * A menu laid out as work: each step once for each batch, the links between them, and the vessels their food is in.
 *
 * <p>A step of batch <i>k</i> links to the same batch of an earlier step; a step done once links to all. Between dishes
 * batches link one to one where there are as many, else all to all.
 *
 * @param steps in an order in which each comes after all it links to
 * @param fillings vessels and the steps they are taken by
 */
public record Work(Event event, List<BatchStep> steps, List<BatchLink> links, List<Filling> fillings) {

  public Work {
    steps = List.copyOf(steps);
    links = List.copyOf(links);
    fillings = List.copyOf(fillings);
  }

  /**
   * Lays out an event.
   *
   * @throws IllegalArgumentException when its links go round in a circle, which {@link Circle} finds beforehand
   */
  public static Work of(Event event) {
    return new Layout(event).work();
  }

  public List<BatchLink> into(int step) {
    return links.stream().filter(link -> link.to() == step).toList();
  }

  public List<BatchLink> outOf(int step) {
    return links.stream().filter(link -> link.from() == step).toList();
  }

  /** The fillings whose food a step works on or ends with, in the order they were first filled. */
  public List<Filling> fillingsOf(int step) {
    return fillings.stream().filter(filling -> filling.steps().contains(step)).toList();
  }

  /** Whether nothing is made of a step's food but the dish at the table. */
  public boolean goesToTheTable(int step) {
    return steps.get(step).dish().food() && outOf(step).stream().noneMatch(BatchLink::carriesFood);
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
