package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.model.tally.Best;
import ovenloom.model.tally.Group;
import ovenloom.model.tally.Means;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result.Answer;

/** What is told of some runs, each figure as it is written in a table. */
public record GroupWords(Group group) {

  private static final String NOTHING = "-";
  private static final double TENTHS = 10;

  /** {@code 600 runs: 230 with a plan, 310 proven to have none, 60 without one found.} Of what there is none, nothing. */
  public String sentence() {
    List<String> parts = new ArrayList<>();
    add(parts, group.answers().of(Answer.PLAN), "with a plan");
    add(parts, group.answers().of(Answer.NO_PLAN), "proven to have none");
    add(parts, group.answers().of(Answer.NONE_FOUND), "without one found");
    add(parts, group.answers().of(Answer.MISTAKEN), "mistaken");
    add(parts, group.answers().of(Answer.FAILED), "failed");
    String runs = counted(group.answers().all(), "run", "runs");
    return parts.isEmpty() ? runs + "." : runs + ": " + String.join(", ", parts) + ".";
  }

  private static void add(List<String> parts, long count, String what) {
    if (count > 0) {
      parts.add(grouped(count) + " " + what);
    }
  }

  public String runs() {
    return grouped(group.answers().all());
  }

  public String plans() {
    return grouped(group.answers().of(Answer.PLAN));
  }

  /** Proven to have none. */
  public String none() {
    return grouped(group.answers().of(Answer.NO_PLAN));
  }

  /** Nothing found, and nothing proven. */
  public String open() {
    return grouped(group.answers().of(Answer.NONE_FOUND));
  }

  public String wrong() {
    return grouped(group.answers().wrong());
  }

  public String table() {
    return mean(group.means().atTheTable());
  }

  public String wishes() {
    return mean(group.means().wishes());
  }

  public String hands() {
    return mean(group.means().hands());
  }

  public String kilowattHours() {
    return means().isEmpty() ? NOTHING : kilowattHours(means().energy());
  }

  private String mean(double value) {
    return means().isEmpty() ? NOTHING : grouped(Math.round(value));
  }

  private Means means() {
    return group.means();
  }

  /** What the best run is called beside the choice that all these runs share; nothing where there is no plan. */
  public String best(Axis shared) {
    Best best = group.best();
    return best == null ? "" : best.nameBeside(shared);
  }

  /** The best run in a sentence; absent where there is no plan. */
  public @Nullable String bestInFull() {
    Best best = group.best();
    return best == null ? null
        : "%s: at the table %s, wishes %s.".formatted(best.name(), grouped(best.score().atTheTableInAll()),
            grouped(best.score().wishes()));
  }

  /** {@code 1 run}; {@code 1,200 runs}. */
  public static String counted(long count, String one, String several) {
    return grouped(count) + " " + (count == 1 ? one : several);
  }

  /** {@code 12.3}, of tenths. */
  public static String kilowattHours(double tenths) {
    return String.format(Locale.ENGLISH, "%,.1f", tenths / TENTHS);
  }

  /** {@code 1,200}. */
  public static String grouped(long number) {
    return String.format(Locale.ENGLISH, "%,d", number);
  }
}
