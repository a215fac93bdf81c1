package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Meeting;
import ovenloom.solver.order.Option;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/** The search as a plain loop over the decoder: the same start, the plainest of its moves, late acceptance, no Timefold. */
final class BareLoop {

  private static final int LATE = 100;
  private static final int A_ROUND = 5_000;

  private final Trial trial;
  private final Random lot;
  private final Order moves;
  private final List<Consumer<Decisions>> kinds = new ArrayList<>();
  private final long[] late = new long[LATE];
  private Decisions now;
  private long cost;

  BareLoop(Event event, long seed) {
    Runs runs = Runs.of(event);
    trial = new Trial(runs, Judge.audit(runs.minutes().cards()));
    lot = new Random(seed);
    Turns turns = new Turns(runs, new Decoder(runs));
    moves = new Order(trial, turns.open(), event.clock(), turns.meetings());
    addKinds();
    now = new Pleas(trial, lot).hear(FirstOrder.of(runs), 400, () -> false);
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
    one(kinds).accept(next);
    long found = trial.price(next);
    int slot = (int) (trial.decoded() % LATE);
    if (found <= cost || found <= late[slot]) {
      now = next;
      cost = found;
    }
    late[slot] = cost;
  }

  private void settle() {
    cost = trial.price(now);
    Arrays.fill(late, cost);
  }

  /** As often as Timefold is told to draw them, of one step at a time; none for which there is nothing to choose. */
  private void addKinds() {
    more(4, next -> shift(next, one(moves.getTurns()).getStep(), one(moves.getShifts()).places()));
    more(2, next -> swap(next, lot.nextInt(next.steps()), lot.nextInt(next.steps())));
    more(4, this::nudge);
    moves.getOptions()
        .stream()
        .collect(Collectors.groupingBy(Option::variable))
        .values()
        .forEach(options -> more(1, next -> choose(next, one(options))));
    if (!moves.getMeetings().isEmpty()) {
      more(1, next -> meet(next, one(moves.getMeetings())));
    }
  }

  private void more(int times, Consumer<Decisions> kind) {
    for (int i = 0; i < times; i++) {
      kinds.add(kind);
    }
  }

  private <T> T one(List<T> of) {
    return of.get(lot.nextInt(of.size()));
  }

  private void nudge(Decisions next) {
    Turn turn = one(moves.getTurns());
    int step = turn.getStep();
    next.setEarlier(step, one(moves.getNudges()).from(next.earlier(step), turn.serves()));
  }

  private void choose(Decisions next, Option option) {
    switch (option.variable()) {
      case "start" -> next.setStart(option.step(), option.value());
      case "bake" -> next.setBake(option.step(), option.value());
      case "stay" -> next.setStay(option.step(), option.value());
      case "together" -> together(next, option);
      default -> throw new IllegalArgumentException(option.toString());
    }
  }

  private void together(Decisions next, Option option) {
    int batches = option.value();
    boolean isMost = !moves.getTurns().get(option.step()).getBatchesTogether().contains(batches + 1);
    next.setTogether(option.step(), isMost ? Decisions.AS_MANY_AS_MAY : batches);
  }

  private static void meet(Decisions next, Meeting meeting) {
    next.setBake(meeting.step(), meeting.way());
    next.setBake(meeting.other(), meeting.othersWay());
    double[] wanted = next.turns();
    wanted[meeting.step()] = wanted[meeting.other()] + 0.5;
    next.queueBy(wanted);
  }

  private static void shift(Decisions next, int step, int places) {
    double[] wanted = next.turns();
    wanted[step] += places + (places > 0 ? 0.5 : -0.5);
    next.queueBy(wanted);
  }

  private static void swap(Decisions next, int turn, int other) {
    int step = next.step(turn);
    next.setStep(turn, next.step(other));
    next.setStep(other, step);
  }
}
