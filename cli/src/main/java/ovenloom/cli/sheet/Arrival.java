package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Chilling;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.TemperatureUnit;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;

/**
 * The sentences with which a run begins: where the food goes, in what, how hot, and until when.
 *
 * @param isThereAlready whether the food is where it is wanted
 */
record Arrival(Book book, Words words, Armful armful, boolean isThereAlready) {

  String sentences() {
    Baking baking = run().baking();
    Need.Bake bake = step().step().bake();
    if (baking != null && bake != null) {
      return intoTheOven(baking) + " " + care(bake, baking.oven())
          + new Bend(book, step(), bake, baking).why();
    }
    return switch (armful.spot()) {
      case Spot.OnBurners(List<String> burners) ->
        place("Onto " + words.burners(burners), "Stays on the burner.");
      case Spot.OnShelves(String store, List<String> shelves) ->
        place("Into " + words.ontoShelves(store, shelves), "Stays in " + words.shelves(store, shelves) + ".")
            + ice(store);
      case Spot.InMachine(String machine) -> place("Into the " + machine, "Stays in the " + machine + ".");
      case Spot.Bench() -> onTheBench();
      case Spot.InOven(String oven, List<Integer> racks) -> onTheBench();
    };
  }

  private Placement run() {
    return armful.run();
  }

  private BatchStep step() {
    return armful.step();
  }

  private String intoTheOven(Baking baking) {
    String oven = words.oven(baking.oven());
    String in = isThereAlready ? "Stays in " + oven : into("Into " + oven);
    return in + ": " + racks(baking.oven()) + ", " + marks(baking) + ".";
  }

  private String racks(String oven) {
    List<Integer> racks = armful.runs()
        .stream()
        .map(Placement::baking)
        .filter(Objects::nonNull)
        .flatMap(baking -> baking.racks().stream())
        .toList();
    boolean isShared = racks.size() > 1 && racks.stream().distinct().count() == 1;
    String on = isShared ? "side by side on the " + words.racks(oven, racks) : words.racks(oven, racks);
    return on + (isTooTall(oven, racks) ? " with the rack above it taken out" : "");
  }

  /** Whether it stands higher than there is room below the next rack. */
  private boolean isTooTall(String name, List<Integer> racks) {
    Oven oven = words.kitchen().oven(name);
    Need.Bake bake = step().step().bake();
    if (oven == null || bake == null || racks.isEmpty()) {
      return false;
    }
    int rack = Collections.max(racks);
    boolean isTop = rack == oven.racks().size() - 1;
    return !isTop && height(bake) > oven.racks().get(rack).clear().micrometres();
  }

  private long height(Need.Bake bake) {
    Length stands = bake.stands();
    long own = stands == null ? 0 : stands.micrometres();
    return armful.fillings()
        .stream()
        .map(filling -> words.kitchen().vessel(filling.vessel()))
        .map(vessel -> vessel == null ? null : vessel.size())
        .map(size -> size == null ? null : size.height())
        .mapToLong(each -> each == null ? 0 : each.micrometres())
        .reduce(own, Math::max);
  }

  /** With the vessels, and with those it is poured out of where that is work by the way and no step of its own. */
  private String into(String place) {
    List<Filling> filled = armful.filled();
    List<Filling> emptied = armful.emptied();
    boolean isPoured = !filled.isEmpty() && !emptied.isEmpty() && !kinds(filled).equals(kinds(emptied));
    if (!isPoured) {
      return place + vessels();
    }
    return "From " + Words.vessels(emptied, "the ") + " into " + Words.vessels(filled, "the ") + ". " + place;
  }

  /** A machine might be filled by itself, so it is said that these go into it. */
  private String vessels() {
    List<Filling> fillings = armful.fillings();
    return armful.spot() instanceof Spot.InMachine && !fillings.isEmpty()
        ? ", in " + Words.vessels(fillings)
        : Words.in(fillings);
  }

  private static Set<String> kinds(List<Filling> fillings) {
    return fillings.stream().map(Filling::vessel).collect(Collectors.toSet());
  }

  private String marks(Baking baking) {
    List<String> marks = new ArrayList<>();
    for (Baking.StageRun stage : baking.stages()) {
      boolean last = stage.equals(baking.stages().getLast());
      String until = last ? "" : " until " + at(stage.when().to());
      marks.add(stage.mark().written() + until);
    }
    return words.mode(baking.oven(), baking.mode()) + String.join(", then ", marks);
  }

  private String care(Need.Bake bake, String oven) {
    String done = timing().out(Unloading.of(book, run())) + inside(oven);
    String which = hasOtherBakes() ? name() + ": " + done : Words.capital(done);
    return which + "." + timing().handsOn() + doorShut(bake);
  }

  private String inside(String oven) {
    Temperature core = ProbeActs.core(step());
    Oven where = words.kitchen().oven(oven);
    return core == null || where == null ? "" : ", at " + inside(core, where.dial().unit()) + " inside";
  }

  private static String inside(Temperature core, TemperatureUnit unit) {
    return switch (unit) {
      case FAHRENHEIT -> Setting.fahrenheit(Math.rint(core.inFahrenheit())).written();
      case CELSIUS, GAS -> Setting.celsius(Math.rint(core.inCelsius())).written();
    };
  }

  private String doorShut(Need.Bake bake) {
    if (bake.doorShut() == 0) {
      return "";
    }
    int minutes = Math.min(bake.doorShut(), run().when().minutes() - bake.load());
    return " Door shut until " + at(run().when().from() + bake.load() + minutes) + ".";
  }

  private String ice(String name) {
    Store store = words.kitchen().store(name);
    if (store == null || store.kind() != Store.Kind.ICE_BATH) {
      return "";
    }
    int ice = armful.runs()
        .stream()
        .flatMap(run -> book.steps(run).stream())
        .mapToInt(each -> new Chilling(new Cards(book.work())).ice(each, store))
        .sum();
    return " It takes " + ice + " kg of ice, and water as high as the food stands.";
  }

  private String place(String into, String stays) {
    String where = isThereAlready ? stays : into(into) + ".";
    return where + " " + doing(name());
  }

  private String onTheBench() {
    String machines = Words
        .and(step().step().appliances().stream().map(Need.OnAppliance::appliance).toList());
    String what = name() + Words.in(armful.filled()) + (machines.isEmpty() ? "" : " at the " + machines);
    String taken = new Waiting(book, armful.runs()).untilTaken();
    return taken == null ? doing(what) : doing(what, timing().look(taken));
  }

  private String doing(String what) {
    return doing(what, timing().until());
  }

  private static String doing(String what, String until) {
    return what + (until.startsWith("until") ? " " : ": ") + until + ".";
  }

  private String name() {
    return Words.capital(step().step().name());
  }

  private boolean hasOtherBakes() {
    return step().dish().steps().stream().filter(each -> each.bake() != null).count() > 1;
  }

  private String at(int minute) {
    return clock().time(minute, run().when().from());
  }

  private Timing timing() {
    return new Timing(clock(), step(), run());
  }

  private Clock clock() {
    return new Clock(book.event().calendar());
  }
}
