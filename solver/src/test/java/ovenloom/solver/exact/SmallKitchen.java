package ovenloom.solver.exact;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;

/** A supper of two to four dishes in a small kitchen, where everything is a little short, as a person would write it. */
final class SmallKitchen {

  /** So thin that a few minutes out of the oven tell. */
  private static final String THIN = "    thick: 4 mm";

  private static final int STEPS = 8;
  private static final long NEXT = 1000;

  private final Random random;
  private final StringBuilder text = new StringBuilder();
  private final List<String> roasts = new ArrayList<>();
  private int steps;
  private boolean served;

  private SmallKitchen(long seed) {
    random = new Random(seed * 7919 + 17);
  }

  /** The event of a seed, or of the first after it whose file has no mistake. */
  static Event of(long seed, Path folder) throws IOException {
    return read(text(seed, folder), folder);
  }

  /** Its problem file. */
  static String text(long seed, Path folder) throws IOException {
    for (long each = seed; each < seed + 100 * NEXT; each += NEXT) {
      String text = new SmallKitchen(each).write(each);
      if (reading(text, folder) instanceof Reading.Understood<Event>) {
        return text;
      }
    }
    throw new AssertionError("none of a hundred suppers could be");
  }

  /** What is written, as an event; mistakes in it fail the test. */
  static Event read(String text, Path folder) throws IOException {
    return switch (reading(text, folder)) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(mistakes.toString());
    };
  }

  private static Reading<Event> reading(String text, Path folder) throws IOException {
    return ProblemFile.read(Files.writeString(folder.resolve("small.yaml"), text), folder, null);
  }

  private String write(long seed) {
    served = random.nextInt(3) == 0;
    line("ovenloom: 1", "event: Small supper " + seed, "guests: " + (2 + random.nextInt(4)), "clock: 1 min");
    line("courses: [{name: supper, at: 2026-11-20 19:00" + (served ? ", served over: 12 min" : "") + "}]");
    kitchen();
    cooks();
    line("dishes:");
    int dishes = 2 + random.nextInt(3);
    for (int i = 0; i < dishes && steps < STEPS - 1; i++) {
      dish("dish " + (i + 1));
    }
    return text.toString();
  }

  private void kitchen() {
    line("kitchen:", "  landing: " + (2 + random.nextInt(4)), "  ovens:");
    int ovens = random.nextInt(3) == 0 ? 2 : 1;
    for (int i = 1; i <= ovens; i++) {
      line("    - {name: oven " + i + ", dial: "
          + one("60 C to 250 C, step: 10 C", "60 C to 250 C, step: 20 C", "150 F to 500 F") + ", modes: "
          + one("[still]", "[still]", "[still, fan]") + ",",
          "       heats: 200 C in " + (10 + random.nextInt(16)) + " min, cools: 200 C to 150 C in "
              + (8 + random.nextInt(18)) + " min,",
          "       racks: {count: " + (1 + random.nextInt(2)) + ", size: 45 x 36 cm, clear: " + one("9", "15")
              + " cm}}");
    }
    line("  burners: " + one("[large]", "[large, small]", "[large, medium, small]"));
    line("  cold: [{name: fridge, holds: 4 C, shelves: {count: " + (1 + random.nextInt(2)) + ", size: "
        + one("32 x 30 x 20", "50 x 40 x 20") + " cm}}]");
    if (random.nextInt(3) == 0) {
      line("  hot: [{name: cabinet, holds: 70 C, shelves: [{size: 44 x 32 x 20 cm}]}]");
    }
    line("  appliances: {mixer: 1}", "  vessels:");
    line(
        "    bowl: {count: " + few() + ", size: 28 x 28 x 12 cm, wash: " + (3 + random.nextInt(4)) + " min}");
    line("    tray: {count: " + few() + ", size: 42 x 30 x 3 cm}");
    line("    dish: {count: " + few() + ", size: 30 x 20 x 7 cm}");
    line("    pot: {count: " + few() + ", size: 24 x 24 x 15 cm}", "    plate: {count: 24}");
    if (random.nextInt(4) == 0) {
      line("apart: [[fish, pastry]]");
    }
  }

  private int few() {
    return 1 + random.nextInt(2);
  }

  private void cooks() {
    line("cooks:");
    String from = one("16:30", "16:45", "17:00");
    line("  - {name: Ana, hours: {on the day: " + from + "-20:00}"
        + one("", "", ", breaks: {on the day: 17:40-17:55}") + "}");
    if (random.nextInt(3) == 0) {
      line("  - {name: Ben, skills: [carving], hours: {on the day: " + one("16:30", "17:30", "18:00")
          + "-20:00}}");
    }
  }

  private void dish(String name) {
    line("  - dish: " + name, THIN, "    arrives: " + one("hot", "hot", "warm", "warm"),
        "    tags: [" + one("fish", "pastry", "green") + ", not tcs]", "    steps:");
    int left = STEPS - steps;
    switch (random.nextInt(left < 3 ? 2 : 6)) {
      case 0 -> boiled();
      case 1 -> tossed();
      case 2 -> baked();
      case 3 -> chilled();
      case 4 -> rolls(left);
      default -> roasted(name);
    }
  }

  private void boiled() {
    step("do: cut, takes: " + minutes(5, 15) + ", hands: throughout, in: " + one("bowl", "dish")
        + keepsCold());
    step("do: boil, takes: " + minutes(15, 40) + ", burner: " + one("small", "medium", "large")
        + ", in: pot, hands: "
        + one("{first: 2 min}", "{last: 3 min}", "[{at: 8 min, for: 2 min}]") + keepsHot("burner"));
  }

  private void tossed() {
    step("do: wash, takes: " + minutes(4, 10) + ", hands: throughout, in: bowl" + keepsCold());
    step("do: dress, takes: " + minutes(3, 8) + ", hands: throughout, in: " + one("bowl", "dish")
        + keepsCold());
  }

  private void baked() {
    step("do: mix, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl" + one("", ", appliance: mixer")
        + keepsOnTheCounter());
    step("do: bake, takes: " + minutes(15, 40) + bake() + ", in: " + one("tray", "dish")
        + one("", "", ", hands: [{at: 8 min, for: 2 min}]", ", door shut: 8 min") + keepsHot("oven"));
    serve();
  }

  private void chilled() {
    step("do: whisk, takes: " + minutes(5, 15) + ", hands: throughout, in: bowl"
        + one("", ", appliance: mixer"));
    step("do: set, takes: " + minutes(30, 50) + one("", ", up to: 80 min") + ", cold: fridge, in: dish"
        + one("", ", keeps: {fridge: 2 h}"));
    serve();
  }

  private void rolls(int left) {
    int batches = left >= 5 ? 2 : 1;
    text.insert(text.length() - "    steps:\n".length(), batches == 2 ? "    portions: 2\n    for: 4\n" : "");
    step("do: knead, once: yes, takes: " + minutes(8, 12)
        + ", hands: throughout, in: bowl, keeps: {counter: 1 h}");
    for (int i = 0; i < batches; i++) {
      steps += 2;
    }
    write("do: shape, takes: " + minutes(4, 8) + ", hands: throughout, in: tray, keeps: {counter: 40 min}");
    write("do: bake, takes: " + minutes(12, 20) + bake() + one("", ", door shut: throughout")
        + ", keeps: {counter: 1 h}");
  }

  private void roasted(String name) {
    step("do: season, takes: " + minutes(4, 8)
        + ", hands: throughout, in: dish, keeps: {counter: 30 min}");
    step("do: roast, takes: " + minutes(35, 50)
        + one(", bake: [{at: 220 C, for: 12 min}, {at: 160 C, from: 150 C, to: 170 C}]",
            bake())
        + one("", ", stands: 12 cm") + keepsHot("oven"));
    step("do: rest, takes: 10 min, up to: 25 min" + one(", in: tray", ""));
    if (!roasts.isEmpty() || random.nextBoolean()) {
      step("do: carve, takes: 5 min, hands: throughout" + one("", ", skill: carving")
          + (served ? ", serve: yes" : ""));
    } else if (steps < STEPS) {
      line("  - dish: gravy of " + name, THIN, "    arrives: hot", "    steps:");
      step("do: stir, takes: 8 min, hands: throughout, burner: small, in: pot, uses: {" + name
          + "/roast: {most: 45 min}}, keeps: {burner: 30 min}");
    }
    roasts.add(name);
  }

  private void serve() {
    if (served && random.nextBoolean()) {
      step("do: plate, takes: " + minutes(2, 6) + ", hands: throughout, in: {plate: 3}, serve: yes");
    }
  }

  /** What is baked goes in as warm as the room: the model with minute starts knows no other start. */
  private String keepsOnTheCounter() {
    return one("", ", keeps: {counter: 30 min}", ", keeps: {counter: 20 min}", ", keeps: {counter: 2 h}");
  }

  private String keepsCold() {
    return one("", ", keeps: {counter: 30 min}", ", keeps: {counter: 20 min, fridge: 3 h}",
        ", keeps: {fridge: 2 h}");
  }

  private String keepsHot(String there) {
    return one("", ", keeps: {" + there + ": 30 min}",
        ", keeps: {counter: 20 min, cabinet: 40 min}".replace("cabinet",
            text.indexOf("name: cabinet") < 0 ? "fridge" : "cabinet"),
        ", keeps: {counter: 1 h}");
  }

  private String bake() {
    return ", bake: " + one("{at: 180 C, from: 170 C, to: 200 C}", "{at: 350 F, from: 325 F, to: 375 F}",
        "{at: 200 C, from: 190 C, to: 220 C}", "{at: 160 C, mode: fan}");
  }

  private void step(String inside) {
    steps++;
    write(inside);
  }

  private void write(String inside) {
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
