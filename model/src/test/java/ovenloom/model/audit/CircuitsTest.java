package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Power;

/** An oven of 3 kW, a hot plate of 1.5 kW and a mixer of 500 W on one circuit. */
class CircuitsTest {

  private final KitchenRule rule = new Circuits();

  private static Events supperOn(int watts) {
    return aSupperOf(
        aDish("soup").step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).keeps(null, null, 60)),
        aDish("cream").step(aStep("whip").takes(10).appliance("mixer")))
        .in(aHomeKitchen().ovens(anOven("oven").onCircuit("wall"))
            .with(new Burner("plate", BurnerSize.LARGE, new Power(1500), "wall", Availability.ALWAYS))
            .with(new Appliance("mixer", 1, 1, false, new Power(500), "wall", Availability.ALWAYS))
            .circuit("wall", watts));
  }

  private static Plans soupOn(int watts) {
    return aPlanFor(supperOn(watts)).with(aRun("soup", "simmer", "18:00", 30).burners("plate"));
  }

  @Test
  void oven_and_plate_together_draw_4500_watts() {
    var log = aLog("oven").warming(220, "17:40", "18:00").at(220, "18:00", "18:20");

    assertThat(soupOn(4500).with(log).heldAgainst(rule)).isEmpty();
    assertThat(soupOn(4499).with(log).heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.unit()).isEqualTo(Break.Unit.WATTS);
      assertThat(each.when()).isEqualTo(between("18:00", "18:20"));
      assertThat(each.who()).containsExactly("wall", "oven", "plate");
    });
  }

  @Test
  void an_oven_may_warm_until_the_minute_the_soup_is_put_on() {
    assertThat(soupOn(4000).with(aLog("oven").warming(220, "17:40", "18:00")).heldAgainst(rule)).isEmpty();
    assertThat(soupOn(4000).with(aLog("oven").warming(220, "17:41", "18:01")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void a_pot_kept_warm_and_a_mixer_draw_too() {
    var cream = aRun("cream", "whip", "18:40", 10);

    assertThat(soupOn(1999).with(aStay("soup", "simmer", "18:30").burners("19:00", "plate"))
        .with(cream)
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("18:40", "18:50")));
    assertThat(soupOn(1999).with(cream).heldAgainst(rule)).isEmpty();
    assertThat(soupOn(2000).with(aStay("soup", "simmer", "18:30").burners("19:00", "plate"))
        .with(cream)
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_hangs_on_no_circuit_or_another_draws_nothing_here() {
    var event = aSupperOf(aDish("soup").step(aStep("simmer").takes(30).burner(BurnerSize.SMALL)))
        .in(aHomeKitchen().ovens(anOven("oven").onCircuit("garage"))
            .circuit("wall", 100)
            .circuit("garage", 3000));

    assertThat(aPlanFor(event).with(aRun("soup", "simmer", "18:00", 30).burners("small"))
        .with(aLog("oven").at(220, "18:00", "18:20"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_is_not_there_draws_nothing() {
    assertThat(aPlanFor(supperOn(1)).with(aLog("kiln").at(220, "18:00", "18:20"))
        .with(aRun("soup", "simmer", "18:00", 30).burners("campfire"))
        .heldAgainst(rule)).isEmpty();
  }
}
