package ovenloom.model.menu;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.GasMark;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;

/** Kitchens for {@link RandomEvents}. */
final class RandomKitchens {

  private static final List<String> TRICKY = List.of("no", "12:30", "1_000", "0x1F", "~", "it's",
      "\"quoted\"", "a: b", "c #d",
      "- dash", "[list]", "{keys}", "*alias", "&anchor", "%", "@home", "null", "1e3", "012", "=", "<<",
      "Sauté 😀", "½ board",
      "back\\slash", "tab\there", "two\nlines", "true", ".5", "2026-10-10", "? q", "| pipe", "> fold", "!tag",
      "`tick`", "+1",
      "\u2028line", "x:", "- ", "y", "Off");

  private final Random random;
  private final Temperature room = Temperature.celsius(20.5);

  RandomKitchens(Random random) {
    this.random = random;
  }

  /** A name that no other of its kind and number has; one in three is hard to write. */
  static String name(Random random, String kind, int number) {
    String plain = kind + " " + (number + 1);
    return random.nextInt(3) > 0 ? plain : (TRICKY.get(random.nextInt(TRICKY.size())) + " " + plain).strip();
  }

  Kitchen kitchen() {
    List<Oven> ovens = new ArrayList<>();
    List<Burner> burners = new ArrayList<>();
    List<Vessel> vessels = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      ovens.add(oven(i));
      burners.add(new Burner(named("burner", i), one(BurnerSize.values()), watts(), circuit(), open(true)));
    }
    vessels.add(
        new Vessel("half sheet", 2, sized(457.2, 330.2, 25.4), BurnerSize.SMALL, 5, Availability.ALWAYS));
    vessels.add(new Vessel("loaf tin", 2, random.nextBoolean() ? null : sized(200, 100, 70), BurnerSize.SMALL,
        5, open(true)));
    vessels.add(new Vessel(named("vessel", 0), 1 + random.nextInt(9),
        random.nextBoolean() ? null : sized(123.4, 56, 7),
        one(BurnerSize.values()), 1 + random.nextInt(9), open(true)));
    return new Kitchen(room, random.nextInt(20), Length.mm(random.nextInt(30)), ovens, burners, stores(),
        vessels,
        List.of(new Appliance(named("appliance", 0), 1 + random.nextInt(3), 1 + random.nextInt(3),
            random.nextBoolean(), watts(),
            circuit(), open(true))),
        List.of(new Circuit("ring", new Power(3_680))));
  }

  private List<Store> stores() {
    List<Store> stores = new ArrayList<>();
    stores.add(new Store(named("fridge", 0), Store.Kind.FRIDGE, Temperature.celsius(random.nextInt(8)),
        random.nextBoolean() ? Air.STILL : Air.BLAST,
        shelves(), Mass.grams(250 * (1 + random.nextInt(40))), open(false)));
    if (random.nextBoolean()) {
      stores.add(
          new Store(named("freezer", 0), Store.Kind.FREEZER, Temperature.fahrenheit(0), Air.STILL, shelves(),
              open(false)));
    }
    if (random.nextBoolean()) {
      stores.add(
          new Store(named("cabinet", 0), Store.Kind.HOT, Temperature.celsius(70), Air.STILL, shelves(),
              open(false)));
    }
    return stores;
  }

  private List<Shelf> shelves() {
    List<Shelf> shelves = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      shelves.add(new Shelf(named("shelf", i), Length.cm(50), Length.in(14),
          Length.mm(1 + random.nextInt(400)), open(false)));
    }
    return shelves;
  }

  private Oven oven(int number) {
    Dial dial = switch (random.nextInt(3)) {
      case 0 -> new Dial(Setting.celsius(50), Setting.celsius(250), 1 + random.nextInt(10));
      case 1 -> new Dial(Setting.fahrenheit(150), Setting.fahrenheit(550), 25);
      default -> new Dial(Setting.gas(GasMark.QUARTER), Setting.gas(GasMark.NINE), Dial.CELSIUS_STEP);
    };
    Warmth warmth = new Warmth(room, Temperature.celsius(180), 1 + random.nextInt(90),
        Temperature.fahrenheit(400),
        Temperature.celsius(150.5), 1 + random.nextInt(60));
    List<Rack> racks = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(4); i++) {
      racks.add(new Rack(Length.cm(46), Length.cm(37), Length.cm(10 + random.nextInt(2))));
    }
    List<String> modes = random.nextBoolean() ? List.of(Oven.STILL) : List.of(Oven.FAN, "steam 50 %");
    return new Oven(named("oven", number), dial, modes, warmth,
        dial.marks().get(random.nextInt(dial.marks().size())), racks,
        watts(), watts(), circuit(), open(false));
  }

  /** Hours over some days, some over midnight. */
  List<Stretch> hours() {
    List<Stretch> hours = new ArrayList<>();
    int at = -5 * 1_440 + random.nextInt(1_440);
    for (int i = 0; i <= random.nextInt(4); i++) {
      int lasting = 30 + random.nextInt(random.nextInt(5) == 0 ? 3_000 : 600);
      hours.add(new Stretch(at, at + lasting));
      at += lasting + 1 + random.nextInt(1_440);
    }
    return hours;
  }

  private Availability open(boolean counted) {
    if (random.nextInt(3) > 0) {
      return Availability.ALWAYS;
    }
    int from = random.nextInt(1_000);
    return new Availability(random.nextBoolean() ? List.of() : hours(), random.nextBoolean() ? List.of()
        : List
            .of(new Availability.Taken(new Stretch(from, from + 200), counted ? 1 + random.nextInt(3) : 1)));
  }

  private static Size sized(double width, double depth, double height) {
    return new Size(Length.mm(width), Length.mm(depth), Length.mm(height));
  }

  private Power watts() {
    return new Power(random.nextInt(4_000));
  }

  private @Nullable String circuit() {
    return random.nextBoolean() ? null : "ring";
  }

  private String named(String kind, int number) {
    return name(random, kind, number);
  }

  private <T> T one(T[] all) {
    return all[random.nextInt(all.length)];
  }
}
