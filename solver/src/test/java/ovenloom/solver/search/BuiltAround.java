package ovenloom.solver.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;

/**
 * A kitchen built around a plan: a roomy one is planned somehow, the plan is shaken, and then the kitchen is made tight
 * around it. So a plan is known to exist.
 */
public record BuiltAround(long seed, Event event, Plan known) {

  private static final long ANOTHER = 1_000;
  private static final int LEAST = 10;

  /** From a tenth, roomy, to 1, hardly any air. */
  static double strength(long seed) {
    return (1 + Math.floorMod(seed, 10)) / 10.0;
  }

  /** Steps a kitchen of this seed has at least, so that there are as many large as small ones. */
  private static int least(long seed, int most) {
    return LEAST + (most - LEAST - 20) * Math.floorMod(seed / 10, 20) / 19;
  }

  /** One of so many steps at most. */
  public static BuiltAround of(long seed, int most, Path folder) throws IOException {
    for (long each = seed; each < seed + 1_000 * ANOTHER; each += ANOTHER) {
      Event roomy = read(each, folder);
      int steps = roomy == null ? 0 : Work.of(roomy).steps().size();
      if (roomy != null && steps >= least(seed, most) && steps <= most) {
        Random random = new Random(each);
        Plan plan = KnownPlan.of(roomy, random);
        if (plan != null) {
          return around(seed, roomy, plan, random);
        }
      }
    }
    throw new AssertionError("none of a thousand suppers was planned for seed " + seed);
  }

  private static BuiltAround around(long seed, Event roomy, Plan plan, Random random) {
    Plan shaken = Shaken.of(roomy, plan, random, plan.placements().size());
    Tightening tightening = new Tightening(roomy, shaken, random, strength(seed));
    tightening.tighten();
    return new BuiltAround(seed, tightening.event(), tightening.plan());
  }

  private static @Nullable Event read(long seed, Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("supper-" + seed + ".yaml"), RandomSupper.grand(seed));
    return ProblemFile.read(file, folder,
        null) instanceof Reading.Understood<Event>(var event, var sources, var notes)
            ? event
            : null;
  }
}
