package ovenloom.solver.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Variation;
import ovenloom.solver.search.Budget;

/**
 * All that is needed to plan one variation, here or on another machine.
 *
 * @param event as understood with its patches, or every mistake in it
 * @param from the plan its search begins with; absent where it begins as any other
 * @param version of this program: another one may come to another plan
 */
public record Run(
    Variation variation, Reading<Event> event, Budget budget, @Nullable Plan from, String version) {

  private static final int DIGITS = 32;

  /** A digest of the event as understood; absent where it could not be. */
  public @Nullable String eventDigest() {
    return event instanceof Reading.Understood<Event>(Event good, List<Plan.Source> sources, var notes)
        ? digest(ProblemFile.json(good))
        : null;
  }

  /** What tells it from all other runs: equal ones have equal results. */
  public String id() {
    return digest(String.join("\n", String.valueOf(eventDigest()), variation.choices().toString(),
        variation.patches().toString(), budget.toString(), String.valueOf(from != null), version));
  }

  private static String digest(String text) {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
      return HexFormat.of().formatHex(sum).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java has SHA-256", e);
    }
  }
}
