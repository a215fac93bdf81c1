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
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.StartState;

/** Plans with food in the wrong pan, the wrong fridge, or on the wrong shelf. */
final class PlantedPlaces {

  /** Of the time it has to cool: as near to all of it as two ways of reckoning agree. */
  private static final double JUST_IN_TIME = 0.95;
  private static final double TOO_LATE = 1.05;

  private record Cools(String rules, String source) {}

  private static final List<Cools> COOLING = List.of(new Cools("us-service", "3-501.14(A)"),
      new Cools("uk", "cook-chill"));

  /** From the top of a fridge down; what is on one line may stand on one shelf. */
  private static final List<List<String>> SHELVES = List.of(
      List.of("vegetables", "tcs"),
      List.of("raw meat", "raw fish"),
      List.of("raw ground meat", "raw egg"),
      List.of("raw poultry", "raw snails"));

  private static final List<String> TOP_DOWN = List.of("top", "middle", "bottom");

  private record Pan(Length deep, double fridge) {}

  private PlantedPlaces() {}

  static Twins tooDeep(Evening evening, Chance chance) {
    Cools limit = chance.oneOf(COOLING);
    CoolingPan pan = pan(chance, chance.between(0, 3));
    return cooled(limit, pan, new Pan(pan.depth(limit.rules(), JUST_IN_TIME), pan.holds()),
        new Pan(pan.depth(limit.rules(), TOO_LATE), pan.holds()), evening, chance);
  }

  /** It is three degrees warmer, and cold enough by itself. */
  static Twins tooWarmToCool(Evening evening, Chance chance) {
    Cools limit = chance.oneOf(COOLING);
    CoolingPan pan = pan(chance, chance.between(0, 1));
    Length deep = pan.depth(limit.rules(), JUST_IN_TIME);
    return cooled(limit, pan, new Pan(deep, pan.holds()), new Pan(deep, pan.holds() + 3), evening, chance);
  }

  private static CoolingPan pan(Chance chance, int holds) {
    Kind kind = chance.oneOf(List.of(Kind.LIQUID, Kind.CASSEROLE, Kind.CUSTARD));
    return new CoolingPan(kind, chance.oneOf(List.of(Air.values())), holds);
  }

  private static Twins cooled(Cools limit, CoolingPan as, Pan clean, Pan planted, Evening evening,
      Chance chance) {
    int simmers = chance.between(10, 60);
    int from = daysBefore(1, "0:00") + chance.between(0, 1439);
    return Twins.of(
        pan -> evening.with(limit.rules(), Evening.kitchen().with(MadeAhead.fridge(pan.fridge(), as.air())),
            aDish("chili").kind(as.kind(), pan.deep())
                .arrives(Arrives.COLD)
                .step(aStep("simmer").takes(simmers)
                    .burner(BurnerSize.SMALL)
                    .in("pot")
                    .keepsIn("fridge", MadeAhead.KEEPS)))
            .with(aRun("chili", "simmer", from, simmers).burners("large"))
            .with(aStay("chili", "simmer", from + simmers).in(Waiting.in("fridge", "top"), evening.table())),
        clean, planted, "chili/simmer", limit.source());
  }

  /** Two dishes one above the other, or the other way up. */
  static Twins rawAbove(Evening evening, Chance chance) {
    String rules = chance.oneOf(List.of("us-home", "us-service", "uk"));
    int rawer = chance.between(1, SHELVES.size() - 1);
    String below = chance.oneOf(SHELVES.get(rawer));
    String above = chance.oneOf(SHELVES.get(chance.between(0, rawer - 1)));
    int high = chance.between(0, 1);
    int chills = chance.between(60, 600);
    int later = chance.between(0, 59);
    return Twins.of(level -> {
      Plans plans = evening.with(rules, Evening.kitchen(), chilled("terrine", above, chills),
          chilled("birds", below, chills + later));
      cooked(plans, "terrine", above, 2 * high + 1 - level, "large", chills, evening);
      cooked(plans, "birds", below, level, "medium", chills + later, evening);
      return plans;
    }, high + 1, high, "birds/chill", "stands above terrine/chill");
  }

  private static Dishes chilled(String name, String tag, int minutes) {
    Dishes dish = aDish(name).kind(Kind.CASSEROLE, Length.mm(20))
        .tags(tag)
        .step(aStep("chill").takes(minutes).starts(StartState.CHILLED).in("pot").shelf("fridge"));
    return isRaw(tag) ? dish.step(aStep("simmer").takes(30).burner(BurnerSize.SMALL)) : dish;
  }

  private static boolean isRaw(String tag) {
    return tag.startsWith("raw");
  }

  /** What is raw simmers for half an hour when it comes from its shelf, straight to the table. */
  private static void cooked(
      Plans plans, String dish, String tag, int level, String burner, int chills, Evening evening) {
    int out = evening.table() - (isRaw(tag) ? 30 : 0);
    plans.with(aRun(dish, "chill", out - chills, chills).shelves("fridge", TOP_DOWN.get(level)));
    if (isRaw(tag)) {
      plans.with(aRun(dish, "simmer", out, 30).burners(burner));
    }
  }
}
