package ovenloom.solver.exact;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import ovenloom.model.menu.Event;

/**
 * A service of many small dishes out of a kitchen with deck ovens, each of which one vessel fills. So that CP-SAT can be told all of it, there
 * are vessels enough, the fridge takes all the warm food there is, and even what comes from the fridge is to arrive hot.
 */
public final class LargeKitchen {

  /** Dishes with which the kitchen is as it is written here; with fewer there is less of everything. */
  private static final int FULL = 80;

  private static final int DISHES_A_COURSE = 20;

  private final Random random;
  private final int dishes;
  private final StringBuilder text = new StringBuilder();

  private LargeKitchen(long seed, int dishes) {
    random = new Random(seed * 104_729 + 11);
    this.dishes = dishes;
  }

  /** The problem file of a seed, with so many dishes. */
  public static String text(long seed, int dishes) {
    return new LargeKitchen(seed, dishes).write(seed);
  }

  /** What is written, as an event; mistakes in it fail the test. */
  public static Event of(long seed, int dishes, Path folder) throws IOException {
    return SmallKitchen.read(text(seed, dishes), folder);
  }

  private String write(long seed) {
    line("ovenloom: 1", "event: Large service " + seed, "guests: 8", "clock: 1 min",
        "wishes: {calm: 0, dial: 0, energy: 0}", "courses:");
    for (int course = 1; course <= course(dishes - 1); course++) {
      line("  - {name: course " + course + ", at: 2026-11-20 " + (17 + course) + ":00}");
    }
    kitchen();
    cooks();
    line("dishes:");
    for (int i = 0; i < dishes; i++) {
      dish(i);
    }
    return text.toString();
  }

  private void kitchen() {
    line("kitchen:", "  landing: " + of(90), "  ovens:");
    for (int i = 1; i <= Math.max(2, of(8 + random.nextInt(3))); i++) {
      line("    - {name: deck " + i + ", dial: 60 C to 250 C, step: 10 C, modes: [still],",
          "       heats: 200 C in 20 min, cools: 200 C to 150 C in " + (10 + random.nextInt(10)) + " min,",
          "       racks: {count: 1, size: 45 x 36 cm, clear: 15 cm}}");
    }
    line("  burners: [large" + ", large".repeat(of(4)) + ", medium".repeat(of(5)) + ", small".repeat(of(5))
        + "]");
    line("  cold: [{name: fridge, holds: 4 C, warm load: 500 kg, shelves: {count: " + of(14)
        + ", size: 32 x 30 x 20 cm}}]");
    line("  hot: [{name: cabinet, holds: 70 C, shelves: {count: " + of(2) + ", size: 44 x 32 x 20 cm}}]");
    line("  appliances: {mixer: " + of(6) + "}", "  vessels:");
    line("    bowl: {count: 300, size: 28 x 28 x 12 cm}", "    tray: {count: 300, size: 42 x 30 x 3 cm}");
    line("    dish: {count: 300, size: 40 x 28 x 7 cm}", "    cup: {count: 300, size: 30 x 20 x 7 cm}");
    line("    pot: {count: 300, size: 24 x 24 x 15 cm}");
  }

  private static int course(int dish) {
    return 1 + dish / DISHES_A_COURSE;
  }

  private int of(int many) {
    return Math.ceilDiv(many * dishes, FULL);
  }

  private void cooks() {
    line("cooks:");
    for (int i = 1; i <= Math.max(3, of(6 + random.nextInt(2))); i++) {
      line("  - {name: cook " + i + (i <= 2 ? ", skills: [carving]" : "") + ", hours: {on the day: "
          + (i <= 2 ? "12:30" : "13:00") + "-21:30}}");
    }
  }

  private void dish(int number) {
    line("  - dish: dish " + (number + 1), "    course: course " + course(number),
        "    thick: " + one("6", "8", "10") + " mm",
        "    arrives: " + one("hot", "hot", "warm"), "    tags: [not tcs]", "    steps:");
    switch (random.nextInt(5)) {
      case 0 -> boiled();
      case 1 -> chilled();
      case 2 -> roasted();
      default -> baked();
    }
  }

  private void boiled() {
    step("do: cut, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl, keeps: {counter: 2 h}");
    step("do: boil, takes: " + minutes(15, 40) + ", burner: " + one("small", "medium", "large")
        + ", in: pot, hands: " + one("{first: 2 min}", "{last: 3 min}", "[{at: 8 min, for: 2 min}]")
        + one(", keeps: {burner: 30 min}", ", keeps: {counter: 20 min}"));
    step("do: dress, takes: " + minutes(3, 8) + ", hands: throughout, in: cup" + keepsHot());
  }

  private void baked() {
    step("do: mix, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl" + one("", ", appliance: mixer")
        + ", keeps: {counter: " + one("30 min", "1 h", "2 h") + "}");
    step("do: shape, takes: " + minutes(4, 10) + ", hands: throughout, in: tray, keeps: {counter: "
        + one("20 min", "40 min", "1 h") + "}");
    step("do: bake, takes: " + minutes(15, 40) + bake() + one("", ", hands: [{at: 8 min, for: 2 min}]")
        + ", keeps: {counter: " + one("20 min", "1 h") + "}");
    step("do: portion, takes: " + minutes(2, 6) + ", hands: throughout, in: dish" + keepsHot());
  }

  private void chilled() {
    step("do: whisk, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl, appliance: mixer");
    step("do: fill, takes: " + minutes(3, 6) + ", hands: throughout, in: cup");
    step("do: set, takes: " + minutes(40, 80) + ", up to: 3 h, cold: fridge, keeps: {fridge: 2 h}");
    step("do: garnish, takes: " + minutes(2, 6) + ", hands: throughout, keeps: {counter: 30 min}");
  }

  private void roasted() {
    step("do: season, takes: " + minutes(4, 8) + ", hands: throughout, in: dish, keeps: {counter: 1 h}");
    step("do: roast, takes: " + minutes(35, 60) + bake() + ", keeps: {counter: 20 min}");
    step("do: rest, takes: 10 min, up to: 25 min, in: tray");
    step("do: carve, takes: " + minutes(4, 8) + ", hands: throughout, in: dish"
        + one("", "", ", skill: carving") + keepsHot());
  }

  private String keepsHot() {
    return one(", keeps: {counter: 20 min, cabinet: 40 min}", ", keeps: {counter: 20 min, cabinet: 20 min}",
        ", keeps: {counter: 40 min}");
  }

  private String bake() {
    return ", bake: "
        + one("{at: 180 C, from: 170 C, to: 190 C}", "{at: 200 C, from: 200 C, to: 210 C}", "{at: 160 C}");
  }

  private void step(String inside) {
    line("      - {" + inside + "}");
  }

  private String minutes(int from, int to) {
    return from + random.nextInt(to - from + 1) + " min";
  }

  private String one(String... all) {
    return all[random.nextInt(all.length)];
  }

  private void line(String... lines) {
    for (String line : lines) {
      text.append(line).append('\n');
    }
  }
}
