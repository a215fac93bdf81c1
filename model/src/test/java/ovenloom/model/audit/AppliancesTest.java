package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.measure.Power;

class AppliancesTest {

  private final KitchenRule rule = new Appliances();
  private final Events supper = aSupperOf(
      aDish("dough").batches(2).step(aStep("knead").takes(20).appliance("mixer").together(2)),
      aDish("cream").step(aStep("whip").takes(10).appliance("mixer")),
      aDish("meringue").step(aStep("whip").takes(10).appliance("mixer")));

  private static Runs cream(String from) {
    return aRun("cream", "whip", from, 10);
  }

  private static Runs dough(String from) {
    return aRun("dough", "knead", from, 20).batches(1, 2);
  }

  @Test
  void one_mixer_does_not_knead_and_whip() {
    assertThat(aPlanFor(supper).with(dough("17:00")).with(cream("17:15")).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.unit()).isEqualTo(Break.Unit.PIECES);
          assertThat(each.when()).isEqualTo(between("17:15", "17:20"));
          assertThat(each.who()).containsExactly("mixer", "dough/knead", "cream/whip");
        });
  }

  @Test
  void cream_may_be_whipped_the_minute_the_dough_is_kneaded() {
    assertThat(aPlanFor(supper).with(dough("17:00")).with(cream("17:20")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(dough("17:00")).with(cream("17:19")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void two_batches_kneaded_together_take_one_place() {
    assertThat(aPlanFor(supper).with(dough("17:00")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void two_of_one_place_do_what_one_of_two_places_does() {
    for (Kitchens kitchen : new Kitchens[]{
        aHomeKitchen().appliance("mixer", 2, 1), aHomeKitchen().appliance("mixer", 1, 2)}) {
      var plan = aPlanFor(supper.in(kitchen)).with(dough("17:00")).with(cream("17:05"));

      assertThat(plan.heldAgainst(rule)).isEmpty();
      assertThat(plan.with(aRun("meringue", "whip", "17:00", 10)).heldAgainst(rule)).hasSize(1);
    }
  }

  @Test
  void a_mixer_that_a_neighbour_has_until_five_is_there_from_five() {
    var lent = new Appliance(
        "mixer", 1, 1, false, new Power(500), null, Kitchens.taken(between("16:00", "17:00"), 1));
    var event = supper.in(aHomeKitchen().with(lent));

    assertThat(aPlanFor(event).with(cream("17:00")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(event).with(cream("16:59")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("16:59", "17:00")));
  }

  @Test
  void an_appliance_nobody_has_is_missed() {
    var ice = aSupperOf(aDish("ice").step(aStep("churn").appliance("churn")));

    assertThat(aPlanFor(ice).with(aRun("ice", "churn", "17:00", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("there is no churn here"));
  }

  @Test
  void a_step_that_names_the_mixer_twice_takes_it_once() {
    var twice = aSupperOf(aDish("cream").step(aStep("whip").appliance("mixer").appliance("mixer")));

    assertThat(aPlanFor(twice).with(cream("17:00")).heldAgainst(rule)).isEmpty();
  }
}
