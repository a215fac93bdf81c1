package ovenloom.solver.search;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Audit;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Decoded;
import ovenloom.solver.wish.Scorer;

/**
 * Comes upon a plan for a roomy kitchen by walking blindly: from an order, slacks and choices drawn by lot, whatever
 * change falls no further short is kept.
 */
final class KnownPlan {

  private static final int CHANGES = 60;

  private final Runs runs;
  private final Decoder decoder;
  private final Random random;

  private KnownPlan(Event event, Random random) {
    runs = Runs.of(event);
    decoder = new Decoder(runs);
    this.random = random;
  }

  /** A plan the audit passes, or null where the walk led to none. */
  static @Nullable Plan of(Event event, Random random) {
    KnownPlan walk = new KnownPlan(event, random);
    Draft draft = walk.walk();
    if (draft == null) {
      return null;
    }
    Score score = new Scorer(walk.runs).of(draft);
    Plan plan = FairCopy.of(draft, List.of(), score);
    return Audit.of(event, plan).isEmpty() ? plan : null;
  }

  private @Nullable Draft walk() {
    Decisions now = start();
    long shortfall = decoder.decode(now).shortfall();
    for (int change = 0; change < CHANGES && shortfall > 0; change++) {
      Decisions next = now.copy();
      change(next);
      long then = decoder.decode(next).shortfall();
      if (then <= shortfall) {
        now = next;
        shortfall = then;
      }
    }
    return shortfall == 0 ? decoder.decode(now) : null;
  }

  private Decisions start() {
    Decisions start = Decisions.open(runs.work().steps().size());
    start.queueBy(random.doubles(start.steps()).toArray());
    for (int step = 0; step < start.steps(); step++) {
      start.setEarlier(step, someMinutes());
      start.setBake(step, some(decoder.waysToBake(step).size()));
      start.setStay(step, some(Decoded.places(decoder, step)));
    }
    return start;
  }

  private void change(Decisions decisions) {
    int step = random.nextInt(decisions.steps());
    switch (random.nextInt(4)) {
      case 0 -> swap(decisions, random.nextInt(decisions.steps()), random.nextInt(decisions.steps()));
      case 1 -> decisions.setEarlier(step, someMinutes());
      case 2 -> decisions.setBake(step, some(decoder.waysToBake(step).size()));
      default -> decisions.setStay(step, some(Decoded.places(decoder, step)));
    }
  }

  private static void swap(Decisions decisions, int turn, int other) {
    int step = decisions.step(turn);
    decisions.setStep(turn, decisions.step(other));
    decisions.setStep(other, step);
  }

  private int someMinutes() {
    return switch (random.nextInt(8)) {
      case 0 -> random.nextInt(240);
      case 1 -> random.nextInt(30);
      default -> 0;
    };
  }

  private int some(int ways) {
    return ways > 0 && random.nextInt(3) == 0 ? random.nextInt(ways) : Decisions.OPEN;
  }
}
