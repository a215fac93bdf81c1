package ovenloom.model.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Plan;

/**
 * A plan on disk: JSON with a version, the whole event in it as a problem file has it, and digests of the files the event
 * came from.
 */
public final class PlanFile {

  private PlanFile() {}

  /** The plan as text. */
  public static String json(Plan plan) {
    return JsonText.of(PlanWriter.draft(plan));
  }

  /**
   * Reads a plan.
   *
   * @return the plan, or what is wrong with the file: damaged, foreign, of another version, or missing. The sources are those
   *     of this file, not of the event in it
   */
  public static Reading<Plan> read(Path file) {
    Desk desk = new Desk();
    Folder folder = folder(file, desk);
    Includes includes = folder == null ? Includes.none(desk) : new Includes(folder, desk);
    Written written = folder == null ? null : includes.first(file, Limits.PLAN);
    Plan plan = written == null ? null : new PlanReader(desk).plan(written);
    return folder == null || plan == null || !desk.mistakes().none()
        ? new Reading.Mistaken<>(desk.mistakes().all())
        : new Reading.Understood<>(plan, includes.sources(), List.of());
  }

  /** Where the file really is: a link to a plan is as good as the plan. */
  static @Nullable Folder folder(Path file, Desk desk) {
    try {
      return new Folder(Objects.requireNonNull(file.toRealPath().getParent(), "a file is in a folder"),
          Limits.PLAN);
    } catch (IOException e) {
      String called = file.toString();
      desk.mistake(new Place(called, 1, 1, "", 1), new Fault.NoSuchFile(called, Fault.Obstacle.MISSING));
      return null;
    }
  }
}
