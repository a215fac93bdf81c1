package ovenloom.model.audit;

import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.StartState;

/** Plans with food, or a place for it, one degree Celsius too cool or too warm. */
final class PlantedDegrees {

  /** So that no rounding decides. */
  private static final double A_HAIR = 0.001;

  /**
   * A row of a table, and the whole minutes for which food is held so. A degree less will not do, since it asks for minutes more, or, in the
   * coolest row, is in no table. Rows between have a minute or two to spare, since a table is read a tenth of a kelvin at a time.
   */
  private record Core(String rules, String tag, Temperature least, int minutes, String source) {}

  private static final List<Core> COOKED = List.of(
      new Core("us-home", "raw poultry", f(165), 1, "poultry"),
      new Core("us-home", "raw ground meat", f(160), 1, "ground meat"),
      new Core("us-home", "raw egg", f(160), 1, "egg dishes"),
      new Core("us-home", "raw fish", f(145), 1, "fish"),
      new Core("us-home", "raw meat", f(145), 3, "3 min of rest"),
      new Core("us-home", "whole roast", f(145), 3, "3 min of rest"),
      new Core("us-service", "raw poultry", f(165), 1, "3-401.11(A)(3)"),
      new Core("us-service", "raw ground meat", f(145), 3, "3-401.11(A)(2)"),
      new Core("us-service", "raw egg", f(145), 3, "3-401.11(A)(2)"),
      new Core("us-service", "raw meat", f(145), 1, "3-401.11(A)(1)"),
      new Core("us-service", "raw fish", f(145), 1, "3-401.11(A)(1)"),
      new Core("us-service", "whole roast", f(130), 112, "3-401.11(B)(2)"),
      new Core("us-service", "whole roast", f(135), 38, "3-401.11(B)(2)"),
      new Core("us-service", "whole roast", f(140), 13, "3-401.11(B)(2)"),
      new Core("us-service", "whole roast", f(142), 9, "3-401.11(B)(2)"),
      new Core("uk", "raw poultry", Temperature.celsius(60), 45, "Food Standards Agency"),
      new Core("uk", "raw poultry", Temperature.celsius(65), 11, "Food Standards Agency"),
      new Core("uk", "raw ground meat", Temperature.celsius(60), 45, "Food Standards Agency"),
      new Core("uk", "raw egg", Temperature.celsius(65), 11, "Food Standards Agency"));

  private static final List<Core> HEATED_AGAIN = List.of(
      new Core("us-home", "", f(165), 1, "leftovers"),
      new Core("us-service", "", f(165), 1, "3-403.11"),
      new Core("uk", "", Temperature.celsius(60), 45, "Food Standards Agency"),
      new Core("uk", "", Temperature.celsius(65), 11, "Food Standards Agency"));

  private record Holds(String rules, Temperature limit, String source) {}

  private static final List<Holds> COLD = List.of(
      new Holds("us-home", f(40), "40 to 140 F"),
      new Holds("us-service", f(41), "3-501.16(A)(2)"),
      new Holds("uk", Temperature.celsius(8), "27-31"));

  private static final List<Holds> HOT = List.of(
      new Holds("us-home", f(140), "40 to 140 F"),
      new Holds("us-service", f(135), "3-501.16(A)(1)"),
      new Holds("uk", Temperature.celsius(63), "schedule 4"));

  private PlantedDegrees() {}

  private static Temperature f(double degrees) {
    return Temperature.fahrenheit(degrees);
  }

  /** Raw food that is heated in a pan, and held as hot for as long as its table says. */
  static Twins undercooked(Evening evening, Chance chance) {
    Core limit = chance.oneOf(COOKED);
    Kind kind = chance.oneOf(List.of(Kind.LIQUID, Kind.CASSEROLE, Kind.TRAY_OF_PIECES));
    Length thick = Length.mm(chance.between(10, 60));
    StartState starts = chance.oneOf(List.of(StartState.RESTED, StartState.CHILLED));
    Heating heating = Heating.of("braise", limit.minutes(), evening, chance);
    return Twins.of(core -> heating.in(evening.with(limit.rules(), Evening.kitchen(),
        heating.of(aDish("braise").tags(limit.tag()).kind(kind, thick), core, starts))),
        limit.least().inCelsius() + A_HAIR, limit.least().inCelsius() - 1, "braise/heat", limit.source());
  }

  /** The same with soup that was simmered the day before, and is heated and held again. */
  static Twins notHotAgain(Evening evening, Chance chance) {
    Core limit = chance.oneOf(HEATED_AGAIN);
    MadeAhead soup = MadeAhead.of(limit.rules(), chance);
    Heating heating = Heating.of("soup", limit.minutes(), evening, chance);
    int from = daysBefore(1, "0:00") + chance.between(0, 1439);
    return Twins.of(
        core -> heating.in(evening.with(limit.rules(), soup.kitchen(), heating.of(soup.dish(), core, null))
            .with(soup.simmered(from))
            .with(soup.chilled(from, heating.from()))),
        limit.least().inCelsius() + A_HAIR, limit.least().inCelsius() - 1, "soup/hold", limit.source());
  }

  /** Raw food in a fridge that is as warm as it may be. */
  static Twins tooWarmAFridge(Evening evening, Chance chance) {
    Holds limit = chance.oneOf(COLD);
    Air air = chance.oneOf(List.of(Air.values()));
    int chills = chance.between(60, 1200);
    Dishes fish = aDish("marinade").arrives(Arrives.COLD)
        .tags(chance.oneOf(List.of("raw fish", "raw meat", "tcs")))
        .kind(Kind.TRAY_OF_PIECES, Length.mm(chance.between(10, 40)))
        .step(aStep("chill").takes(chills).starts(StartState.CHILLED).in("bowl").shelf("fridge"));
    return Twins.of(holds -> evening.with(limit.rules(),
        Evening.kitchen().with(MadeAhead.store("fridge", Store.Kind.FRIDGE, holds, air)), fish)
        .with(aRun("marinade", "chill", evening.table() - chills, chills).shelves("fridge", "middle")),
        limit.limit(), limit.limit().plusKelvins(1), "marinade/chill", limit.source());
  }

  /** Hot food in a place that is as cool as it may be, until it is no warmer than that. */
  static Twins tooCoolAHotPlace(Evening evening, Chance chance) {
    Holds limit = chance.oneOf(HOT);
    Air air = chance.oneOf(List.of(Air.values()));
    int waits = chance.between(480, 540);
    int simmers = chance.between(10, 60);
    int from = evening.table() - waits - simmers;
    Dishes stew = aDish("stew")
        .kind(chance.oneOf(List.of(Kind.LIQUID, Kind.CASSEROLE)), Length.mm(chance.between(10, 20)))
        .step(aStep("simmer").takes(simmers).burner(BurnerSize.SMALL).in("pot").keepsIn("hot box", 600));
    return Twins.of(holds -> evening.with(limit.rules(),
        Evening.kitchen().with(MadeAhead.store("hot box", Store.Kind.HOT, holds, air)), stew)
        .with(aRun("stew", "simmer", from, simmers).burners("large"))
        .with(aStay("stew", "simmer", from + simmers).in(Waiting.in("hot box", "top"), evening.table())),
        limit.limit(), limit.limit().plusKelvins(-1), "stew/simmer", limit.source());
  }
}
