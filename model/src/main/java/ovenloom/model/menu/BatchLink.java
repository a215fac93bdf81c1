package ovenloom.model.menu;

/**
 * A link between two steps of batches.
 *
 * @param from the earlier one's index in {@link Work#steps()}
 * @param to the later one's
 */
public record BatchLink(int from, int to, Link link) {

  /** Whether food waits in its gap. */
  public boolean makesAStay() {
    return link.kind() == Link.Kind.FOOD;
  }

  /** Whether it carries food, side by side or after a gap. */
  public boolean carriesFood() {
    return link.kind() != Link.Kind.ORDER_ONLY;
  }
}
