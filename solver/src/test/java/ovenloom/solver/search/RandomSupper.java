package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A supper in a kitchen as it may be, written as a person would write it. */
public final class RandomSupper {

  /** From so many dishes on the fridge is a cold room, and there are twice as many vessels. */
  private static final int BANQUET = 30;

  private final Random random;
  private final boolean grand;
  private final int feast;
  private final int ovens;
  private final StringBuilder text = new StringBuilder();
  private final List<String> dishes = new ArrayList<>();

  private RandomSupper(long seed, boolean grand, int feast, int ovens) {
    random = new Random(seed);
    this.grand = grand;
    this.feast = feast;
    this.ovens = ovens;
  }

  /** The problem file of a seed, small enough to plan in a blink. */
  static String of(long seed) {
    return new RandomSupper(seed, false, 0, 0).write();
  }

  /** One of more courses, dishes and days, in a kitchen with room for them. */
  static String grand(long seed) {
    return new RandomSupper(seed, true, 0, 0).write();
  }

  /** One of so many dishes and so many ovens; of all else there is as much more as there are more dishes. */
  public static String feast(long seed, int dishes, int ovens) {
    return new RandomSupper(seed, true, dishes, ovens).write();
  }

  private String write() {
    line("ovenloom: 1", "event: Supper", "guests: " + (2 + random.nextInt(9)));
    line(random.nextInt(4) == 0 ? "clock: 1 min" : "clock: 5 min", "courses:");
    line("  - {name: supper, at: 2026-11-20 19:00, served over: 20 min}");
    line("  - {name: sweet, at: 2026-11-20 " + one("19:45", "20:00", "20:30") + ", served over: 15 min}");
    if (grand) {
      line("  - {name: late, at: 2026-11-20 " + one("21:15", "22:00") + ", served over: 30 min}");
    }
    kitchen();
    cooks();
    line("dishes:");
    int count = feast > 0 ? feast : grand ? 2 + random.nextInt(10) : 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      dish(i);
    }
    return text.toString();
  }

  private void kitchen() {
    boolean limited = random.nextInt(4) == 0 && feast == 0;
    line("kitchen:", "  landing: " + (4 + random.nextInt(10) + (grand ? 20 : 0) + 3 * feast), "  ovens:");
    for (int i = 0; ovens > 0 ? i < ovens : i <= random.nextInt(grand ? 3 : 2); i++) {
      line("    - name: oven " + (i + 1),
          "      dial: " + one("60 C to 250 C", "150 F to 500 F", "gas 1/4 to gas 9"));
      line("      modes: " + one("[still]", "[still, fan]"));
      line("      racks: {count: " + ((grand ? 2 : 1) + random.nextInt(3))
          + ", size: 45 x 38 cm, clear: 15 cm}");
      line(limited ? "      circuit: wall"
          : "      cools: 200 C to 150 C in " + (5 + random.nextInt(20)) + " min");
    }
    line("  burners: " + (grand ? burners()
        : one("[large, small]", "[large, medium, small, small]", "[large, large, medium]")));
    if (limited) {
      line("  circuits: {wall: " + (grand ? "9 kW" : one("3 kW", "6 kW")) + "}");
    }
    line("  cold:", "    - name: fridge", "      holds: 4 C");
    if (feast >= BANQUET) {
      line("      warm load: " + feast + " kg");
    }
    line("      shelves:");
    for (int i = 0; i <= 1 + random.nextInt(grand ? 4 : 2) + feast; i++) {
      line("        - {name: shelf " + (i + 1) + ", size: 50 x 38 x 25 cm}");
    }
    line("  hot:", "    - {name: cabinet, holds: 70 C, shelves: "
        + (feast > 0 ? "{count: " + (1 + feast / 4) + ", size: 60 x 40 x 30 cm}"
            : "[{name: only, size: 60 x 40 x 30 cm}]")
        + "}");
    line("  appliances: {mixer: " + (1 + feast / 10) + "}", "  vessels:");
    line(
        "    bowl: {count: " + few() + ", size: 28 x 28 x 12 cm, wash: " + (3 + random.nextInt(5)) + " min}");
    line("    tray: {count: " + few() + ", size: 42 x 30 x 3 cm}");
    line("    dish: {count: " + few() + ", size: 30 x 20 x 7 cm}");
    line("    pot: {count: " + few() + ", size: 24 x 24 x 15 cm}",
        "    plate: {count: " + (grand ? 60 + 24 * feast : 24) + "}");
    if (random.nextInt(3) == 0) {
      line("apart: [[fish, pastry]]");
    }
  }

  private String burners() {
    String some = "large, large, large, medium, small, small";
    return "[" + some + (", " + some).repeat(feast / 10) + "]";
  }

  private int few() {
    return (grand ? 3 + random.nextInt(8) : 1 + random.nextInt(4)) + (feast >= BANQUET ? feast : feast / 2);
  }

  private void cooks() {
    line("cooks:");
    for (int i = 0; i <= random.nextInt(grand ? 4 : 3) + feast / 5; i++) {
      line("  - name: cook " + (i + 1), "    hours:");
      if (grand && random.nextInt(3) == 0) {
        line("      2 days before: 18:00-21:00");
      }
      if (random.nextBoolean()) {
        line("      day before: " + (15 + random.nextInt(3)) + ":00-21:00");
      }
      line("      on the day: " + (9 + random.nextInt(5)) + ":00-" + (grand ? "23:00" : "22:00"));
      line(i > 0 ? "    breaks: {on the day: 15:00-15:30}" : "    skills: [carving]");
    }
  }

  private void dish(int number) {
    String name = "dish " + (number + 1);
    line("  - dish: " + name,
        "    course: "
            + (grand ? one("supper", "supper", "sweet", "late") : one("supper", "supper", "sweet")));
    line("    portions: " + (3 + random.nextInt(6)), "    arrives: " + one("hot", "hot", "warm", "cold"));
    line("    tags: [" + one("fish", "pastry", "raw poultry", "raw meat", "green") + ", not tcs]",
        "    steps:");
    switch (random.nextInt(grand ? 7 : 5)) {
      case 0 -> baked();
      case 1 -> stewed();
      case 2 -> chilled();
      case 3 -> kneaded();
      case 5 -> simmered();
      case 6 -> assembled();
      default -> roasted(name);
    }
    dishes.add(name);
  }

  private void baked() {
    step("do: cut, takes: " + minutes(10, 20)
        + ", hands: throughout, in: bowl, keeps: {counter: 1 h, fridge: 1 day}");
    step("do: bake, takes: 30-" + minutes(35, 50) + bake()
        + ", in: tray, hands: [{at: 15 min, for: 2 min}], keeps: {oven: 40 min}");
    serve();
  }

  private void stewed() {
    step("do: cut, takes: " + minutes(5, 15)
        + ", hands: throughout, in: bowl, keeps: {counter: 30 min, fridge: 1 day}");
    step("do: stew, takes: " + minutes(40, 90) + ", burner: " + one("small", "medium", "large")
        + ", in: pot, hands: {every: 20 min, for: 1 min}, keeps: {burner: 30 min, cabinet: 1 h, fridge: 2 days}");
    if (random.nextBoolean()) {
      step("do: warm, takes: 15 min, burner: small, hands: {last: 3 min}, keeps: {burner: 20 min}");
    }
  }

  private void chilled() {
    step("do: whisk, takes: " + minutes(10, 20) + ", hands: throughout, in: bowl, appliance: mixer");
    step("do: set, takes: " + minutes(90, 200)
        + ", up to: 8 h, cold: fridge, in: dish, keeps: {fridge: 2 days}");
    if (random.nextBoolean()) {
      serve();
    }
  }

  private void kneaded() {
    step("do: knead, once: yes, takes: 15 min, hands: throughout, in: bowl, appliance: mixer");
    step("do: prove, once: yes, takes: 60 min, up to: 2 h");
    step("do: shape, takes: 10 min, hands: throughout, in: tray");
    step(
        "do: bake, takes: 20 min" + bake() + ", door shut: " + one("throughout", "10 min")
            + ", together: 2, keeps: {oven: 30 min, counter: 20 min}");
    step("do: cool, takes: 10 min, keeps: {counter: 8 h}");
  }

  private void simmered() {
    step("do: peel, takes: " + minutes(5, 10)
        + ", hands: throughout, in: bowl, keeps: {counter: 2 h, fridge: 1 day}");
    step("do: simmer, takes: " + minutes(30, 60)
        + ", together: 3, one vessel: yes, burner: large, in: pot, hands: {first: 5 min}, keeps: {burner: 1 h, fridge: 2 days}");
    step("do: strain, takes: 6 min, hands: throughout, in: bowl, keeps: {counter: 30 min, fridge: 2 days}");
    step("do: heat, takes: " + minutes(10, 15)
        + ", burner: medium, in: pot, hands: {last: 2 min}, keeps: {burner: 40 min}");
    serve();
  }

  private void assembled() {
    step("do: sauce, takes: " + minutes(15, 30)
        + ", burner: small, in: pot, hands: throughout, keeps: {counter: 2 h, fridge: 2 days}");
    step("do: boil, takes: " + minutes(10, 25)
        + ", after: nothing, burner: large, in: pot, hands: {first: 3 min}, keeps: {counter: 1 h, fridge: 1 day}");
    step("do: layer, takes: " + minutes(10, 20)
        + ", after: {sauce: {least: 0 min}, boil: {most: 8 h}}, hands: throughout, in: dish, keeps: {counter: 45 min, fridge: 2 days}");
    step("do: bake, takes: " + minutes(35, 50) + bake() + ", together: 2, keeps: {cabinet: 30 min}");
    step("do: rest, takes: 10 min, up to: 25 min");
    serve();
  }

  private void roasted(String name) {
    step("do: season, takes: 10 min, hands: {first: 5 min}, in: dish, keeps: {fridge: 1 day}");
    step(
        "do: roast, takes: 80 min, bake: [{at: 220 C, for: 20 min}, {at: 160 C, from: 150 C, to: 170 C}], stands: 14 cm"
            + one("", ", rack: low") + ", keeps: {oven: 1 h}");
    step("do: rest, takes: 15 min, up to: 30 min, in: tray");
    step("do: carve, takes: 8 min, hands: throughout, cooks: 1, in: tray, keeps: {cabinet: 20 min}"
        + one("", ", skill: carving"));
    if (!dishes.isEmpty() && random.nextBoolean()) {
      line("  - dish: gravy of " + name, "    course: sweet", "    steps:");
      step("do: stir, takes: 10 min, hands: throughout, burner: small, in: dish, uses: {" + name
          + "/roast: {most: " + (grand ? "6 h" : "2 h") + "}}, keeps: {burner: 2 h}");
    }
  }

  private void serve() {
    step("do: plate, takes: 30 s a portion, hands: throughout, in: {plate: 3}, serve: yes");
  }

  private String bake() {
    String window = one("{at: 180 C, from: 170 C, to: 200 C}", "{at: 350 F, from: 325 F, to: 375 F}",
        "{at: gas 6}",
        "{at: 160 C, mode: fan}");
    return ", bake: " + window;
  }

  private void step(String inside) {
    line("      - {" + (grand && !inside.contains("serve: yes") ? keepingLong(inside) : inside) + "}");
  }

  private String keepingLong(String inside) {
    String place = inside.contains("burner:") ? ", burner: 1 h"
        : inside.contains("bake:") ? ", oven: 1 h" : "";
    return inside.replaceAll(", keeps: \\{[^}]*\\}", "")
        + ", keeps: {counter: " + minutes(90, 300) + ", cabinet: " + minutes(60, 180) + ", fridge: 2 days"
        + place + "}";
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
