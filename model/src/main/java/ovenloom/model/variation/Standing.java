package ovenloom.model.variation;

import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;

/** How the planning of an event ended, as far as two ends can be held against each other. */
public sealed interface Standing {

  /**
   * With a plan.
   *
   * @param bound what no plan of that event can be better than; absent where nothing was proven
   * @param weights by which its wishes were added up
   */
  record Fits(Score score, @Nullable Bound bound, Wishes weights) implements Standing {

    /** Refuses a bound that the plan itself shows to be wrong. */
    public Fits {
      if (bound != null && !bound.allows(score)) {
        throw new IllegalArgumentException(
            "no plan can be better than " + bound + ", and this one is: " + score);
      }
    }

    /** What another must be better than, to be better than this. */
    Bound mark() {
      return new Bound(score.atTheTableInAll(), score.wishes());
    }

    /** Whether it is better than a mark. Wishes that were weighed otherwise say nothing. */
    boolean isBelow(Bound mark, Wishes weighed) {
      return weights.equals(weighed) ? !mark.allows(score) : score.atTheTableInAll() < mark.atTheTable();
    }
  }

  /** With a proof that there is no plan. */
  record NoPlan() implements Standing {}

  /** Without a plan, and without such a proof. */
  record NoneFound() implements Standing {}
}
