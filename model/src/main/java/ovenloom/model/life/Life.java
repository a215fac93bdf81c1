package ovenloom.model.life;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/**
 * How warm all food of a plan is, minute by minute, from its first step to the end of its service.
 *
 * <p>What goes into a step together is taken to be as much of each, and to even out. A prediction is no thermometer; local codes
 * and licensed practice come first.
 */
public final class Life {

  /** Dishes that split and join again and again could go more ways than anyone can count. */
  private static final int MOST_WAYS = 24;

  private final Plan plan;
  private final Work work;
  private final Substance substance;
  private final Cards cards;
  private final Places places;
  private final List<List<Leg>> legs = new ArrayList<>();
  private @Nullable List<Track> tracks;

  private Life(Plan plan, Cards cards, double draught, Unsaid unsaid) {
    this.plan = plan;
    this.cards = cards;
    work = cards.work();
    substance = cards.substance();
    places = new Places(plan.event().kitchen(), cards,
        new Lids(substance, plan.event().kitchen(), draught, unsaid));
  }

  /**
   * Follows all food of a plan without breaks.
   *
   * @param draught by how much air takes and gives more heat than is likely; 1 for what is likely
   */
  public static Life of(Plan plan, double draught) {
    return of(plan, new Cards(Work.of(plan.event())), draught, Unsaid.OPEN);
  }

  /**
   * The same, by cards that may have been used before, of the same menu.
   *
   * @param unsaid what is over food of which no card says
   */
  public static Life of(Plan plan, Cards cards, double draught, Unsaid unsaid) {
    Life life = new Life(plan, cards, draught, unsaid);
    life.work.steps().forEach(step -> life.legs.add(life.remembered(step)));
    return life;
  }

  Cards cards() {
    return cards;
  }

  /** The menu laid out, to which its steps belong. */
  public Work work() {
    return work;
  }

  /** A step and the wait after it; none for a chore. */
  public List<Leg> of(BatchStep step) {
    return legs.get(step.index());
  }

  /**
   * Of the ways that food goes through a batch of a dish, one that ends with it where there is one, and of these the one that
   * begins first; null where none is followed to the table.
   */
  public @Nullable Track of(Dish dish, int batch) {
    return tracks()
        .stream()
        .filter(track -> track.legs().stream().anyMatch(leg -> isOf(dish, batch, leg.step())))
        .min(Comparator.comparing((Track track) -> !isOf(dish, batch, track.last()))
            .thenComparingInt(Track::from))
        .orElse(null);
  }

  private static boolean isOf(Dish dish, int batch, BatchStep step) {
    return step.dish().name().equals(dish.name()) && step.batches().holds(batch);
  }

  /** The ways that food goes to the table: of each step those that begin first, and not more than a few. */
  public List<Track> tracks() {
    List<Track> known = tracks == null ? newTracks() : tracks;
    tracks = known;
    return known;
  }

  private List<Track> newTracks() {
    Map<Integer, List<List<BatchStep>>> ways = new HashMap<>();
    List<Track> all = new ArrayList<>();
    for (BatchStep step : work.steps()) {
      List<List<BatchStep>> to = of(step).isEmpty() ? List.of() : waysTo(step, ways);
      ways.put(step.index(), to);
      if (work.goesToTheTable(step.index())) {
        to.forEach(way -> all.add(track(way)));
      }
    }
    return List.copyOf(all);
  }

  private List<List<BatchStep>> waysTo(BatchStep step, Map<Integer, List<List<BatchStep>>> known) {
    List<List<BatchStep>> ways = work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .flatMap(link -> known.getOrDefault(link.from(), List.of()).stream())
        .sorted(Comparator.comparingInt(way -> of(way.getFirst()).getFirst().when().from()))
        .limit(MOST_WAYS)
        .map(way -> Stream.concat(way.stream(), Stream.of(step)).toList())
        .toList();
    return ways.isEmpty() ? List.of(List.of(step)) : ways;
  }

  private Track track(List<BatchStep> way) {
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      int until = i == way.size() - 1 ? Integer.MAX_VALUE : of(way.get(i + 1)).getFirst().when().from();
      of(way.get(i)).stream()
          .filter(leg -> leg.when().from() < until)
          .map(leg -> leg.until(until))
          .forEach(legs::add);
    }
    return new Track(legs);
  }

  private List<Leg> remembered(BatchStep step) {
    Placement run = run(step);
    if (run == null || !step.dish().food()) {
      return List.of();
    }
    List<LegMemory.Same> feeders = feeders(step).map(this::of).map(LegMemory.Same::new).toList();
    Lids lids = places.lids();
    LegMemory.Key key = new LegMemory.Key(step.index(), lids.draught(), lids.unsaid(), run, parts(step),
        feeders);
    return cards.legs().get(key, () -> legs(step, run));
  }

  private Stream<BatchStep> feeders(BatchStep step) {
    return work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .filter(before -> before.dish().food());
  }

  private List<Leg> legs(BatchStep step, Placement run) {
    TemperatureProfile food = start(step, run.when().from());
    if (food == null) {
      return List.of();
    }
    List<Leg> all = new ArrayList<>();
    int now = run.when().from();
    Need.Bake bake = step.step().bake();
    food = bake == null ? food : food.stretched(cards.fit(step, bake).body());
    for (Places.Placed placed : places.during(step, run)) {
      Store store = placed.store();
      food = store == null ? food : food.stretched(substance.body(step, store));
      now = add(all, step, placed, false, now, food);
      food = all.getLast().food().getLast();
    }
    if (step.step().serve()) {
      return all;
    }
    food = food.stretched(substance.body(step));
    for (Stay.Part part : parts(step)) {
      now = add(all, step, places.waiting(step, part, ovenWas(run)), true, part.when().from(), food);
      food = all.getLast().food().getLast();
    }
    int end = plan.event().endOfService(step.dish());
    if (work.goesToTheTable(step.index()) && now < end) {
      add(all, step, table(step, end - now), true, now, food);
    }
    return all;
  }

  private Places.Placed table(BatchStep step, int minutes) {
    return new Places.Placed(Leg.AT_THE_TABLE, places.counter(step, minutes).spell());
  }

  private static int add(
      List<Leg> all, BatchStep step, Places.Placed placed, boolean waits, int from,
      TemperatureProfile start) {
    List<TemperatureProfile> food = new ArrayList<>(List.of(start));
    for (int minute = 0; minute < placed.spell().minutes(); minute++) {
      food.add(Spell.next(placed.spell(), minute, food.getLast()));
    }
    Stretch when = new Stretch(from, from + placed.spell().minutes());
    all.add(new Leg(step, placed.where(), placed.store(), waits, when, food));
    return when.to();
  }

  /** The food a step begins with; null if something that goes into it is not followed. */
  private @Nullable TemperatureProfile start(BatchStep step, int minute) {
    Body body = substance.body(step);
    List<TemperatureProfile> comes = new ArrayList<>();
    for (BatchStep before : feeders(step).toList()) {
      List<Leg> was = of(before);
      if (was.isEmpty()) {
        return null;
      }
      comes.add(at(was, minute).stretched(substance.body(before)));
    }
    if (comes.size() == 1) {
      return comes.getFirst().reshaped(body);
    }
    return comes.isEmpty() ? TemperatureProfile.uniform(body, cards.fresh(step))
        : TemperatureProfile.together(body, comes);
  }

  private static TemperatureProfile at(List<Leg> legs, int minute) {
    Leg then = legs.getFirst();
    for (Leg leg : legs) {
      then = leg.when().from() <= minute ? leg : then;
    }
    return then.at(minute);
  }

  private @Nullable Placement run(BatchStep step) {
    return plan.placements()
        .stream()
        .filter(each -> is(each.dish(), each.step(), each.batches(), step))
        .findFirst()
        .orElse(null);
  }

  private List<Stay.Part> parts(BatchStep step) {
    return plan.stays()
        .stream()
        .filter(each -> is(each.dish(), each.step(), each.batches(), step))
        .flatMap(each -> each.parts().stream())
        .toList();
  }

  private static boolean is(String dish, String name, Batches batches, BatchStep step) {
    return dish.equals(step.dish().name()) && name.equals(step.step().name())
        && batches.holds(step.batches());
  }

  /** At which temperature the oven was that a run ended in. */
  private Temperature ovenWas(Placement run) {
    Baking baking = run.baking();
    Event event = plan.event();
    return baking == null ? event.kitchen().room() : baking.stages().getLast().mark().temperature();
  }
}
