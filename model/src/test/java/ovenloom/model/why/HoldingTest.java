package ovenloom.model.why;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.Events;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Plan;

class HoldingTest {

  private final Plan gratin = GratinSupper.plan();

  @Test
  void hands_that_are_wanted_elsewhere_hold_a_bake_back() {
    Hold bake = hold(gratin, "gratin", "bake");

    assertThat(bake.free()).as("the salad is tossed from 18:20").isEqualTo(3);
    assertThat(bake.breaks().getFirst().who()).containsExactlyInAnyOrder("Host", "gratin/bake", "salad/toss");
    assertThat(bake.best()).as("less than a tick of the clock").isNull();
  }

  @Test
  void calm_is_why_the_gratin_is_sliced_before_the_last_hour() {
    Hold slice = hold(gratin, "gratin", "slice");

    assertThat(slice.free()).as("until it goes in at 18:16").isEqualTo(11);
    assertThat(rules(slice)).contains("links");
    assertThat(cost(slice).isLess()).isFalse();
    assertThat(cost(slice).wishes()).as("5 min more in the last hour").containsEntry(Wish.CALM, 5L);
  }

  @Test
  void what_would_be_better_later_is_said_to_be() {
    Hold toss = hold(gratin, "salad", "toss");

    assertThat(toss.free()).as("the gratin is taken out at 18:45").isEqualTo(15);
    assertThat(cost(toss).isLess()).isTrue();
    assertThat(cost(toss).early()).isEqualTo(-15);
  }

  @Test
  void food_goes_along_to_where_it_waits_and_the_oven_is_switched_on_later_too() {
    Plan later = new Trials(gratin).later(GratinSupper.run(gratin, "gratin", "bake"), 3).plan();

    assertThat(later.stays()).anySatisfy(
        stay -> assertThat(stay.parts().getFirst().when()).isEqualTo(between("18:05", "18:19")));
    assertThat(later.ovens().getFirst().spans().getFirst().when()).isEqualTo(between("18:03", "18:19"));
    assertThat(Audit.of(later.event(), later)).isEmpty();
  }

  @Test
  void a_step_is_held_by_the_one_that_follows_and_that_by_the_time_its_own_food_keeps() {
    Plan stew = stew(aCook("Host", between("8:00", "22:00")));

    List<Hold> chain = Holding.chain(new Trials(stew), GratinSupper.run(stew, "stew", "chop"));

    assertThat(chain).extracting(Hold::name).containsExactly("stew/chop", "stew/simmer");
    assertThat(chain.getFirst().next().getFirst().at()).isEqualTo(at("18:10"));
    assertThat(chain.getFirst().free()).isZero();
    assertThat(chain.getLast().free()).as("a quarter of an hour on the counter").isEqualTo(15);
    assertThat(rules(chain.getLast())).containsExactly("keeps");
  }

  @Test
  void a_cook_who_goes_home_holds_a_pot_back() {
    Plan stew = stew(aCook("Host", between("8:00", "18:40"), between("18:55", "22:00")));

    Hold simmer = hold(stew, "stew", "simmer");

    assertThat(simmer.free()).isZero();
    assertThat(rules(simmer)).containsOnly("someone there");
  }

  @Test
  void the_table_holds_what_is_ready_just_in_time() {
    Plan salad = salad("18:50");

    Hold toss = hold(salad, "salad", "toss");

    assertThat(toss.next()).extracting(Next::name).containsExactly(Next.TABLE);
    assertThat(rules(toss)).containsOnly("on time");
  }

  @Test
  void an_oven_that_has_to_cool_down_for_the_next_bake_holds_the_one_before() {
    Events supper = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220)),
        aDish("custard").step(aStep("bake").takes(30).bake(120))).in(aHomeKitchen().ovens(anOven("oven")));
    Plan plan = aPlanFor(supper).with(aRun("bread", "bake", "17:00", 30).oven("oven", 220))
        .with(aRun("custard", "bake", "17:44", 30).oven("oven", 120))
        .plan();

    assertThat(warming(plan, 0)).isEmpty();
    assertThat(warming(plan, 1)).containsExactly("needs 14 min to be at 120 C, and has 13");
  }

  private static List<String> warming(Plan plan, int later) {
    return new Trials(plan).later(GratinSupper.run(plan, "bread", "bake"), later)
        .breaks()
        .stream()
        .filter(each -> each.rule().equals("warming and cooling"))
        .map(Break::what)
        .toList();
  }

  @Test
  void who_took_it_out_after_its_wait_in_the_oven_takes_it_out_as_it_is_done_where_it_waits_no_more() {
    Events supper = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220).keeps(null, 60, null))
        .step(aStep("slice").takes(5).hands()));
    Plan plan = aPlanFor(supper).with(aRun("bread", "bake", "17:00", 30).oven("oven", 220).load("Host"))
        .with(aStay("bread", "bake", "17:30").ovenThatIsOff("17:40", "oven").unload("Host"))
        .with(aRun("bread", "slice", "17:40", 5).work("Host"))
        .plan();

    Plan later = new Trials(plan).later(GratinSupper.run(plan, "bread", "bake"), 10).plan();

    assertThat(later.placements().getFirst().hands()).extracting(HandsOn::when)
        .containsExactly(between("17:10", "17:11"), between("17:39", "17:40"));
  }

  private static Plan stew(Cook cook) {
    Events supper = aSupperOf(
        aDish("stew").tags("not tcs")
            .step(aStep("chop").takes(10).hands().in("pot"))
            .step(aStep("simmer").takes(30).burner(BurnerSize.MEDIUM).keepsOnTheCounter(60)))
        .cooks(cook);
    return scored(supper, aPlanFor(supper)
        .with(aRun("stew", "chop", "18:00", 10).work("Host"))
        .with(aStay("stew", "chop", "18:10"))
        .with(aRun("stew", "simmer", "18:10", 30).burners("medium"))
        .with(aStay("stew", "simmer", "18:40").counter("19:00"))
        .plan());
  }

  private static Plan salad(String from) {
    Events supper = aSupperOf(
        aDish("salad").tags("not tcs").step(aStep("toss").takes(10).hands().in("bowl")));
    return scored(supper, aPlanFor(supper).with(aRun("salad", "toss", from, 10).work("Host"))
        .with(aStay("salad", "toss", "19:00"))
        .plan());
  }

  private static Plan scored(Events supper, Plan plan) {
    Plan scored = new Plan(plan.event(), plan.sources(), plan.placements(), plan.stays(), plan.ovens(),
        plan.washes(), plan.layouts(), Reckoning.of(supper.event(), plan));
    assertThat(Audit.of(scored.event(), scored)).as("a plan to begin with").isEmpty();
    return scored;
  }

  private static Hold hold(Plan plan, String dish, String step) {
    return Holding.of(new Trials(plan), GratinSupper.run(plan, dish, step));
  }

  private static List<String> rules(Hold hold) {
    return hold.breaks().stream().map(Break::rule).toList();
  }

  private static Cost cost(Hold hold) {
    Trial best = Objects.requireNonNull(hold.best());
    Plan now = best.plan();
    return Cost.of(GratinSupper.plan().score(), now.score(), now.event().wishes());
  }
}
