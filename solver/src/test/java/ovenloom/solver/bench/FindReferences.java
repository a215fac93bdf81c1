package ovenloom.solver.bench;

import static ovenloom.solver.bench.Kitchens.inAFolder;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.exact.FullModel;
import ovenloom.solver.exact.JustImpossible;
import ovenloom.solver.proof.PointsBound;

/**
 * Finds out what the drawn kitchens are measured against, where it is not known yet or was searched for less long, and what is proven
 * of them now, and adds it to the files that are kept: the last line of an instance counts.
 * Argument: seconds of search for each kitchen.
 */
public final class FindReferences {

  /** Of the search; none that is measured has it. */
  private static final long SEED = 1_000;

  /** What CP-SAT has for a kitchen of which it is told all rules. */
  private static final int FULL_MODEL_SECONDS = 300;

  private FindReferences() {}

  public static void main(String[] arguments) throws IOException {
    impossible();
    fullModel();
    Duration time = Duration.ofSeconds(Long.parseLong(arguments[0]));
    for (Drawn.Size size : List.of(Drawn.Size.TO_60_STEPS, Drawn.Size.TO_120_STEPS,
        Drawn.Size.TO_300_STEPS)) {
      best(size, time);
    }
  }

  private static void best(Drawn.Size size, Duration time) throws IOException {
    References known = References.in(References.BEST_KNOWN);
    for (Drawn kitchen : Drawn.all(size)) {
      List<String> words = known.of(kitchen.digest());
      List<String> now = best(kitchen, time, words);
      if (!now.equals(words)) {
        known.keep(kitchen.digest(), now);
      }
    }
  }

  /** The bound in any case, for what is proven comes closer from time to time. */
  private static List<String> best(Drawn kitchen, Duration time, List<String> words) {
    String bound = Long.toString(PointsBound.of(kitchen.event()));
    if (!words.isEmpty() && Long.parseLong(words.get(1)) >= time.toSeconds()) {
      return List.of(words.get(0), words.get(1), bound);
    }
    Measured found = Planning.best(kitchen.event(), time, SEED, Double.NaN, Double.NaN);
    return List.of(better(words, found), Long.toString(time.toSeconds()), bound);
  }

  private static void fullModel() throws IOException {
    References known = References.in(References.FULL_MODEL);
    for (Drawn kitchen : Drawn.forTheFullModel()) {
      if (known.of(kitchen.digest()).isEmpty()) {
        FullModel.Reached reached = FullModel.of(kitchen.event(), FULL_MODEL_SECONDS);
        known.keep(kitchen.digest(), List.of(audited(kitchen.event(), reached.plan()),
            Integer.toString(FULL_MODEL_SECONDS), Long.toString(reached.bound())));
      }
    }
  }

  /** Its points, as they are counted; a plan of CP-SAT says nothing of the wishes that weigh nothing. */
  private static String audited(Event event, @Nullable Plan plan) {
    if (plan == null) {
      return Kitchens.NO_PLAN_KNOWN;
    }
    List<Break> breaks = Audit.of(event, plan).stream().filter(each -> !each.rule().equals("score")).toList();
    if (!breaks.isEmpty()) {
      throw new IllegalStateException(event.name() + ": " + breaks);
    }
    return Double.toString(Planning.points(Reckoning.of(event, plan)));
  }

  private static String better(List<String> words, Measured found) {
    boolean isKnown = !words.isEmpty() && !words.getFirst().equals(Kitchens.NO_PLAN_KNOWN);
    boolean isBetter = found.isAnswered()
        && !(isKnown && Double.parseDouble(words.getFirst()) <= found.ours());
    return isBetter ? Double.toString(found.ours()) : isKnown ? words.getFirst() : Kitchens.NO_PLAN_KNOWN;
  }

  private static void impossible() throws IOException {
    References known = References.in(References.IMPOSSIBLE);
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
