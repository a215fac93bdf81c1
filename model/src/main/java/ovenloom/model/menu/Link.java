package ovenloom.model.menu;

import org.jspecify.annotations.Nullable;

/**
 * What a step comes after: from the end of the earlier step to the start of this one.
 *
 * @param dish the earlier step's dish
 * @param step the earlier step
 * @param least minutes of the gap, at least
 * @param most minutes of the gap, at most; absent: as long as the earlier step's food keeps
 */
public record Link(Kind kind, String dish, String step, int least, @Nullable Integer most) {

  /** What a link carries. */
  public enum Kind {
    /** The earlier step's food. */
    FOOD,
    /** Nothing: it only sets the order. */
    ORDER_ONLY,
    /**
     * Food that joins while the earlier step still runs: this step starts no earlier than that one starts, and before it
     * ends. It makes no stay.
     */
    ALONGSIDE
  }

  public Link {
    if (least < 0 || (most != null && most < least)) {
      throw new IllegalArgumentException("no gap is from " + least + " to " + most + " minutes");
    }
  }
}
