package ovenloom.cli.command;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.search.Budget;
import picocli.CommandLine.Option;

/** How long to look, and where to begin. */
final class SearchOptions {

  private static final Duration WHILE = Duration.ofSeconds(20);

  @Option(names = "--for", paramLabel = "TIME", converter = TimeOption.class,
      description = {"Look for so long: 20s, 5min, 1h.",
          "20s unless --tries is given. With both, what ends first."})
  private @Nullable Duration time;

  @Option(names = "--tries", paramLabel = "N", converter = AtLeastOne.class,
      description = {"Try N schedules for each seed, then tidy the best of them.",
          "With --tries and --seed and without --for the plan is the same on any machine."})
  private @Nullable Long tries;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
      description = {"Begin with the random number N.", "Another seed may find another plan. Default: 1."})
  private long seed;

  @Option(names = "--seeds", paramLabel = "N", defaultValue = "2", converter = Threads.class,
      description = {"Search N times side by side, 64 times at most.",
          "From the seed and those that follow it; the best plan wins. Default: 2, on any machine."})
  private int seeds;

  /** After a search of so many tries, so that both are the same on any machine; beside one that ends by the clock. */
  Proving proving(Proof proof) {
    return time == null && tries != null
        ? new Proving.Afterwards(proof, budget())
        : new Proving.Meanwhile(proof);
  }

  Budget budget() {
    boolean hasAnEnd = time != null || tries != null;
    return new Budget(hasAnEnd ? time : WHILE, tries, seed, seeds);
  }
}
