package ovenloom.cli.command;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Progress;

/** When a proof runs: after a search, or beside it. */
sealed interface Proving {

  /** A search that tells how far it is, and may be stopped. */
  interface Searching {
    Found find(Progress progress, BooleanSupplier stop);
  }

  Proof proof();

  /** Searches, and proves what can be proven. */
  Found beside(Progress progress, BooleanSupplier stop, Searching search);

  /** The same each time, but where somebody stops it. */
  record Afterwards(Proof proof, Budget budget) implements Proving {

    @Override
    public Found beside(Progress progress, BooleanSupplier stop, Searching search) {
      Found found = search.find(progress, stop);
      if (!stop.getAsBoolean()) {
        Outcome.prove(proof, found, budget, stop);
      }
      return found;
    }
  }

  /** On a thread of its own; what ends first ends the other: a search with the best plan there can be, or a proof that there is none. */
  record Meanwhile(Proof proof) implements Proving {

    private static final Duration A_MOMENT = Duration.ofMillis(500);

    @Override
    public Found beside(Progress progress, BooleanSupplier stop, Searching search) {
      Thread prover = Thread.ofPlatform().daemon().name("proof").start(proof::run);
      BestSoFar best = new BestSoFar(progress);
      Found found = search.find(best,
          () -> stop.getAsBoolean() || proof.clash() != null || best.isProven(proof));
      proof.stop();
      await(prover);
      return found;
    }

    /** For a moment only: whoever set a time gets an answer by then. */
    private static void await(Thread prover) {
      try {
        prover.join(A_MOMENT);
      } catch (InterruptedException interrupt) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
