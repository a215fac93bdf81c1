package ovenloom.solver.exact;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import ovenloom.model.menu.Event;

/**
 * A supper of two or three dishes in a small kitchen in which heat counts: food comes to its oven cold, warm or hot, and most of it must be
 * kept hot or cold.
 */
final class HeatKitchen {

  private static final int BURNER_AND_OVEN = 2;

  private final Random random;
  private final StringBuilder text = new StringBuilder();
  private boolean served;
  private boolean cabinet;
  private boolean atHome;

  private HeatKitchen(long seed) {
    random = new Random(seed * 6007 + 41);
  }

  /** The event of a seed. */
  static Event of(long seed, Path folder) throws IOException {
    return SmallKitchen.read(text(seed), folder);
  }

  /** Its problem file. */
  static String text(long seed) {
    return new HeatKitchen(seed).write(seed);
  }

  private String write(long seed) {
    served = random.nextInt(3) == 0;
    cabinet = random.nextInt(3) == 0;
    atHome = random.nextInt(3) > 0;
    line("ovenloom: 1", "event: Heat " + seed, "guests: " + (2 + random.nextInt(3)), "clock: 1 min",
        "rules: " + (atHome ? "us-home" : "us-service"));
    line("courses: [{name: supper, at: 2026-11-20 19:00" + (served ? ", served over: 12 min" : "") + "}]");
    kitchen(atHome && random.nextInt(3) > 0);
    line("cooks:",
        "  - {name: Ana, hours: {on the day: " + (atHome ? one("16:30", "16:45", "17:00") : "16:00")
            + "-20:00}"
            + one("", "", ", breaks: {on the day: 17:40-17:55}") + "}");
    line("dishes:");
    int dishes = random.nextInt(4) == 0 ? 3 : 2;
    for (int i = 1; i <= dishes; i++) {
      dish("dish " + i);
    }
    return text.toString();
  }

  /** In air over 90 F food may be left out for an hour only: FSIS, Danger Zone; row F28 of the facts. */
  private void kitchen(boolean isHot) {
    line("kitchen:", "  room: " + (isHot ? "33 C" : "20 C"), "  landing: " + (3 + random.nextInt(2)),
        "  ovens:",
        "    - {name: oven, dial: 60 C to 250 C, step: " + one("10 C", "20 C") + ", modes: [still],",
        "       heats: 200 C in " + (10 + random.nextInt(12)) + " min, cools: 200 C to 150 C in "
            + (8 + random.nextInt(14)) + " min,",
        "       racks: {count: " + (1 + random.nextInt(2)) + ", size: 45 x 36 cm, clear: 15 cm}}",
        "  burners: " + one("[large]", "[large, large]"),
        "  cold: [{name: fridge, holds: 4 C, shelves: {count: " + (1 + random.nextInt(2)) + ", size: "
            + one("32 x 30 x 20", "50 x 40 x 20") + " cm}}]");
    if (cabinet) {
      line("  hot: [{name: cabinet, holds: " + one("58", "62") + " C, shelves: [{size: 44 x 32 x 20 cm}]}]");
    }
    line("  vessels:",
        "    bowl: {count: 2, size: 28 x 28 x 12 cm, wash: " + (3 + random.nextInt(4)) + " min}",
        "    dish: {count: 3, size: 30 x 20 x 7 cm}",
        "    pot: {count: 2, size: 24 x 24 x 15 cm}", "    plate: {count: 24}");
  }

  private void dish(String name) {
    line("  - dish: " + name, "    thick: " + one("4 mm", "10 mm", "20 mm", "30 mm"),
        "    arrives: " + one("hot", "warm"),
        "    tags: [" + one("tcs", "raw fish", "tcs", "cooked", "not tcs") + "]", "    steps:");
    switch (random.nextInt(6)) {
      case 0 -> boiled();
      case 1 -> set();
      case BURNER_AND_OVEN -> boiledThenBaked();
      case 3 -> keptHot();
      default -> baked();
    }
  }

  private void baked() {
    step("do: mix, takes: " + minutes(5, 15) + ", hands: throughout, in: " + one("bowl", "dish")
        + keepsCold());
    step("do: bake, takes: " + minutes(15, 40) + bake() + ", in: dish"
        + one("", "", ", hands: [{at: 8 min, for: 2 min}]")
        + keepsOut());
    serve();
  }

  private void set() {
    step("do: whisk, takes: " + minutes(5, 12) + ", hands: throughout, in: bowl"
        + one("", ", keeps: {counter: 30 min}"));
    step("do: set, takes: " + minutes(25, 40) + one("", ", up to: 55 min") + ", cold: fridge, in: dish"
        + one("", ", keeps: {counter: 20 min}"));
    step("do: bake, takes: " + minutes(15, 30) + bake() + keepsOut());
    serve();
  }

  private void boiledThenBaked() {
    step("do: boil, takes: " + minutes(12, 20) + ", burner: large, in: pot, hands: "
        + one("{first: 2 min}", "{last: 3 min}")
        + one("", ", keeps: {counter: 30 min}", ", keeps: {counter: 30 min}"));
    if (!atHome) {
      step("do: chill, takes: " + minutes(95, 118) + ", cold: fridge, in: dish");
    }
    step("do: bake, takes: " + minutes(15, 25) + bake() + ", in: dish" + keepsOut());
    serve();
  }

  private void boiled() {
    step("do: cut, takes: " + minutes(5, 15) + ", hands: throughout, in: " + one("bowl", "dish")
        + keepsCold());
    step("do: boil, takes: " + minutes(15, 40) + ", burner: large, in: pot, hands: "
        + one("{first: 2 min}", "{last: 3 min}")
        + keepsHot("burner"));
    serve();
  }

  private void keptHot() {
    step("do: mix, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl"
        + one("", ", keeps: {counter: 30 min}"));
    step("do: bake, takes: " + minutes(15, 40) + bake() + ", in: dish" + keepsHot("oven"));
    serve();
  }

  private void serve() {
    if (served && random.nextBoolean()) {
      step("do: plate, takes: " + minutes(2, 6) + ", hands: throughout, in: plate, serve: yes");
    }
  }

  private String keepsCold() {
    return one("", ", keeps: {counter: 20 min, fridge: 75 min}", ", keeps: {fridge: 60 min}",
        ", keeps: {fridge: 90 min}",
        ", keeps: {counter: 2 h}", ", keeps: {counter: 2 h}");
  }

  private String keepsOut() {
    return one("", ", keeps: {counter: 20 min}", ", keeps: {counter: 40 min}");
  }

  private String keepsHot(String there) {
    return one(", keeps: {" + there + ": 30 min}",
        ", keeps: {counter: 20 min, " + (cabinet ? "cabinet" : there) + ": 40 min}");
  }

  private String bake() {
    return ", bake: "
        + one("{at: 180 C, from: 170 C, to: 200 C}", "{at: 200 C, from: 190 C, to: 220 C}", "{at: 160 C}",
            "{at: 220 C}");
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
