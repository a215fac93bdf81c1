package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.stream.DoubleStream;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;

/**
 * Takes a dish that loses at the table and some that are served at about the same time out of the queue, and puts each back, from its heat on,
 * ahead of that other one by which all is best; then lets the food of the loser wait where that is best. For kitchens where many want the last
 * minutes: a change by lot seldom moves what has to make room. Iterated greedy, as Ruiz and Stuetzle do for flow shops (2007).
 */
final class Reinsertion {

  /** Dishes taken out beside the one that loses. */
  private static final int OTHERS = 2;

  /** Served at about the same time: minutes. */
  private static final int SOON = 45;

  private final Trial trial;
  private final Event event;
  private final FromTheHeat hot;
  private final Decoder decoder;
  private final Random lot;
  private BooleanSupplier isOver = () -> false;

  private record Tried(Decisions decisions, long cost, Map<String, Long> lost) {

    Tried orIfBetter(Tried other) {
      return other.cost < cost ? other : this;
    }
  }

  Reinsertion(Trial trial, Event event, FromTheHeat hot, Decoder decoder, Random lot) {
    this.trial = trial;
    this.event = event;
    this.hot = hot;
    this.decoder = decoder;
    this.lot = lot;
  }

  /** The best on the way from there, until none of the hot and warm dishes loses, so many are tried or the time is over. */
  Decisions from(Decisions good, int most, BooleanSupplier over) {
    long end = trial.decoded() + most;
    isOver = () -> trial.decoded() >= end || over.getAsBoolean();
    Tried best = tried(good);
    List<Dish> losers = losers(best);
    while (!losers.isEmpty() && !isOver.getAsBoolean()) {
      Tried next = reinserted(best.decisions, oneOf(losers, best.lost));
      best = next.cost <= best.cost ? next : best;
      losers = losers(best);
    }
    return best.decisions;
  }

  private List<Dish> losers(Tried tried) {
    return hot.dishes().stream().filter(dish -> tried.lost.containsKey(dish.name())).toList();
  }

  /** By lot; who loses four times as much is drawn twice as often. */
  private Dish oneOf(List<Dish> losers, Map<String, Long> lost) {
    double[] shares = losers.stream()
        .mapToDouble(dish -> Math.sqrt(lost.getOrDefault(dish.name(), 0L)))
        .toArray();
    double left = lot.nextDouble() * Arrays.stream(shares).sum();
    int drawn = 0;
    while (drawn < shares.length - 1 && left >= shares[drawn]) {
      left -= shares[drawn++];
    }
    return losers.get(drawn);
  }

  private Tried tried(Decisions decisions) {
    Bench.Tried tried = trial.of(decisions);
    return new Tried(decisions, trial.cost(tried.score()), Map.copyOf(tried.score().atTheTable()));
  }

  private static Tried untried(Decisions decisions) {
    return new Tried(decisions, Long.MAX_VALUE, Map.of());
  }

  private Tried reinserted(Decisions from, Dish loser) {
    List<Dish> near = hot.dishes().stream().filter(dish -> Math.abs(due(dish) - due(loser)) <= SOON).toList();
    List<Dish> others = new ArrayList<>(near);
    others.remove(loser);
    Collections.shuffle(others, lot);
    List<Dish> taken = new ArrayList<>(others.subList(0, Math.min(OTHERS, others.size())));
    taken.add(lot.nextInt(taken.size() + 1), loser);
    Tried now = untried(from);
    for (Dish dish : taken) {
      now = ahead(now.decisions, dish, near);
    }
    return waiting(now, loser);
  }

  private int due(Dish dish) {
    return event.due(dish, 1);
  }

  /** Ahead of one of the others, or behind all of them. */
  private Tried ahead(Decisions from, Dish dish, List<Dish> near) {
    Tried best = untried(from);
    for (Dish other : near) {
      if (!other.equals(dish) && !isOver.getAsBoolean()) {
        best = best.orIfBetter(tried(put(from, dish, turns(from, other).min().orElseThrow() - 0.5)));
      }
    }
    double last = near.stream().flatMapToDouble(other -> turns(from, other)).max().orElseThrow();
    return isOver.getAsBoolean() ? best : best.orIfBetter(tried(put(from, dish, last + 0.5)));
  }

  private Decisions put(Decisions from, Dish dish, double to) {
    double[] wanted = from.turns();
    Decisions next = from.copy();
    List<Integer> steps = hot.of(dish)
        .stream()
        .sorted(Comparator.comparingDouble(step -> wanted[step]))
        .toList();
    for (int i = 0; i < steps.size(); i++) {
      wanted[steps.get(i)] = to + i / (2.0 * steps.size());
      next.setEarlier(steps.get(i), 0);
    }
    next.queueBy(wanted);
    return next;
  }

  private DoubleStream turns(Decisions from, Dish dish) {
    double[] turns = from.turns();
    return hot.of(dish).stream().mapToDouble(step -> turns[step]);
  }

  private Tried waiting(Tried from, Dish dish) {
    int last = hot.of(dish).getLast();
    Tried best = from;
    for (int way = Decisions.OPEN; way < decoder.waysToWait(last) && !isOver.getAsBoolean(); way++) {
      if (way != from.decisions.stay(last)) {
        Decisions next = from.decisions.copy();
        next.setStay(last, way);
        best = best.orIfBetter(tried(next));
      }
    }
    return best;
  }
}
