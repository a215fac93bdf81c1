package ovenloom.model.audit;

import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Evening.HOST;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.StartState;

/** Plans with some minutes too many, or too few. */
final class PlantedMinutes {

  private static final int DAY = 1440;

  private record Out(String rules, double room, int minutes, String source) {}

  private static final List<Out> OUT = List.of(
      new Out("us-home", 20, 120, "2 h and 1 h"),
      new Out("us-home", 33, 60, "2 h and 1 h"),
      new Out("us-service", 20, 240, "3-501.19"),
      new Out("uk", 20, 240, "42-49"));

  private record Days(String rules, int most, String source) {}

  private static final List<Days> DAYS = List.of(
      new Days("us-home", 4, "Cold Food Storage Chart"), new Days("us-service", 7, "3-501.17"));

  private PlantedMinutes() {}

  /** Raw food on the counter, until the last of it is served. */
  static Twins leftOut(Evening evening, Chance chance) {
    Out limit = chance.oneOf(OUT);
    int minces = chance.between(5, 20);
    Dishes tartare = aDish("tartare").arrives(Arrives.COLD)
        .tags(chance.oneOf(List.of("raw meat", "raw fish", "raw egg", "tcs")))
        .kind(chance.oneOf(List.of(Kind.CASSEROLE, Kind.TRAY_OF_PIECES, Kind.CUSTARD)),
            Length.mm(chance.between(10, 60)))
        .step(aStep("mince").takes(minces).in("bowl").keepsOnTheCounter(600));
    return Twins.ofMinutes(minutes -> {
      int from = evening.table() + evening.served() - minutes;
      return evening.with(limit.rules(), Evening.kitchen().room(limit.room()), tartare)
          .with(aRun("tartare", "mince", from, minces))
          .with(aStay("tartare", "mince", from + minces).in(Waiting.COUNTER, evening.table()));
    }, limit.minutes() - chance.between(0, 3), limit.minutes() + 5, "tartare/mince", limit.source());
  }

  /** The day it was made counts as the first; of one in three its first minute, and the one before. */
  static Twins aDayTooLong(Evening evening, Chance chance) {
    Days limit = chance.oneOf(DAYS);
    MadeAhead soup = MadeAhead.of(limit.rules(), chance);
    boolean atMidnight = chance.between(1, 3) == 1;
    int minute = atMidnight ? 0 : chance.between(0, DAY - 1);
    int from = daysBefore(limit.most() - 1, "0:00") + minute;
    return Twins.ofMinutes(
        start -> evening.with(limit.rules(), soup.kitchen(), soup.dish().arrives(Arrives.COLD))
            .with(soup.simmered(start))
            .with(soup.chilled(start, evening.table())),
        from, from - (atMidnight ? 1 : DAY), "soup/simmer", limit.source());
  }

  /** In even steps from the fridge to the end: from 41 F to 165 F just within two hours, or not. */
  static Twins heatedTooSlowly(Evening evening, Chance chance) {
    MadeAhead soup = MadeAhead.of("us-service", chance);
    int core = chance.between(76, 95);
    int from = daysBefore(1, "0:00") + chance.between(0, DAY - 1);
    double all = (core - MadeAhead.FRIDGE) / (73.89 - 5);
    return Twins.ofMinutes(minutes -> {
      int warms = evening.table() - minutes;
      Dishes dish = soup.dish().step(aStep("warm").takes(minutes).burner(BurnerSize.SMALL, core));
      return evening.with("us-service", soup.kitchen(), dish)
          .with(soup.simmered(from))
          .with(soup.chilled(from, warms))
          .with(aRun("soup", "warm", warms, minutes).burners("large"));
    }, (int) (117 * all), (int) (125 * all), "soup/warm", "3-403.11");
  }

  /** Straight from the fridge, and so long as the card says of that. */
  static Twins bakedTooShort(Evening evening, Chance chance) {
    String rules = chance.oneOf(List.of("us-home", "us-service", "uk"));
    int card = chance.between(50, 90);
    int mark = 10 * chance.between(16, 20);
    int out = evening.table() - chance.between(0, 10);
    int built = daysBefore(1, "0:00") + chance.between(0, DAY - 1);
    Dishes gratin = aDish("gratin")
        .kind(chance.oneOf(List.of(Kind.CASSEROLE, Kind.CUSTARD, Kind.DENSE_ROAST)),
            Length.mm(chance.between(30, 60)))
        .step(aStep("build").takes(10).in("dish").starts(StartState.CHILLED).keepsIn("fridge", 3 * DAY))
        .step(aStep("bake").takes(card).bake(mark).starts(StartState.CHILLED));
    return Twins.ofMinutes(minutes -> evening.with(rules, Evening.kitchen(), gratin)
        .with(aRun("gratin", "build", built, 10))
        .with(aStay("gratin", "build", built + 10).in(Waiting.in("fridge", "top"), out - minutes))
        .with(aRun("gratin", "bake", out - minutes, minutes).oven("oven", mark).load(HOST).unload(HOST))
        .with(aStay("gratin", "bake", out).in(Waiting.COUNTER, evening.table()))
        .with(Evening.baked("oven", mark, out - minutes, minutes)),
        card, card - 5, "gratin/bake", "and has " + (card - 5));
  }
}
