package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;

/** Room for six vessels. */
class LandingTest {

  private final KitchenRule rule = new Landing();
  private final Events supper = aSupperOf(
      aDish("salad").step(aStep("dress").takes(10).in("bowl", 4).keepsOnTheCounter(60)),
      aDish("bread").step(aStep("shape").takes(15).in("tray", 3).keepsOnTheCounter(60))
          .step(aStep("bake").takes(30).bake(220)),
      aDish("cheese").step(aStep("cut").takes(10)));

  private static Runs salad(String from) {
    return aRun("salad", "dress", from, 10);
  }

  private static Runs bread(String from) {
    return aRun("bread", "shape", from, 15);
  }

  @Test
  void four_bowls_and_three_trays_do_not_find_room_at_once() {
    assertThat(aPlanFor(supper).with(bread("17:00")).with(salad("17:10")).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.when()).isEqualTo(between("17:10", "17:15"));
          assertThat(each.who()).containsExactly("bread/shape", "salad/dress");
        });
  }

  @Test
  void one_after_the_other_they_do() {
    assertThat(aPlanFor(supper).with(bread("17:00")).with(salad("17:15")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00")).with(salad("17:14")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void room_for_seven_is_enough_for_seven() {
    assertThat(aPlanFor(supper.in(aHomeKitchen().landing(7))).with(bread("17:00"))
        .with(salad("17:10"))
        .heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void what_waits_on_the_counter_stands_there_too() {
    var waiting = aStay("bread", "shape", "17:15").counter("17:30");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(waiting).with(salad("17:20")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("17:20", "17:30")));
    assertThat(aPlanFor(supper).with(bread("17:00")).with(waiting).with(salad("17:30")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void what_waits_in_the_fridge_or_bakes_does_not() {
    var cold = aStay("bread", "shape", "17:15").shelf("17:30", "fridge", "top", "middle", "bottom");
    var bake = aRun("bread", "bake", "17:30", 30).oven("oven", 220).racks(0, 0, 1);

    assertThat(
        aPlanFor(supper).with(bread("17:00")).with(cold).with(bake).with(salad("17:25")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void cheese_on_its_board_takes_none_for_it_is_in_no_vessel() {
    var plan = aPlanFor(supper.in(aHomeKitchen().landing(0))).with(aRun("cheese", "cut", "17:00", 10))
        .with(aStay("cheese", "cut", "17:10").counter("19:00"));

    assertThat(plan.heldAgainst(rule)).isEmpty();
  }

  @Test
  void the_most_that_is_missing_counts() {
    var plan = aPlanFor(supper.in(aHomeKitchen().landing(2))).with(bread("17:00")).with(salad("17:10"));

    assertThat(plan.heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(5);
      assertThat(each.when()).isEqualTo(between("17:00", "17:20"));
    });
  }

  @Test
  void one_bowl_is_one_too_many_where_there_is_no_room() {
    var soup = aSupperOf(aDish("soup").step(aStep("stir").takes(10).in("bowl").keepsOnTheCounter(60)))
        .in(aHomeKitchen().landing(0));

    assertThat(aPlanFor(soup).with(aRun("soup", "stir", "17:00", 10)).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(soup).with(aStay("soup", "stir", "17:10").counter("17:20")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void each_time_there_is_too_little_room_is_a_break_of_its_own() {
    var plan = aPlanFor(supper.in(aHomeKitchen().landing(3))).with(salad("17:00"))
        .with(aStay("salad", "dress", "17:20").counter("17:25")
            .shelf("17:40", "fridge", "top")
            .counter("17:45"))
        .with(aStay("bread", "shape", "17:42").counter("17:50"));

    assertThat(plan.heldAgainst(rule)).extracting(Break::when)
        .containsExactly(between("17:00", "17:10"), between("17:20", "17:25"), between("17:40", "17:45"));
  }
}
