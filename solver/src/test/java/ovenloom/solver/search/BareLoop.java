package ovenloom.solver.search;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Runs;

/** The search as a plain loop over the decoder: the same start, moves like its moves, late acceptance, no Timefold. */
final class BareLoop {

  private static final int LATE = 100;
  private static final int A_ROUND = 5_000;
  private static final int NEAR = 20;
  private static final int[] TICKS = {1, 2, 3, 6, 9, 12, 24, 48, 96, 144, 288};

  private final Runs runs;
  private final Trial trial;
  private final Random lot;
  private final List<Turn> turns;
  private final long[] late = new long[LATE];
  private Decisions now;
  private long cost;

  BareLoop(Event event, long seed) {
    runs = Runs.of(event);
    trial = new Trial(runs);
    lot = new Random(seed);
    turns = new Turns(runs).open();
    now = new Pleas(trial, lot).hear(FirstOrder.of(runs), 400);
    settle();
  }

  Score best() {
    return trial.best().score();
  }

  long decoded() {
    return trial.decoded();
  }

  /** One more schedule. */
  void step() {
    if (trial.decoded() % A_ROUND == 0) {
      now = Shake.of(trial.best().decisions(), lot);
      settle();
    }
    Decisions next = now.copy();
    change(next);
    long found = Trial.cost(trial.of(next).score());
    int slot = (int) (trial.decoded() % LATE);
    if (found <= cost || found <= late[slot]) {
      now = next;
      cost = found;
    }
    late[slot] = cost;
  }

  private void settle() {
    cost = Trial.cost(trial.of(now).score());
    Arrays.fill(late, cost);
  }

  private void change(Decisions next) {
    int step = lot.nextInt(next.steps());
    Turn turn = turns.get(step);
    int move = lot.nextInt(13);
    if (move < 4) {
      shift(next, step, lot.nextInt(-NEAR, NEAR + 1));
    } else if (move < 6) {
      swap(next, lot.nextInt(next.steps()), lot.nextInt(next.steps()));
    } else if (move < 10) {
      int minutes = TICKS[lot.nextInt(TICKS.length)] * runs.event().clock() * (lot.nextBoolean() ? 1 : -1);
      next.setEarlier(step, Math.max(0, next.earlier(step) + minutes));
    } else if (move < 11) {
      next.setBake(step, lot.nextInt(Decisions.OPEN, turn.getWaysToBake().isEmpty() ? 0 : 12));
    } else if (move < 12) {
      next.setStay(step, lot.nextInt(Decisions.OPEN, 6));
    } else {
      next.setTogether(step, 1 + lot.nextInt(6));
    }
  }

  private static void shift(Decisions next, int step, int places) {
    double[] wanted = new double[next.steps()];
    for (int turn = 0; turn < wanted.length; turn++) {
      wanted[next.step(turn)] = turn;
    }
    wanted[step] += places + (places > 0 ? 0.5 : -0.5);
    next.queueBy(wanted);
  }

  private static void swap(Decisions next, int turn, int other) {
    int step = next.step(turn);
    next.setStep(turn, next.step(other));
    next.setStep(other, step);
  }
}
