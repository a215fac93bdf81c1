package ovenloom.model.life;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;

/** How cold food may be as a bake begins, by what is done before and where it may wait. */
public final class Starts {

  /** Minutes since it was heated after which food no longer counts as straight on. */
  private static final int STILL_HOT = 5;

  private final Work work;
  private final Cards cards;

  /**
   * One start state that a bake may have.
   *
   * @param celsius the coldest that it admits
   */
  public record Start(StartState state, double celsius) {}

  /** By these cards. */
  public Starts(Cards cards) {
    this.cards = cards;
    work = cards.work();
  }

  /** All that a bake may have, the one that is nearest to what its card means first; never empty. */
  public List<Start> of(BatchStep bake) {
    List<Map<StartState, Double>> parts = feeders(bake).stream().map(this::after).toList();
    Map<StartState, Double> fresh = fresh(bake);
    Set<StartState> states = EnumSet.noneOf(StartState.class);
    (parts.isEmpty() ? List.of(fresh) : parts).forEach(each -> states.addAll(each.keySet()));
    List<Start> all = new ArrayList<>();
    for (StartState state : states) {
      double mean = parts.stream()
          .mapToDouble(part -> at(part, state))
          .average()
          .orElse(fresh.values().iterator().next());
      all.add(new Start(state, mean));
    }
    double meant = cards.start(bake);
    all.sort(
        (one, other) -> Double.compare(Math.abs(one.celsius() - meant), Math.abs(other.celsius() - meant)));
    return all;
  }

  private List<BatchStep> feeders(BatchStep step) {
    return work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .filter(before -> before.dish().food())
        .toList();
  }

  private Map<StartState, Double> fresh(BatchStep step) {
    StartState starts = step.step().starts();
    StartState state = starts == null ? StartState.RESTED : starts;
    return new EnumMap<>(Map.of(state, cards.celsius(state)));
  }

  /** The coldest that it is in a state, or in the next one it may be in. */
  private static double at(Map<StartState, Double> part, StartState state) {
    double celsius = Double.NaN;
    for (Map.Entry<StartState, Double> each : part.entrySet()) {
      boolean colder = each.getKey().compareTo(state) > 0;
      celsius = Double.isNaN(celsius) || !colder ? each.getValue() : celsius;
    }
    return celsius;
  }

  /** The states in which the food of a step may come to the one that takes it, warmest first. */
  private Map<StartState, Double> after(BatchStep step) {
    Need.OnShelf shelf = step.step().shelf();
    Map<StartState, Double> all = shelf != null ? onShelves(shelf.stores()) : byItself(step);
    Keeps keeps = step.step().keeps();
    if (keeps != null) {
      onShelves(List.copyOf(keeps.stores().keySet()))
          .forEach((state, celsius) -> all.merge(state, celsius, Math::min));
    }
    return all;
  }

  private Map<StartState, Double> byItself(BatchStep step) {
    Map<StartState, Double> all = new EnumMap<>(StartState.class);
    if (cards.heats(step)) {
      all.put(StartState.STRAIGHT_ON,
          cards.coolingOnTheCounter(step, Unsaid.OPEN).after(STILL_HOT, cards.done(step)));
      all.put(StartState.RESTED, room());
      return all;
    }
    List<BatchStep> feeders = feeders(step);
    if (feeders.isEmpty()) {
      return fresh(step);
    }
    for (BatchStep before : feeders) {
      after(before)
          .forEach((state, celsius) -> all.merge(state == StartState.STRAIGHT_ON ? StartState.RESTED : state,
              Math.min(celsius, state == StartState.STRAIGHT_ON ? room() : celsius), Math::min));
    }
    return all;
  }

  private Map<StartState, Double> onShelves(List<String> stores) {
    Map<StartState, Double> all = new EnumMap<>(StartState.class);
    for (String name : stores) {
      Store store = work.event().kitchen().store(name);
      if (store != null) {
        StartState state = switch (store.kind()) {
          case FREEZER -> StartState.FROZEN;
          case HOT -> StartState.STRAIGHT_ON;
          case FRIDGE, ICE_BATH -> StartState.CHILLED;
        };
        all.merge(state, store.holds().inCelsius(), Math::min);
      }
    }
    return all;
  }

  private double room() {
    return work.event().kitchen().room().inCelsius();
  }
}
