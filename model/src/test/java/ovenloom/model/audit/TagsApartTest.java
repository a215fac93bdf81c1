package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;

/** Fish and pastry are kept apart. */
class TagsApartTest {

  private final KitchenRule rule = new TagsApart();
  private final Events supper = aSupperOf(
      aDish("trout").tags("fish", "raw fish").step(aStep("bake").takes(30).bake(180)),
      aDish("tart").tags("pastry").step(aStep("bake").takes(30).bake(180)),
      aDish("potatoes").step(aStep("bake").takes(30).bake(180)),
      aDish("fish pie").batches(2).tags("fish", "pastry").step(aStep("bake").takes(30).bake(180)))
      .apart("fish", "pastry");

  private static Runs bake(String dish, String from) {
    return aRun(dish, "bake", from, 30).oven("oven", 180);
  }

  @Test
  void trout_and_tart_do_not_share_the_oven_whichever_is_first() {
    assertThat(aPlanFor(supper).with(bake("trout", "18:00")).with(bake("tart", "18:20")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(10);
          assertThat(each.who()).containsExactly("oven", "trout/bake", "tart/bake");
          assertThat(each.what()).isEqualTo("fish and pastry share the oven for 10 min");
        });
    assertThat(aPlanFor(supper).with(bake("tart", "18:00")).with(bake("trout", "18:20")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void the_tart_may_follow_the_trout_at_once() {
    assertThat(aPlanFor(supper).with(bake("trout", "18:00")).with(bake("tart", "18:30")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bake("trout", "18:00")).with(bake("tart", "18:29")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void potatoes_go_with_either() {
    assertThat(
        aPlanFor(supper).with(bake("trout", "18:00")).with(bake("potatoes", "18:00")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bake("tart", "18:00")).with(bake("potatoes", "18:00")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void another_oven_is_another_matter() {
    assertThat(aPlanFor(supper).with(bake("trout", "18:00"))
        .with(aRun("tart", "bake", "18:00", 30).oven("other oven", 180))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void trout_that_waits_in_the_oven_keeps_the_tart_out() {
    var waiting = aStay("trout", "bake", "17:30").ovenThatIsOff("18:10", "oven");

    assertThat(aPlanFor(supper).with(bake("trout", "17:00"))
        .with(waiting)
        .with(bake("tart", "18:00"))
        .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
    assertThat(aPlanFor(supper).with(bake("trout", "17:00"))
        .with(waiting)
        .with(bake("tart", "18:10"))
        .heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void two_fish_pies_are_at_peace_with_each_other_and_not_with_trout() {
    assertThat(aPlanFor(supper).with(bake("fish pie", "18:00").batch(1))
        .with(bake("fish pie", "18:10").batch(2))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(bake("fish pie", "18:00").batch(1))
        .with(bake("trout", "18:00"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void one_of_two_fish_pies_that_waits_keeps_the_trout_out_as_well() {
    var pies = aRun("fish pie", "bake", "17:00", 30).batches(1, 2).oven("oven", 180);
    var waiting = aStay("fish pie", "bake", "17:30").batch(2).ovenThatIsOff("18:10", "oven");

    assertThat(aPlanFor(supper).with(pies).with(waiting).with(bake("trout", "18:00")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
  }
}
