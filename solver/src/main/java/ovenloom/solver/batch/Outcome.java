package ovenloom.solver.batch;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.place.Extents;
import ovenloom.solver.proof.Claim;
import ovenloom.solver.proof.Clash;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.proof.WindowLoads;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** How the planning of one event ended. */
public sealed interface Outcome {

  /** How long a search is after which a proof may take all its time. */
  double TRIES_FOR_A_WHOLE_PROOF = 4_000;
  double MILLIS_FOR_A_WHOLE_PROOF = 20_000;

  long MILLIS_BETWEEN_LOOKS = 100;

  /** With a plan that passed the audit, and what was proven of it. */
  record APlan(Plan plan) implements Outcome {}

  /** With more asked of something than there is of it. */
  record TooMuch(Clash clash) implements Outcome {}

  /** With claims that cannot all be met. */
  record Clashing(List<Claim> claims) implements Outcome {
    public Clashing {
      claims = List.copyOf(claims);
    }
  }

  /** With nothing found, and nothing proven. */
  record NoneFound(Found found) implements Outcome {}

  /** What a search and a proof came to together: a plan that is there wins. */
  static Outcome of(Found found, Proof proof) {
    List<Claim> claims = proof.clash();
    if (found.isAPlan()) {
      return new APlan(found.plan().with(proof.bound()));
    }
    return claims == null ? new NoneFound(found) : new Clashing(claims);
  }

  /**
   * Plans an event on the threads of its search: what is asked for too much of is looked at first, then it is searched, then proven.
   *
   * @param from absent: as any search begins
   * @param stop asked a few times a second; what comes after a stop is not the whole answer
   */
  static Outcome planned(
      Event event, List<Plan.Source> sources, Budget budget, @Nullable Plan from, BooleanSupplier stop) {
    Extents extents = Extents.of(event);
    Optional<Clash> clash = WindowLoads.of(extents);
    if (clash.isPresent()) {
      return new TooMuch(clash.get());
    }
    Found found = Search.find(event, sources, budget, from,
        (score, schedules, left) -> {}, stop);
    Proof proof = new Proof(extents);
    if (!stop.getAsBoolean()) {
      prove(proof, found, budget, stop);
    }
    return of(found, proof);
  }

  /**
   * Proves what can be proven once a search has ended; who asked for a short one is not to wait for a long proof.
   *
   * @param stop asked a few times a second by another thread; the proof ends soon after
   */
  static void prove(Proof proof, Found found, Budget budget, BooleanSupplier stop) {
    try (ScheduledExecutorService listener = Executors.newSingleThreadScheduledExecutor()) {
      Future<?> listening = listener.scheduleWithFixedDelay(() -> stop(proof, stop), 0, MILLIS_BETWEEN_LOOKS,
          TimeUnit.MILLISECONDS);
      if (found.isAPlan()) {
        proof.findBound(part(budget));
      } else {
        proof.refute();
      }
      listening.cancel(false);
    }
  }

  private static void stop(Proof proof, BooleanSupplier stop) {
    if (stop.getAsBoolean()) {
      proof.stop();
    }
  }

  private static double part(Budget budget) {
    double byTries = budget.tries() == null ? 1 : budget.tries() / TRIES_FOR_A_WHOLE_PROOF;
    double byTime = budget.time() == null ? 1 : budget.time().toMillis() / MILLIS_FOR_A_WHOLE_PROOF;
    return Math.min(1, Math.min(byTries, byTime));
  }
}
