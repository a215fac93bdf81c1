package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Oven;
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
record Arrival(Book book, Words words, Placement run, boolean isThereAlready) {

  String sentences() {
    Baking baking = run.baking();
    Need.Bake bake = step().step().bake();
    if (baking != null && bake != null) {
      return intoTheOven(baking) + " " + care(bake, baking.oven());
    }
    return switch (Journey.spot(step(), run)) {
      case Spot.OnBurners(List<String> burners) ->
        place("Onto " + words.burners(burners), "Stays on the burner.");
      case Spot.OnShelves(String store, List<String> shelves) ->
        place("Into " + words.shelves(store, shelves), "Stays in " + words.shelves(store, shelves) + ".");
      case Spot.InMachine(String machine) -> place("Into the " + machine, "Stays in the " + machine + ".");
      case Spot.Bench() -> onTheBench();
      case Spot.InOven(String oven, List<Integer> racks) -> onTheBench();
    };
  }

  private BatchStep step() {
    return book.steps(run).getFirst();
  }

  private String intoTheOven(Baking baking) {
    String oven = words.oven(baking.oven());
    String in = isThereAlready ? "Stays in " + oven : "Into " + oven + vessels(false);
    return in + ": " + words.racks(baking.oven(), baking.racks()) + ", " + marks(baking) + ".";
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
    String done = timing().done("out") + inside(bake, oven);
    String which = hasOtherBakes() ? name() + ": " + done : Words.capital(done);
    return which + "." + timing().handsOn() + doorShut(bake);
  }

  private String inside(Need.Bake bake, String oven) {
    Temperature core = bake.core();
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
    int minutes = Math.min(bake.doorShut(), run.when().minutes() - bake.load());
    return " Door shut until " + at(run.when().from() + bake.load() + minutes) + ".";
  }

  private String place(String into, String stays) {
    String where = isThereAlready ? stays : into + vessels(false) + ".";
    return where + " " + doing(name());
  }

  private String onTheBench() {
    String machines = Words
        .and(step().step().appliances().stream().map(Need.OnAppliance::appliance).toList());
    return doing(name() + vessels(true) + (machines.isEmpty() ? "" : " at the " + machines));
  }

  private String doing(String what) {
    String until = timing().until();
    return what + (until.startsWith("until") ? " " : ": ") + until + ".";
  }

  private String name() {
    return Words.capital(step().step().name());
  }

  private boolean hasOtherBakes() {
    return step().dish().steps().stream().filter(each -> each.bake() != null).count() > 1;
  }

  /** Only new ones where the food stays under the same hands: its dish since yesterday need not be told. */
  private String vessels(boolean onlyNew) {
    List<String> pieces = new ArrayList<>();
    List<BatchStep> steps = book.steps(run);
    for (BatchStep each : step().step().together().oneVessel() ? steps.subList(0, 1) : steps) {
      for (Filling filling : book.work().fillingsOf(each.index())) {
        for (int piece = 0; piece < filling.count()
            && (!onlyNew || filling.first() == each.index()); piece++) {
          pieces.add(filling.vessel());
        }
      }
    }
    return pieces.isEmpty() ? "" : " (" + Words.counted(pieces, "") + ")";
  }

  private String at(int minute) {
    return clock().time(minute, run.when().from());
  }

  private Timing timing() {
    return new Timing(clock(), step(), run);
  }

  private Clock clock() {
    return new Clock(book.event().calendar());
  }
}
