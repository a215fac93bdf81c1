package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;

/** Twenty minutes off the burner, supper is served. */
class ServedTest {

  private static Served served(Kind kind) {
    Plans plan = aPlanFor(aSupperOf(aDish("dish").kind(kind, Length.mm(40))
        .arrives(Arrives.HOT)
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))))
        .with(aRun("dish", "simmer", "18:10", 30).burners("small"))
        .with(aStay("dish", "simmer", "18:40").counter("19:00"));
    return Served.all(plan.plan(), Life.of(plan.plan(), 1)).getFirst();
  }

  /** An open bowl of soup loses some twenty degrees in twenty minutes, one with a lid a handful: common practice. */
  @Test
  void the_band_of_what_is_hot_and_liquid_reckons_with_no_lid() {
    Served soup = served(Kind.LIQUID);

    assertThat(soup.likely() - soup.coldest()).isBetween(12.0, 30.0);
    assertThat(soup.warmest() - soup.likely()).isBetween(1.0, 5.0);
  }

  @Test
  void that_of_what_is_firm_does_not() {
    Served stew = served(Kind.CASSEROLE);

    assertThat(stew.likely() - stew.coldest()).isBetween(1.0, 6.0);
  }
}
