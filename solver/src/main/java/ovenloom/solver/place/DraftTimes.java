package ovenloom.solver.place;

import java.util.Arrays;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.BatchStep;

/** When the steps of a draft run, and where their food waits. */
final class DraftTimes implements MeanWarmth.Timetable {

  private static final int NO_WAIT = -1;

  private final Draft draft;
  private final int[] runOf;
  private final int[] waitOf;

  DraftTimes(Draft draft) {
    this.draft = draft;
    Runs runs = draft.runs;
    runOf = runs.runOf().stream().mapToInt(Integer::intValue).toArray();
    waitOf = new int[runOf.length];
    Arrays.fill(waitOf, NO_WAIT);
    for (int wait = 0; wait < runs.waits().size(); wait++) {
      Wait each = runs.waits().get(wait);
      for (BatchStep unit : runs.runs().get(each.run()).units()) {
        if (each.batches().holds(unit.batches())) {
          waitOf[unit.index()] = wait;
        }
      }
    }
  }

  @Override
  public int start(int step) {
    return draft.start[runOf[step]];
  }

  @Override
  public int end(int step) {
    return draft.end[runOf[step]];
  }

  @Override
  public int parts(int step) {
    return waitOf[step] == NO_WAIT ? 0 : draft.waits.get(waitOf[step]).size();
  }

  private WaitPart part(int step, int part) {
    return draft.waits.get(waitOf[step]).get(part);
  }

  @Override
  public int place(int step, int part) {
    WaitPart there = part(step, part);
    return switch (there.kind()) {
      case COUNTER -> MeanWarmth.COUNTER;
      case STORE -> there.place();
      case BURNER, OVEN -> MeanWarmth.KEPT_WARM;
    };
  }

  @Override
  public int from(int step, int part) {
    return part(step, part).from();
  }

  @Override
  public int to(int step, int part) {
    return part(step, part).to();
  }

  @Override
  public int store(int step) {
    int run = runOf[step];
    return draft.shelves[run] == null ? MeanWarmth.COUNTER : draft.store[run];
  }
}
