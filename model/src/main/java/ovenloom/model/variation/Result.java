package ovenloom.model.variation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;

/**
 * What came of one run; all that is in it is the same each time, on any machine, where the run ends by a count of tries.
 *
 * @param run a digest of all that the run hangs on: the event, its choices and patches, the budget, how it began, and the version
 * @param event a digest of the event without patches, as it is written
 * @param choices by axis
 * @param patches JSON merge patches, to be laid over the event one after the other: with it all that the run was read from
 * @param tries schedules, absent where the clock ends it
 * @param seconds on the clock, absent where tries end it
 * @param warm whether the search began from the plan of the event without patches
 * @param version of this program
 * @param why there is no plan, in a sentence or more; absent where there is one
 * @param decides the dish that loses most, or stands in the way
 * @param score absent where there is no plan
 * @param bound absent where nothing was proven
 * @param figures absent where there is no plan
 */
public record Result(
    String run,
    String event,
    Map<String, String> choices,
    List<String> patches,
    @Nullable Long tries,
    @Nullable Double seconds,
    long seed,
    boolean warm,
    String version,
    Answer answer,
    @Nullable String why,
    @Nullable String decides,
    @Nullable Score score,
    @Nullable Bound bound,
    @Nullable Figures figures) {

  /** How a run can end. */
  public enum Answer {
    /** With a plan that passed the audit. */
    PLAN,
    /** With a proof that there is no plan. */
    NO_PLAN,
    /** Without a plan, and without such a proof. */
    NONE_FOUND,
    /** Before it began: the event with its patches makes no sense. */
    MISTAKEN,
    /** By a fault of this program. */
    FAILED
  }

  public Result {
    choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    patches = List.copyOf(patches);
  }

  /** Which one along an axis. */
  public String choice(Axis axis) {
    return Objects.requireNonNull(choices.get(axis.name()), axis.name());
  }

  /** What the run is called: its choices. */
  public String name() {
    return new Variation(choices, patches).name();
  }
}
