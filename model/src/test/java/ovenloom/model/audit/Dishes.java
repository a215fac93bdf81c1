package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Quantity;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Matter;
import ovenloom.model.menu.Step;

/** Dishes for tests: hot, for ten guests, one batch, for the course "supper". */
public final class Dishes {

  private static final int GUESTS = 10;

  private final String name;
  private String course = "supper";
  private boolean food = true;
  private int batches = 1;
  private Arrives arrives = Arrives.HOT;
  private List<String> tags = List.of();
  private boolean waves;
  private @Nullable Integer servedOver;
  private @Nullable Integer bestFor;
  private Matter matter = Matter.UNSAID;
  private final Map<String, Quantity> ingredients = new LinkedHashMap<>();
  private final List<Steps> steps = new ArrayList<>();

  private Dishes(String name) {
    this.name = name;
  }

  public static Dishes aDish(String name) {
    return new Dishes(name);
  }

  /** Laying the table, and the like: work without food. */
  public static Dishes aChore(String name) {
    Dishes chore = new Dishes(name);
    chore.food = false;
    return chore;
  }

  public Dishes course(String wanted) {
    course = wanted;
    return this;
  }

  /** So many batches, of ten portions divided by them; a number that divides ten. */
  public Dishes batches(int count) {
    batches = count;
    return this;
  }

  public Dishes arrives(Arrives wanted) {
    arrives = wanted;
    return this;
  }

  public Dishes tags(String... all) {
    tags = List.of(all);
    return this;
  }

  public Dishes waves() {
    waves = true;
    return this;
  }

  public Dishes servedOver(int minutes) {
    servedOver = minutes;
    return this;
  }

  public Dishes kind(Kind as, Length piece) {
    return matter(new Matter(as, piece, null, null, null));
  }

  public Dishes matter(Matter as) {
    matter = as;
    return this;
  }

  /** For a batch: {@code ingredient("leeks", "1.5 kg")}. */
  public Dishes ingredient(String what, String howMuch) {
    if (Quantity.read(howMuch) instanceof Parsed.Good<Quantity>(Quantity quantity)) {
      ingredients.put(what, quantity);
      return this;
    }
    throw new IllegalArgumentException(howMuch);
  }

  public Dishes bestFor(int minutes) {
    bestFor = minutes;
    return this;
  }

  public Dishes step(Steps step) {
    steps.add(step);
    return this;
  }

  public Dish dish() {
    List<Step> all = new ArrayList<>();
    String before = null;
    for (Steps step : steps) {
      all.add(step.step(name, before));
      before = step.name();
    }
    Dish.Servings servings = new Dish.Servings(GUESTS, Fraction.ONE, 0, GUESTS / batches);
    return new Dish(
        name, course, food, servings, arrives, tags, waves, servedOver, bestFor, matter, ingredients,
        all);
  }
}
