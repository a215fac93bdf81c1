package ovenloom.model.menu;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Component;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Level;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Pace;
import ovenloom.model.measure.Quantity;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.Unit;
import ovenloom.model.safety.Profile;

/**
 * Events by seed, for laws: every kind of thing an event can hold, in every spelling, with names that play tricks. All names
 * in them exist; that a plan exists is not promised.
 */
public final class RandomEvents {

  private final Random random;
  private final Kitchen kitchen;
  private final int guests;

  private RandomEvents(long seed) {
    this.random = new Random(seed);
    this.kitchen = new RandomKitchens(random).kitchen();
    this.guests = 1 + random.nextInt(40);
  }

  /** The event of a seed. */
  public static Event event(long seed) {
    return new RandomEvents(seed).event();
  }

  private Event event() {
    ZoneId zone = random.nextBoolean() ? null : ZoneId.of("Europe/Paris");
    Calendar calendar = new Calendar(LocalDate.of(2026, 7, 1).plusDays(random.nextInt(60)), zone);
    List<Course> courses = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      courses.add(new Course(name("course", i), 720 + 90 * i + random.nextInt(60), random.nextInt(3) * 15));
    }
    List<Dish> dishes = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(4); i++) {
      dishes.add(dish(i, courses, dishes));
    }
    Map<Wish, Integer> wishes = Map.of(one(Wish.values()), random.nextInt(11));
    return new Event(name("event", 0), maybe(Profile.read("us-home")), guests, calendar,
        -random.nextInt(5_000),
        1 + random.nextInt(10), courses, kitchen, cooks(), dishes,
        random.nextBoolean() ? List.of() : List.of(new Event.Apart("fish", "no")), new Wishes(wishes));
  }

  private List<Cook> cooks() {
    List<Cook> cooks = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      List<Stretch> hours = new RandomKitchens(random).hours();
      List<Stretch> breaks = random.nextBoolean() ? List.of()
          : List.of(new Stretch(hours.getFirst().from(), hours.getFirst().from() + 15));
      cooks
          .add(new Cook(name("cook", i), hours, breaks, random.nextBoolean() ? Set.of() : Set.of("carving")));
    }
    cooks.add(new Cook("Carver", List.of(new Stretch(600, 1300)), List.of(), Set.of("carving", "off")));
    return cooks;
  }

  private Dish dish(int number, List<Course> courses, List<Dish> before) {
    String name = name("dish", number);
    boolean food = random.nextInt(6) > 0;
    Dish.Servings servings = new Dish.Servings(random.nextBoolean() ? guests : 1 + random.nextInt(20),
        Fraction.of(1 + random.nextInt(9), 1 + random.nextInt(4)), random.nextInt(3) * 5,
        random.nextBoolean() ? null : 4 + random.nextInt(8));
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(5); i++) {
      steps.add(step(name, food, i, steps, before));
    }
    return new Dish(name, one(courses).name(), food, servings, one(Arrives.values()),
        random.nextBoolean() ? List.of() : List.of("raw poultry", "fish").subList(0, 1 + random.nextInt(2)),
        random.nextBoolean(), maybe(random.nextInt(60)), maybe(random.nextInt(600)),
        matter(), ingredients(), steps);
  }

  private Matter matter() {
    int percent = random.nextInt(101);
    Map<Component, Double> shares = Map.of(Component.WATER, percent / 100.0, Component.FAT,
        (100 - percent) / 100.0);
    return new Matter(random.nextBoolean() ? one(Kind.values()) : null,
        random.nextBoolean() ? Length.mm(5 + random.nextInt(100)) : null,
        random.nextBoolean() ? Composition.of(shares) : null,
        random.nextBoolean() ? new Conductivity(20 + random.nextInt(4_000)) : null, mayBe());
  }

  private @Nullable Boolean mayBe() {
    return maybe(random.nextBoolean());
  }

  private Map<String, Quantity> ingredients() {
    Map<String, Quantity> all = new TreeMap<>();
    for (int i = 0; i < random.nextInt(4); i++) {
      Unit unit = one(Unit.values());
      all.put(name("ingredient", i),
          new Quantity(BigFraction.of(1 + random.nextInt(40), 1 + random.nextInt(4)), unit,
              unit == Unit.PIECE && random.nextBoolean() ? "eggs" : null));
    }
    return all;
  }

  private Step step(String dish, boolean food, int number, List<Step> own, List<Dish> others) {
    int least = 20 + random.nextInt(100);
    Pace pace = new Pace(least, least + random.nextInt(3) * 5, random.nextInt(3) * 20);
    Takes takes = new Takes(pace, maybe(least + 300));
    boolean once = random.nextInt(4) == 0;
    List<Need> needs = needs(least);
    return new Step(name("step", number), takes, once, random.nextInt(5) == 0, random.nextInt(5) == 0,
        mayBeAway(needs) && random.nextBoolean(),
        new Step.Together(1 + random.nextInt(3), random.nextBoolean()), needs,
        links(dish, food, own, others),
        random.nextBoolean() ? null : keeps(), maybe(one(StartState.values())), mayBe());
  }

  private static boolean mayBeAway(List<Need> needs) {
    return needs.stream().anyMatch(Need.Hands.class::isInstance)
        && needs.stream().noneMatch(each -> each instanceof Need.Bake || each instanceof Need.OnBurner);
  }

  /** In the order reading finds them. */
  private List<Need> needs(int minutes) {
    List<Need> needs = new ArrayList<>();
    switch (random.nextInt(3)) {
      case 0 -> needs.add(bake());
      case 1 -> needs.add(new Need.OnBurner(one(BurnerSize.values()), maybe(Temperature.fahrenheit(165))));
      default -> {
      }
    }
    if (random.nextInt(4) == 0) {
      needs.add(new Need.OnAppliance(one(kitchen.appliances()).name()));
    }
    kitchen.vessels()
        .stream()
        .filter(vessel -> random.nextInt(3) == 0)
        .forEach(vessel -> needs.add(new Need.InVessel(vessel.name(), 1 + random.nextInt(3))));
    if (random.nextInt(4) == 0) {
      needs.add(new Need.OnShelf(List.of(one(kitchen.stores()).name())));
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      needs.add(
          new Need.Hands(moment(minutes), 1 + random.nextInt(2), random.nextBoolean() ? null : "carving"));
    }
    return needs;
  }

  private Need.Moment moment(int minutes) {
    int lasting = 1 + random.nextInt(minutes / 2);
    return switch (random.nextInt(4)) {
      case 0 -> new Need.Moment.Throughout();
      case 1 -> new Need.Moment.First(lasting);
      case 2 -> new Need.Moment.Last(lasting);
      default -> new Need.Moment.At(random.nextInt(minutes / 2), lasting, random.nextBoolean());
    };
  }

  private Need.Bake bake() {
    List<Need.Stage> stages = new ArrayList<>();
    int count = 1 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      int at = 150 + random.nextInt(10) * 5;
      Setting written = random.nextBoolean() ? Setting.celsius(at) : Setting.fahrenheit(2 * at);
      Setting from = random.nextBoolean() ? written : Setting.celsius(100);
      Setting to = random.nextBoolean() ? written : Setting.fahrenheit(525);
      stages.add(new Need.Stage(written, from, to, one(List.of(Oven.STILL, Oven.FAN, "steam 50 %")),
          i < count - 1 ? 5 : null));
    }
    return new Need.Bake(stages, maybe(one(Level.values())), maybe(Length.mm(random.nextInt(400))),
        1 + random.nextInt(2), 1 + random.nextInt(2), one(List.of(0, 10, Need.Bake.TO_THE_END)),
        maybe(Temperature.fahrenheit(165)), one(List.of(20, 5)));
  }

  private Keeps keeps() {
    Map<String, Integer> stores = new TreeMap<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      stores.put(one(kitchen.stores()).name(), random.nextInt(10_000));
    }
    return new Keeps(maybe(random.nextInt(200)), maybe(random.nextInt(200)), maybe(random.nextInt(200)),
        stores);
  }

  /** In the order reading finds them, each step at most once in each kind. */
  private List<Link> links(String dish, boolean food, List<Step> own, List<Dish> others) {
    List<Link> links = new ArrayList<>();
    if (own.isEmpty() && others.isEmpty()) {
      return links;
    }
    Link.Kind follows = food ? Link.Kind.FOOD : Link.Kind.ORDER_ONLY;
    for (String step : some(own)) {
      links.add(link(follows, dish, step));
    }
    if (!others.isEmpty()) {
      Dish other = one(others);
      some(other.steps()).forEach(step -> links.add(link(Link.Kind.FOOD, other.name(), step)));
    }
    some(own).forEach(step -> links.add(link(Link.Kind.ALONGSIDE, dish, step)));
    if (food) {
      some(own).forEach(step -> links.add(link(Link.Kind.ORDER_ONLY, dish, step)));
    }
    if (!others.isEmpty()) {
      Dish other = one(others);
      some(other.steps()).forEach(step -> links.add(link(Link.Kind.ORDER_ONLY, other.name(), step)));
    }
    return links;
  }

  private Set<String> some(List<Step> steps) {
    Set<String> names = new TreeSet<>();
    for (int i = 0; i < random.nextInt(3) && !steps.isEmpty(); i++) {
      names.add(one(steps).name());
    }
    return names;
  }

  private Link link(Link.Kind kind, String dish, String step) {
    int least = random.nextInt(3) * 10;
    return new Link(kind, dish, step, least, maybe(least + random.nextInt(2_000)));
  }

  private String name(String kind, int number) {
    return RandomKitchens.name(random, kind, number);
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private <T> T one(T[] all) {
    return all[random.nextInt(all.length)];
  }

  private <T> @Nullable T maybe(T thing) {
    return random.nextBoolean() ? thing : null;
  }
}
