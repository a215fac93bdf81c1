package ovenloom.solver.bench;

import static ovenloom.solver.bench.Kitchens.inAFolder;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import ovenloom.solver.exact.JustImpossible;

/**
 * Finds out what the drawn kitchens are measured against, where it is not known yet, and adds it to the files that are kept.
 * Argument: seconds of search for each kitchen.
 */
public final class FindReferences {

  /** Of the search; none that is measured has it. */
  private static final long SEED = 1_000;

  private FindReferences() {}

  public static void main(String[] arguments) throws IOException {
    impossible();
    Duration time = Duration.ofSeconds(Long.parseLong(arguments[0]));
    for (Drawn.Size size : List.of(Drawn.Size.TO_60_STEPS, Drawn.Size.TO_120_STEPS,
        Drawn.Size.TO_300_STEPS)) {
      best(size, time);
    }
  }

  private static void best(Drawn.Size size, Duration time) throws IOException {
    References known = References.in(Kitchens.BEST_KNOWN);
    for (Drawn kitchen : Drawn.all(size)) {
      if (known.of(kitchen.digest()).isEmpty()) {
        Measured best = Planning.best(kitchen.event(), time, SEED, Double.NaN, Double.NaN);
        known.keep(kitchen.digest(),
            best.isAnswered() ? List.of(Double.toString(best.ours()), Long.toString(time.toSeconds()))
                : Kitchens.NO_PLAN_KNOWN);
      }
    }
  }

  private static void impossible() throws IOException {
    References known = References.in(Kitchens.IMPOSSIBLE);
    for (long seed : JustImpossible.seeds()) {
      String digest = Digest.of(inAFolder(folder -> JustImpossible.text(seed, folder)));
      if (known.of(digest).isEmpty()) {
        JustImpossible made = inAFolder(folder -> JustImpossible.of(seed, folder));
        known.keep(digest,
            List.of(Long.toString(seed), made.verdict().name(), String.join(", ", made.taken())));
      }
    }
  }
}
