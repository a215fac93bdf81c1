package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Extents;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** Holds search, shipped bound and audit against what is proven of a kitchen. */
final class AgainstTheProof {

  private static final Budget A_SEARCH = new Budget(null, 100_000L, 1, 2);

  /** A search that comes to the best plan sooner looks so long, by both seeds, for a better one, which would be a fault. */
  private static final long SOME_TRIES = 40_000;

  private AgainstTheProof() {}

  /** The search comes to the best plan, or stays at most so many points above it, and never to a better one. */
  static void search(Event event, Proof proof, long shortBy) {
    AtomicBoolean isBest = new AtomicBoolean();
    Found found = Search.find(event, List.of(), A_SEARCH, (best, tries, left) -> isBest.set(
        tries >= SOME_TRIES && best.breaks() == 0 && proof.isPossible() && proof.pointsAbove(best) == 0),
        isBest::get);

    assertThat(found.isAPlan()).as("a plan in kitchen %d", proof.kitchen()).isEqualTo(proof.isPossible());
    if (found.isAPlan()) {
      Score score = found.plan().score();
      String both = "kitchen %d: found %d and %d, proven %s"
          .formatted(proof.kitchen(), score.atTheTableInAll(), score.wishes(), proof);
      assertThat(proof.isBeatenBy(score)).as(both).isFalse();
      assertThat(proof.pointsAbove(score)).as("reached, %s", both).isBetween(0L, shortBy);
    }
  }

  /** The relaxation that is shipped refuses nothing that has a plan, and no bound of it is above the best. */
  static void relaxation(Event event, Proof proven) {
    var proof = new ovenloom.solver.proof.Proof(Extents.of(event));

    proof.run();

    assertThat(proof.clash() != null && proven.isPossible()).as("refused").isFalse();
    if (proven.isPossible()) {
      Bound bound = Objects.requireNonNull(proof.bound());
      assertThat(bound.atTheTable()).isLessThanOrEqualTo(proven.atTheTable());
      assertThat(bound.atTheTable() < proven.atTheTable() ? 0 : bound.wishes())
          .isLessThanOrEqualTo(proven.wishes());
    }
  }

  /** The audit finds nothing wrong with the best plan, and counts it alike. */
  static void audit(Event event, Plan best) {
    Score counted = Reckoning.of(event, best);

    assertThat(Audit.of(event, best)).isEmpty();
    assertThat(best.score().atTheTable()).isEqualTo(counted.atTheTable());
    assertThat(best.score().points()).isEqualTo(counted.points());
    assertThat(best.score().early()).isEqualTo(counted.early());
  }
}
