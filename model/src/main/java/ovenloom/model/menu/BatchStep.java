package ovenloom.model.menu;

/**
 * One step of one batch, or of all batches where the step is done once.
 *
 * @param index its place in {@link Work#steps()}
 * @param batches one batch, or all of the dish
 */
public record BatchStep(int index, Dish dish, Step step, Batches batches) {

  /** Portions it is for. */
  public int portions() {
    return step.once() ? dish.servings().portions() : dish.portionsInABatch();
  }

  /** Minutes as written, the longest. */
  public int minutes() {
    return step.takes().minutes(portions());
  }

  /** The most minutes a plan may book. */
  public int mostMinutes() {
    return step.takes().most(portions());
  }

  /** Whether both are the same step of the menu, perhaps for other batches. */
  boolean isOfTheSameStepAs(BatchStep other) {
    return dish.name().equals(other.dish.name()) && step.name().equals(other.step.name());
  }

  @Override
  public String toString() {
    String which = dish.batches() == 1 || step.once() ? "" : " (batch " + batches.first() + ")";
    return dish.name() + "/" + step.name() + which;
  }
}
