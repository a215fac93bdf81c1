package ovenloom.model.file;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Quantity;
import ovenloom.model.measure.Unit;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Matter;
import ovenloom.model.menu.Step;

/** Reads the dishes of an event. */
final class DishReader {

  static final Keys DISH = Keys.of("a dish", "dish", "course", "portions", "portions a guest", "spare", "for",
      "arrives",
      "tags", "waves", "served over", "best for", "kind", "thick", "made of", "conducts", "covered",
      "ingredients", "food", "steps", "from");

  private static final BigInteger FINEST = BigInteger.valueOf(8);
  private static final BigFraction MOST = BigFraction.of(20);

  private final Desk desk;
  private final List<Course> courses;
  private final Kitchen kitchen;
  private final int guests;
  private final StepNames names = new StepNames();

  DishReader(Desk desk, List<Course> courses, Kitchen kitchen, int guests) {
    this.desk = desk;
    this.courses = courses;
    this.kitchen = kitchen;
    this.guests = guests;
  }

  List<Dish> dishes(List<Written> written) {
    written.forEach(this::nameSteps);
    List<Dish> dishes = new ArrayList<>();
    for (Written each : written) {
      Dish dish = dish(each);
      if (dish != null) {
        dishes.add(dish);
      }
    }
    return dishes;
  }

  /** Notes every name before any is looked up; what is wrong with them is said later. */
  private void nameSteps(Written written) {
    Desk quiet = new Desk();
    String dish = written instanceof Written.Keyed keyed ? name(quiet, keyed, "dish") : null;
    Written.Entry steps = written instanceof Written.Keyed keyed ? keyed.entry("steps") : null;
    if (dish == null || steps == null) {
      return;
    }
    for (Written each : quiet.items(steps.value())) {
      if (!(each instanceof Written.Keyed card)) {
        continue;
      }
      String step = name(quiet, card, "do");
      if (step != null && !names.add(dish, step)) {
        desk.mistake(new Fields(quiet, card, StepReader.STEP).placeOf("do"),
            new Fault.RepeatedName(step, "step"));
      }
    }
  }

  private static @Nullable String name(Desk quiet, Written.Keyed keyed, String key) {
    Written.Entry entry = keyed.entry(key);
    return entry == null ? null : quiet.name(entry.value());
  }

  private @Nullable Dish dish(Written written) {
    int faults = desk.faults();
    Fields dish = desk.fields(written, DISH);
    String name = dish.takeNeeded("dish", named -> desk.newName(named, Names.Kind.DISH));
    boolean food = dish.read("food", Scalars::yesOrNo, true);
    Dish.Servings servings = servings(dish);
    String course = course(dish);
    Integer servedOver = dish.read("served over", Scalars::minutes);
    boolean spoilt = desk.faults() > faults;
    List<Step> steps = steps(dish, name == null ? "" : name, food, servings);
    boolean cooks = food && steps.stream().anyMatch(Step::cooks);
    Arrives arrives = dish.read("arrives", Scalars.oneOf(Arrives.class), cooks ? Arrives.HOT : Arrives.COOL);
    List<String> tags = dish.each("tags", desk::name)
        .stream()
        .map(tag -> tag.toLowerCase(Locale.ROOT))
        .toList();
    boolean waves = dish.yes("waves");
    Integer bestFor = dish.read("best for", Scalars::minutes);
    Matter matter = new MatterReader(desk).matter(dish);
    Map<String, Quantity> ingredients = ingredients(dish);
    if (name == null || steps.isEmpty()) {
      return null;
    }
    dish.standFor(Subject.dish(name), "dish");
    if (spoilt) {
      desk.register().spoil(Subject.dish(name));
    }
    return new Dish(name, course, food, servings, arrives, tags, waves, servedOver, bestFor, matter,
        ingredients,
        steps);
  }

  /** Some course where its own cannot be read. */
  private String course(Fields dish) {
    Written written = dish.value("course");
    if (written == null && courses.size() <= 1) {
      return courses.isEmpty() ? "" : courses.getFirst().name();
    }
    Written needed = dish.needed("course");
    String course = needed == null ? null : desk.reference(needed, Names.Kind.COURSE);
    return course != null ? course : courses.isEmpty() ? "" : courses.getFirst().name();
  }

  private Dish.Servings servings(Fields dish) {
    return new Dish.Servings(
        dish.read("for", Scalars::count, guests),
        dish.read("portions a guest", DishReader::portions, Fraction.ONE),
        dish.read("spare", DishReader::spare, 0),
        dish.read("portions", Scalars::count));
  }

  private static Parsed<Integer> spare(String text) {
    return Scalars.checked(Scalars.percent(text), text, n -> n <= 100 ? n : null, "at most 100 %");
  }

  private static Parsed<Fraction> portions(String text) {
    return Scalars.checked(Quantity.read(text), text, DishReader::fraction,
        "a number of portions like \"2\" or \"1 1/2\"");
  }

  private static @Nullable Fraction fraction(Quantity quantity) {
    BigFraction amount = quantity.amount();
    boolean small = amount.getDenominator().compareTo(FINEST) <= 0 && amount.compareTo(MOST) <= 0;
    boolean some = amount.signum() > 0 && quantity.unit() == Unit.PIECE && quantity.counted() == null;
    return small && some
        ? Fraction.of(amount.getNumerator().intValueExact(), amount.getDenominator().intValueExact()) : null;
  }

  private Map<String, Quantity> ingredients(Fields dish) {
    Map<String, Quantity> all = new LinkedHashMap<>();
    Written written = dish.value("ingredients");
    for (Written.Entry entry : written == null ? List.<Written.Entry>of()
        : desk.entries(written, "ingredients", "flour: 250 g")) {
      String name = desk.name(entry.key());
      Quantity quantity = desk.read(entry.value(), Quantity::read);
      if (name != null && quantity != null) {
        all.put(name, quantity);
      }
    }
    return all;
  }

  private List<Step> steps(Fields dish, String name, boolean food, Dish.Servings servings) {
    StepReader reader = new StepReader(desk, name, new KeepsReader(desk, kitchen),
        new LinksReader(desk, names, name, food), servings);
    Written written = dish.needed("steps");
    dish.refuseEmpty("steps");
    List<Step> steps = new ArrayList<>();
    String before = null;
    for (Written each : written == null ? List.<Written>of() : desk.items(written)) {
      Step step = reader.step(each, before);
      if (step != null) {
        steps.add(step);
        before = step.name();
      }
    }
    return steps;
  }
}
