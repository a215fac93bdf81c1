package ovenloom.solver.bench;

import static ovenloom.solver.bench.Kitchens.inAFolder;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import ovenloom.solver.exact.JustImpossible;

/**
 * Finds out what the drawn kitchens are measured against, where it is not known yet, and adds it to the files that are kept.
 * Arguments: seconds of search for each kitchen, and how many small kitchens to make impossible.
 */
public final class FindReferences {

  /** Of the search; none that is measured has it. */
  private static final long SEED = 1_000;

  private FindReferences() {}

  public static void main(String[] arguments) throws IOException {
    impossible(Integer.parseInt(arguments[1]));
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
        double best = Planning.best(kitchen.event(), time, SEED, Double.NaN, Double.NaN).ours();
        known.keep(kitchen.digest(), List.of(Double.toString(best), Long.toString(time.toSeconds())));
      }
    }
  }

  private static void impossible(int seeds) throws IOException {
    References known = References.in(Kitchens.IMPOSSIBLE);
    for (long seed = 1; seed <= seeds; seed++) {
      long each = seed;
      String digest = Digest.of(inAFolder(folder -> JustImpossible.text(each, folder)));
      if (known.of(digest).isEmpty()) {
        JustImpossible made = inAFolder(folder -> JustImpossible.of(each, folder));
        known.keep(digest,
            List.of(Long.toString(each), made.verdict().name(), String.join(", ", made.taken())));
      }
    }
  }
}
