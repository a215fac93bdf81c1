package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/**
 * Foresees in short where food will cool too slowly or be left out too long, so that the search keeps away from what the audit
 * would refuse. The audit has the last word.
 */
final class Forecast {

  /** More than this does not make it worse, minutes. */
  private static final int BAD_ENOUGH = 60;

  /** It cools no longer, or never had to. */
  private static final double COOL = -1;

  private final Work work;
  private final MeanWarmth warmth;
  private final Perishing perishing;
  private final List<CoolDown> limits;
  private final int mostOut;
  private final boolean[] isKept;
  private final int[] runOf;
  private final int[][] feeders;
  private final double[] temperature;
  private final double[][] cooling;
  private final double[] out;
  private final int[] waitsMost;
  private final double[] mostWaited;

  private double now;
  private final double[] clocks;
  private double left;
  private double over;
  private double leftOver;

  Forecast(Runs runs, MeanWarmth warmth) {
    this.work = runs.work();
    this.warmth = warmth;
    Event event = runs.event();
    Profile profile = Profile.of(event.rules());
    Kitchen kitchen = event.kitchen();
    perishing = new Perishing(runs.minutes().cards());
    limits = profile.cool();
    mostOut = profile.out()
        .stream()
        .mapToInt(limit -> kitchen.room().compareTo(limit.hotAir()) > 0 ? limit.then() : limit.minutes())
        .min()
        .orElse(Integer.MAX_VALUE);
    isKept = new boolean[kitchen.stores().size()];
    for (int store = 0; store < isKept.length; store++) {
      Store each = kitchen.stores().get(store);
      isKept[store] = profile.out()
          .stream()
          .allMatch(
              limit -> each.holds().compareTo(limit.from()) <= 0 || each.holds().compareTo(limit.to()) >= 0);
    }
    int steps = work.steps().size();
    runOf = runs.runOf().stream().mapToInt(Integer::intValue).toArray();
    feeders = work.steps().stream().map(step -> warmth.feeders(step.index())).toArray(int[][]::new);
    temperature = new double[steps];
    cooling = new double[steps][limits.size()];
    out = new double[steps];
    waitsMost = new int[steps];
    mostWaited = new double[steps];
    clocks = new double[limits.size()];
  }

  /** Notes what will not do. */
  void check(Draft draft) {
    MeanWarmth.Timetable times = draft.timetable();
    for (int step = 0; step < feeders.length; step++) {
      if (work.steps().get(step).dish().food()) {
        over = 0;
        leftOver = 0;
        begin(times, step, draft.begins[step]);
        if (work.goesToTheTable(step)) {
          walk(times, step, Integer.MAX_VALUE);
          atTheTable(times, step);
          blameIfLonger(step, left - out[step], step);
        }
        note(draft, step);
      }
    }
  }

  private void note(Draft draft, int step) {
    if (Math.max(over, leftOver) > 0) {
      draft.isOff(runOf[step], (long) Math.ceil(Math.min(BAD_ENOUGH, Math.max(over, leftOver))));
    }
    if (leftOver > 0) {
      draft.leavesOutTooLong(runOf[waitsMost[step]], (int) Math.ceil(Math.min(BAD_ENOUGH, leftOver)));
    }
  }

  /** What comes in, the worst of each that feeds it. */
  private void begin(MeanWarmth.Timetable times, int step, double mean) {
    double warmest = mean;
    double longest = 0;
    Arrays.fill(cooling[step], COOL);
    waitsMost[step] = step;
    mostWaited[step] = 0;
    for (int feeder : feeders[step]) {
      walk(times, feeder, times.start(step));
      warmest = feeders[step].length == 1 ? now : warmest;
      longest = Math.max(longest, left);
      blame(step, feeder);
      for (int limit = 0; limit < clocks.length; limit++) {
        cooling[step][limit] = Math.max(cooling[step][limit], clocks[limit]);
      }
    }
    temperature[step] = warmest;
    out[step] = longest;
  }

  /** Whose food waits longest, of those on the way. */
  private void blame(int step, int feeder) {
    blameIfLonger(step, left - out[feeder], feeder);
    blameIfLonger(step, mostWaited[feeder], waitsMost[feeder]);
  }

  private void blameIfLonger(int step, double waited, int who) {
    if (waited > mostWaited[step]) {
      waitsMost[step] = who;
      mostWaited[step] = waited;
    }
  }

  /** A step and the wait after it, up to a minute. */
  private void walk(MeanWarmth.Timetable times, int step, int until) {
    now = temperature[step];
    left = out[step];
    System.arraycopy(cooling[step], 0, clocks, 0, clocks.length);
    if (warmth.isHeated(step)) {
      over(0);
      now = warmth.hot(step);
      Arrays.fill(clocks, perishing.mustBeCooled(step) ? 0 : COOL);
    } else {
      stay(step, times.store(step), times.end(step) - times.start(step));
    }
    for (int part = 0; part < times.parts(step); part++) {
      int minutes = Math.min(times.to(step, part), until) - times.from(step, part);
      if (minutes > 0) {
        stay(step, times.place(step, part), minutes);
      }
    }
  }

  private void stay(int step, int place, int minutes) {
    for (int i = 0; i < clocks.length; i++) {
      if (clocks[i] != COOL) {
        double hot = Math.min(minutes, warmth.minutesTo(step, place, now, limits.get(i).from().inCelsius()));
        double cold = warmth.minutesTo(step, place, now, limits.get(i).to().inCelsius());
        clocks[i] += Math.min(minutes, cold) - hot;
        over = Math.max(over, cold <= minutes ? clocks[i] - limits.get(i).minutes() : 0);
        clocks[i] = cold <= minutes ? COOL : clocks[i];
      }
    }
    boolean isOut = perishing.mustBeKept(step)
        && (place == MeanWarmth.COUNTER || (place >= 0 && !isKept[place]));
    left += isOut ? minutes : 0;
    leftOver = Math.max(leftOver, left - mostOut);
    now = warmth.after(step, place, minutes, now);
  }

  private void atTheTable(MeanWarmth.Timetable times, int step) {
    int parts = times.parts(step);
    int since = parts == 0 ? times.end(step) : times.to(step, parts - 1);
    int minutes = work.event().endOfService(work.steps().get(step).dish()) - since;
    if (minutes > 0) {
      stay(step, MeanWarmth.COUNTER, minutes);
    }
    over(0);
  }

  /** What still cools is too slow if its time is over. */
  private void over(double least) {
    over = Math.max(over, least);
    for (int i = 0; i < clocks.length; i++) {
      over = Math.max(over, clocks[i] - limits.get(i).minutes());
    }
  }
}
