package ovenloom.model.menu;

import java.util.List;

/**
 * Food in its vessels, from the start of the step that first names them until all of it has been moved to others, or to
 * the end of service.
 *
 * @param vessel the kind of vessel
 * @param count how many of them
 * @param steps the steps in which food is in them, by index in {@link Work#steps()}, the first of them first
 * @param movers the steps that take food out of them into others, by index
 * @param toTheTable whether some of the food is still in them at the table, so that they are taken to the end of service
 */
public record Filling(String vessel, int count, List<Integer> steps, List<Integer> movers,
    boolean toTheTable) {

  public Filling {
    steps = List.copyOf(steps);
    movers = List.copyOf(movers);
  }

  /** The step that puts food into them. */
  public int first() {
    return steps.getFirst();
  }
}
