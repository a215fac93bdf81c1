package ovenloom.model.audit;

import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Event;

/**
 * A supper with flatbreads of the same day, in an oven of its own, a salad and a table to lay; what else there is is for a test to say. Its host has
 * been about for twenty days and nights.
 *
 * @param table the minute in which all sit down
 * @param served minutes over which it is served
 * @param breads when they go in
 * @param salad minutes for which it stands tossed
 * @param laying when that begins
 */
record Evening(int table, int served, int breads, int salad, int laying) {

  static final String HOST = "Host";

  private static final int BREADS_BAKE = 8;
  private static final int BREADS_MARK = 250;

  static Evening of(Chance chance) {
    return new Evening(
        chance.between(at("17:30"), at("20:00")),
        chance.between(5, 20),
        chance.between(at("14:00"), at("15:45")),
        chance.between(11, 15),
        chance.between(at("9:00"), at("13:00")));
  }

  /** The home kitchen, with an oven more. */
  static Kitchens kitchen() {
    return aHomeKitchen().ovens(anOven("oven"), anOven("small oven"));
  }

  /** A plan for it, to which its dishes' own runs and stays are to be added. */
  Plans with(String rules, Kitchens kitchen, Dishes... dishes) {
    List<Dishes> sides = List.of(
        aDish("flatbreads").kind(Kind.BREAD, Length.mm(10))
            .step(aStep("bake").takes(BREADS_BAKE).bake(BREADS_MARK).in("tray").keepsOnTheCounter(900)),
        aDish("salad").arrives(Arrives.COLD).step(aStep("toss").takes(10).hands().in("bowl")),
        aChore("table").step(aStep("lay").takes(15).hands()));
    Event event = aSupperOf(Stream.concat(Stream.of(dishes), sides.stream()).toArray(Dishes[]::new))
        .rules(rules)
        .in(kitchen)
        .course("supper", table, served)
        .from(daysBefore(20, "0:00"))
        .cooks(aCook(HOST, new Stretch(daysBefore(20, "0:00"), at("24:00"))))
        .event();
    int tossed = table - salad;
    return aPlanFor(event)
        .with(
            aRun("flatbreads", "bake", breads, BREADS_BAKE).oven("small oven", BREADS_MARK)
                .load(HOST)
                .unload(HOST))
        .with(aStay("flatbreads", "bake", breads + BREADS_BAKE).in(Waiting.COUNTER, table))
        .with(baked("small oven", BREADS_MARK, breads, BREADS_BAKE))
        .with(aRun("salad", "toss", tossed - 10, 10).work(HOST))
        .with(aStay("salad", "toss", tossed).in(Waiting.COUNTER, table))
        .with(aRun("table", "lay", laying, 15).work(HOST));
  }

  /** Ten degrees a minute from a room of 20 C, and then at its mark. */
  static Logs baked(String oven, int mark, int from, int minutes) {
    String on = wall(from - (mark - 20) / 10);
    return aLog(oven).warming(mark, on, wall(from)).at(mark, wall(from), wall(from + minutes));
  }

  private static String wall(int minute) {
    return minute / 60 + ":" + minute % 60;
  }
}
