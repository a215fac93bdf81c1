package ovenloom.model.audit;

import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

/** Soup that was simmered before and stands in a fridge, in a pan so shallow that it cools in good time. */
record MadeAhead(Kind kind, Length deep, Air air, int simmers) {

  /** The fridge, C. */
  static final double FRIDGE = 3;

  static final int KEEPS = 20 * 1440;

  /** Of the time that its profile allows for it to cool. */
  private static final double SHARE = 0.7;

  static MadeAhead of(String rules, Chance chance) {
    Kind kind = chance.oneOf(List.of(Kind.LIQUID, Kind.CASSEROLE));
    Air air = chance.oneOf(List.of(Air.values()));
    return new MadeAhead(kind, new CoolingPan(kind, air, FRIDGE).depth(rules, SHARE), air,
        chance.between(10, 60));
  }

  Dishes dish() {
    return aDish("soup").kind(kind, deep)
        .step(aStep("simmer").takes(simmers).burner(BurnerSize.SMALL).in("pot").keepsIn("fridge", KEEPS));
  }

  Runs simmered(int from) {
    return aRun("soup", "simmer", from, simmers).burners("large");
  }

  Waits chilled(int simmered, int until) {
    return aStay("soup", "simmer", simmered + simmers).in(Waiting.in("fridge", "top"), until);
  }

  Kitchens kitchen() {
    return Evening.kitchen().with(fridge(FRIDGE, air));
  }

  static Store fridge(double holds, Air air) {
    return store("fridge", Store.Kind.FRIDGE, Temperature.celsius(holds), air);
  }

  static Store store(String name, Store.Kind kind, Temperature holds, Air air) {
    return new Store(name, kind, holds, air,
        List.of(Kitchens.aShelf("top"), Kitchens.aShelf("middle"), Kitchens.aShelf("bottom")),
        Availability.ALWAYS);
  }
}
