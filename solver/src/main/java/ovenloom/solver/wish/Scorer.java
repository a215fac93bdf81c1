package ovenloom.solver.wish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.DialLog;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;

/** Scores drafts of one event, level by level. */
public final class Scorer {

  private final Event event;
  private final int[] tableTime;
  private final AtTheTable table;
  private final DialLog dials;
  private final List<WishPoints> wishes;

  /** A scorer for an event laid out as runs. */
  public Scorer(Runs runs) {
    event = runs.event();
    tableTime = runs.runs().stream().mapToInt(run -> event.courseOf(run.dish()).at()).toArray();
    table = new AtTheTable(runs);
    dials = new DialLog(event);
    wishes = List.of(
        new Freshness(runs), new SettingPoints(), new Calm(event), new DialTurns(), new Energy(),
        new Sessions());
  }

  /** The score of a draft; its first level is how far the draft falls short of a plan. */
  public Score of(Draft draft) {
    Outcome outcome = new Outcome(draft, dials);
    Map<Wish, Long> points = new EnumMap<>(Wish.class);
    for (Wish wish : Wish.values()) {
      points.put(wish, 0L);
    }
    wishes.forEach(wish -> points.put(wish.wish(), wish.of(outcome)));
    return Score.of(draft.shortfall(), table.of(draft), points, event.wishes(), early(draft));
  }

  private long early(Draft draft) {
    long early = 0;
    for (Run run : draft.runs().runs()) {
      early += run.step().serve() ? 0 : tableTime[run.index()] - draft.start(run.index());
    }
    return early;
  }
}
