package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.plan.HandsOn.Act;

class OneThingAtATimeTest {

  private final KitchenRule rule = new OneThingAtATime();
  private final Events supper = aSupperOf(
      aDish("bread").step(aStep("bake").takes(30).bake(230)),
      aDish("tart").step(aStep("bake").takes(30).bake(180)),
      aDish("sauce").step(aStep("whisk").hands()),
      aDish("salad").step(aStep("toss").hands()));

  @Test
  void nobody_whisks_and_tosses_at_once() {
    assertThat(aPlanFor(supper)
        .with(aRun("sauce", "whisk", "18:00", 10).work("Host"))
        .with(aRun("salad", "toss", "18:07", 10).work("Host"))
        .heldAgainst(rule)).singleElement().satisfies(each -> {
          assertThat(each.off()).isEqualTo(3);
          assertThat(each.who()).containsExactly("Host", "sauce/whisk", "salad/toss");
        });
  }

  @Test
  void the_next_thing_begins_the_minute_the_last_one_ends() {
    assertThat(aPlanFor(supper)
        .with(aRun("sauce", "whisk", "18:00", 10).work("Host"))
        .with(aRun("salad", "toss", "18:10", 10).work("Host"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void two_cooks_do_two_things() {
    assertThat(aPlanFor(supper)
        .with(aRun("sauce", "whisk", "18:00", 10).work("Host"))
        .with(aRun("salad", "toss", "18:00", 10).work("Guest"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_long_thing_clashes_with_all_that_lies_within() {
    assertThat(aPlanFor(supper)
        .with(aRun("sauce", "whisk", "18:00", 30).work("Host"))
        .with(aRun("salad", "toss", "18:05", 5).work("Host"))
        .wash("pot", 1, "18:20", "Host")
        .heldAgainst(rule)).extracting(Break::off).containsExactly(5L, 5L);
  }

  @Test
  void the_bread_comes_out_and_the_tart_goes_in_through_one_open_door() {
    assertThat(aPlanFor(supper)
        .with(aRun("bread", "bake", "17:00", 30).oven("oven", 230).unload("Host"))
        .with(aRun("tart", "bake", "17:29", 30).oven("oven", 180).load("Host"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_has_waited_in_the_oven_comes_out_through_the_same_door() {
    assertThat(aPlanFor(supper)
        .with(aStay("bread", "bake", "17:00").oven("17:30", "oven", 80).unload("Host"))
        .with(aRun("tart", "bake", "17:29", 30).oven("oven", 180).load("Host"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void two_ovens_have_two_doors() {
    assertThat(aPlanFor(supper)
        .with(aRun("bread", "bake", "17:00", 30).oven("oven", 230).unload("Host"))
        .with(aRun("tart", "bake", "17:29", 30).oven("range", 180).load("Host"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void a_door_opened_a_minute_later_is_opened_again() {
    assertThat(aPlanFor(supper)
        .with(aRun("bread", "bake", "17:00", 30).oven("oven", 230)
            .hands(Act.UNLOAD, at("17:28"), at("17:30"), "Host"))
        .with(aRun("tart", "bake", "17:29", 30).oven("oven", 180).load("Host"))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void turning_the_bread_is_not_loading_the_tart() {
    assertThat(aPlanFor(supper)
        .with(aRun("bread", "bake", "17:00", 30).oven("oven", 230)
            .hands(Act.WORK, at("17:20"), at("17:21"), "Host"))
        .with(aRun("tart", "bake", "17:20", 30).oven("oven", 180).load("Host"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void nobody_loads_while_washing_up() {
    assertThat(aPlanFor(supper)
        .with(aRun("tart", "bake", "17:20", 30).oven("oven", 180).load("Host"))
        .wash("pot", 1, "17:16", "Host")
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }
}
