package ovenloom.model.audit;

import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.StartState;

/**
 * Food that is heated on a burner, held as hot there, and goes to the table.
 *
 * @param heats minutes that it takes to get hot
 * @param holds minutes for which it stays so
 * @param stands minutes until it is at the table
 */
record Heating(String dish, int heats, int holds, int stands, int table) {

  static Heating of(String dish, int holds, Evening evening, Chance chance) {
    return new Heating(dish, chance.between(20, 60), holds, chance.between(0, 15), evening.table());
  }

  /** When it begins. */
  int from() {
    return table - stands - holds - heats;
  }

  /** The dish with the two steps. */
  Dishes of(Dishes before, double core, @Nullable StartState starts) {
    Steps heat = aStep("heat").takes(heats).burner(BurnerSize.SMALL, core).in("pot");
    return before.step(starts == null ? heat : heat.starts(starts))
        .step(aStep("hold").takes(holds).burner(BurnerSize.SMALL, core));
  }

  /** The plan with both of them done. */
  Plans in(Plans plans) {
    return plans.with(aRun(dish, "heat", from(), heats).burners("large"))
        .with(aRun(dish, "hold", from() + heats, holds).burners("large"))
        .with(aStay(dish, "hold", table - stands).in(Waiting.COUNTER, table));
  }
}
