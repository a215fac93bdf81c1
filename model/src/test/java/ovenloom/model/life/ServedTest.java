package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Steps;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Matter;

/** Twenty minutes off the burner, supper is served. */
class ServedTest {

  private static Served served(Kind kind, @Nullable Boolean covered) {
    Plans plan = aPlanFor(aSupperOf(aDish("dish").matter(new Matter(kind, Length.mm(40), null, null, covered))
        .arrives(Arrives.HOT)
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))))
        .with(aRun("dish", "simmer", "18:10", 30).burners("small"))
        .with(aStay("dish", "simmer", "18:40").counter("19:00"));
    return Served.all(plan.plan(), Life.of(plan.plan(), 1)).getFirst();
  }

  /** An open bowl of soup loses twenty degrees and more in twenty minutes, one with a lid a handful: common practice. */
  @Test
  void a_lid_keeps_a_soup_hot() {
    assertThat(served(Kind.LIQUID, false).likely()).isBetween(62.0, 75.0);
    assertThat(served(Kind.LIQUID, true).likely()).isBetween(82.0, 92.0);
  }

  @Test
  void where_no_card_tells_of_a_lid_there_is_none_and_the_band_reckons_with_one() {
    Served soup = served(Kind.LIQUID, null);

    assertThat(soup.likely()).isEqualTo(served(Kind.LIQUID, false).likely());
    assertThat(soup.warmest()).isGreaterThan(served(Kind.LIQUID, true).likely());
    assertThat(served(Kind.LIQUID, false).warmest()).isLessThan(served(Kind.LIQUID, true).likely());
  }

  private static double overNight(@Nullable Boolean dish, @Nullable Boolean step) {
    Steps simmer = aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot").keepsIn("fridge", 1440);
    Plans plan = aPlanFor(
        aSupperOf(aDish("dish").matter(new Matter(Kind.LIQUID, Length.mm(60), null, null, dish))
            .arrives(Arrives.COLD)
            .step(step == null ? simmer : simmer.covered(step))))
        .with(aRun("dish", "simmer", "16:00", 30).burners("small"))
        .with(aStay("dish", "simmer", "16:30").shelf("19:00", "fridge", "top"));
    return Served.all(plan.plan(), Life.of(plan.plan(), 1)).getFirst().likely();
  }

  @Test
  void a_lid_keeps_food_warm_in_the_fridge_too_and_a_step_may_take_it_off() {
    assertThat(overNight(true, null)).isGreaterThan(overNight(null, null) + 1);
    assertThat(overNight(true, false)).isEqualTo(overNight(null, null));
    assertThat(overNight(null, true)).isEqualTo(overNight(true, null));
  }

  @Test
  void a_stew_under_its_skin_loses_less() {
    Served stew = served(Kind.CASSEROLE, null);

    assertThat(stew.likely()).isGreaterThan(served(Kind.LIQUID, null).likely() + 5);
    assertThat(stew.likely() - stew.coldest()).isBetween(1.0, 10.0);
  }
}
