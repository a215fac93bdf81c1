package ovenloom.model.life;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Work;

/**
 * How warm and how cold the food of a menu can get at all, whatever its plan. Bounds, no predictions: the laws of heat keep the order of two
 * foods in the same place, so what is worked out for the warmest that may come in holds for all.
 */
public final class Reach {

  /** No part of what is baked without a lid is hotter, C. */
  private static final double CRUST = 300;

  /** No part of any other food is hotter, C, but for what is said to be. */
  private static final double BOILING = 100;

  private final Cards cards;
  private final Work work;
  private final Kitchen kitchen;
  private final HottestBake bakes;
  private final Map<Integer, Double> inside = new HashMap<>();
  private final Map<Integer, Double> leaves = new HashMap<>();

  /** By these cards. */
  public Reach(Cards cards) {
    this(cards, true);
  }

  /**
   * By these cards.
   *
   * @param overdone whether a bake may be longer than its food needs
   */
  public Reach(Cards cards, boolean overdone) {
    this.cards = cards;
    work = cards.work();
    kitchen = work.event().kitchen();
    bakes = new HottestBake(cards, overdone);
  }

  /** Whether a step makes its food hot: on an oven or a burner, or in a machine. */
  public boolean heats(BatchStep step) {
    return cards.heats(step);
  }

  /** How warm the middle is at the end of a step that heats, as its card has it, C. */
  public double done(BatchStep step) {
    return cards.done(step);
  }

  /** The hottest that an oven may be in all stages of a bake; absent where it will not do for one of them. */
  public static @Nullable Temperature hottest(Oven oven, String mode, Need.Bake bake) {
    Temperature most = null;
    for (Need.Stage stage : bake.stages()) {
      List<Setting> marks = HottestBake.within(oven, mode, stage);
      if (marks.isEmpty()) {
        return null;
      }
      Temperature hottest = marks.getLast().temperature();
      most = most == null || hottest.compareTo(most) < 0 ? hottest : most;
    }
    return most;
  }

  /** The most that the coldest part of a step's food can get to, in the step or after it, C; and its mean, where it is ever stirred. */
  public double inside(BatchStep step) {
    Double known = inside.get(step.index());
    if (known != null) {
      return known;
    }
    double start = begins(step);
    double most = Math.max(during(step, start), waiting(step));
    inside.put(step.index(), most);
    return most;
  }

  /** The most that the coldest part of a step's food, or its mean, can be as it begins: as much of each of what goes in. */
  private double begins(BatchStep step) {
    return feeders(step).mapToDouble(before -> Math.min(inside(before), leaves(before)))
        .max()
        .orElse(cards.fresh(step));
  }

  private double during(BatchStep step, double start) {
    Need.Bake bake = step.step().bake();
    if (bake != null && cards.fit(step, bake).bends()) {
      return bakes.inside(step, bake, goesInAt(step), coldest(step));
    }
    if (heats(step)) {
      return Math.max(start, cards.done(step));
    }
    return DoubleStream.concat(DoubleStream.of(start, room()), airs(shelves(step))).max().orElseThrow();
  }

  /** The warmest place that its food may wait in; an oven may be at any mark. */
  private double waiting(BatchStep step) {
    Keeps keeps = step.step().keeps();
    boolean inItsOven = keeps != null && keeps.oven() != null && step.step().bake() != null;
    return inItsOven ? Double.POSITIVE_INFINITY : outOfTheOven(step);
  }

  private double outOfTheOven(BatchStep step) {
    Keeps keeps = step.step().keeps();
    boolean onItsBurner = keeps != null && keeps.burner() != null && step.step().burner() != null;
    return DoubleStream
        .concat(DoubleStream.of(room(), onItsBurner ? Places.TURNED_LOW : room()), airs(keeping(step)))
        .max()
        .orElseThrow();
  }

  /** The least that any of its food can be as a step begins, C. */
  private double coldest(BatchStep step) {
    return feeders(step)
        .mapToDouble(before -> Math.min(heats(before) ? cards.done(before) - 1 : coldest(before),
            DoubleStream.concat(DoubleStream.of(room()), airs(places(before))).min().orElseThrow()))
        .min()
        .orElse(cards.fresh(step));
  }

  /** The most that any part of a step's food can be as it begins, C. */
  public double goesInAt(BatchStep step) {
    return feeders(step).mapToDouble(this::leaves).max().orElse(cards.fresh(step));
  }

  /** The most that any part of a step's food can be once the step is over, and in the wait after it, C. */
  public double leaves(BatchStep step) {
    Double known = leaves.get(step.index());
    if (known == null) {
      known = Math.max(ends(step),
          DoubleStream.concat(DoubleStream.of(room()), airs(keeping(step))).max().orElseThrow());
      leaves.put(step.index(), known);
    }
    return known;
  }

  private double ends(BatchStep step) {
    if (step.step().bake() != null) {
      return cards.substance().wetness(step) > 0 ? CRUST : Math.max(BOILING, cards.done(step));
    }
    if (heats(step)) {
      return cards.done(step);
    }
    double start = Math.max(goesInAt(step), room());
    return shelves(step).stream().mapToDouble(store -> after(step, start, store)).max().orElse(start);
  }

  /** The warmest of what was as warm all through, after a step in a cold or hot place. */
  private double after(BatchStep step, double celsius, Store store) {
    TemperatureProfile food = stood(step, celsius, in(step, store).dry(), step.minutes());
    return Math.max(store.holds().inCelsius(), Math.max(food.middle(), food.surface()));
  }

  /** Minutes that food which is as warm all through takes somewhere until something is so of it; one more than the most if longer. */
  public int minutes(BatchStep step, double celsius, Surroundings there, Predicate<TemperatureProfile> until,
      int most) {
    TemperatureProfile food = TemperatureProfile.uniform(cards.substance().body(step), celsius);
    int minute = 0;
    while (minute <= most && !until.test(food)) {
      food = Spell.aMinute(food, there);
      minute++;
    }
    return minute;
  }

  /** How warm food is, stirred, that was as warm all through and stood somewhere. */
  public double mean(BatchStep step, double celsius, Surroundings there, int minutes) {
    return stood(step, celsius, there, minutes).mean();
  }

  private TemperatureProfile stood(BatchStep step, double celsius, Surroundings there, int minutes) {
    TemperatureProfile food = TemperatureProfile.uniform(cards.substance().body(step), celsius);
    for (int minute = 0; minute < minutes && !food.isAsWarmAs(there.air().inCelsius()); minute++) {
      food = Spell.aMinute(food, there);
    }
    return food;
  }

  /**
   * The least minutes that the middle of a step's food takes to cool from one temperature to another, C, by its slowest way of cooling, which any
   * other way only adds to; infinite if nothing is as cold.
   */
  public double cooling(BatchStep step, double from, double to, List<Surroundings> places) {
    double air = places.stream().mapToDouble(each -> each.air().inCelsius()).min().orElseThrow();
    double fastest = places.stream().mapToDouble(each -> each.takesAtMost(from, to)).max().orElseThrow();
    return air >= to ? Double.POSITIVE_INFINITY
        : Math.log((from - air) / (to - air)) / cards.substance().body(step).coolingRate(fastest);
  }

  /** Whether the food of two steps is as thick, so that none is poured out flat between them. */
  public boolean isAsThick(BatchStep one, BatchStep other) {
    Body body = cards.substance().body(one);
    return body.equals(cards.substance().body(other));
  }

  /** What is around the food of a step on the counter. */
  public Surroundings counter(BatchStep step) {
    return cards.lids(Unsaid.OPEN).onTheCounter(step);
  }

  /** The air of the oven that a step's food may be left in, as cold as it gets. */
  public Stream<Surroundings> ovenTurnedOff(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps == null || keeps.oven() == null ? Stream.of()
        : Stream.of(new Surroundings(kitchen.room(), Places.IN_AN_IDLE_OVEN, 0));
  }

  /** What is around the food of a step in a cold or hot place. */
  public Surroundings in(BatchStep step, Store store) {
    return cards.lids(Unsaid.LOOSE).in(step, store);
  }

  /** The cold and hot places that a step is in. */
  public List<Store> shelves(BatchStep step) {
    Need.OnShelf shelf = step.step().shelf();
    return shelf == null ? List.of() : stores(shelf.stores());
  }

  /** The cold and hot places that a step's food may wait in. */
  public List<Store> keeping(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps == null ? List.of() : stores(List.copyOf(keeps.stores().keySet()));
  }

  private List<Store> places(BatchStep step) {
    return Stream.concat(shelves(step).stream(), keeping(step).stream()).toList();
  }

  private List<Store> stores(List<String> names) {
    return kitchen.stores().stream().filter(store -> names.contains(store.name())).toList();
  }

  private Stream<BatchStep> feeders(BatchStep step) {
    return work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .filter(before -> before.dish().food());
  }

  private double room() {
    return kitchen.room().inCelsius();
  }

  private static DoubleStream airs(List<Store> stores) {
    return stores.stream().mapToDouble(store -> store.holds().inCelsius());
  }
}
