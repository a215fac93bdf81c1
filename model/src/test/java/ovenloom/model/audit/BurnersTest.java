package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;

/** A large, a medium and a small burner; a pot needs a medium one. */
class BurnersTest {

  private final KitchenRule rule = new Burners();
  private final Events supper = aSupperOf(
      aDish("soup").step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot").keeps(null, null, 60)),
      aDish("peas").step(aStep("boil").takes(10).burner(BurnerSize.SMALL)),
      aDish("pasta").step(aStep("boil").takes(20).burner(BurnerSize.LARGE).in("pot", 2)),
      aDish("salad").step(aStep("toss")));

  private static Runs soup(String from, String... burners) {
    return aRun("soup", "simmer", from, 30).burners(burners);
  }

  private static Runs peas(String from, String... burners) {
    return aRun("peas", "boil", from, 10).burners(burners);
  }

  @Test
  void soup_and_peas_have_a_burner_each() {
    assertThat(aPlanFor(supper).with(soup("18:00", "large")).with(peas("18:10", "medium")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void they_cannot_both_be_on_the_large_one() {
    assertThat(aPlanFor(supper).with(soup("18:00", "large")).with(peas("18:25", "large")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(5);
          assertThat(each.who()).containsExactly("large", "soup/simmer", "peas/boil");
        });
  }

  @Test
  void the_peas_may_have_it_the_minute_the_soup_leaves_it() {
    assertThat(aPlanFor(supper).with(soup("18:00", "large")).with(peas("18:30", "large")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(soup("18:00", "large")).with(peas("18:29", "large")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void a_pot_stands_on_a_medium_burner_and_not_on_a_small_one() {
    assertThat(aPlanFor(supper).with(soup("18:00", "medium")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(soup("18:00", "small")).heldAgainst(rule)).singleElement()
        .satisfies(
            each -> assertThat(each.what()).isEqualTo("the burner is small, and the pot needs a medium one"));
    assertThat(aPlanFor(supper).with(peas("18:00", "small")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_needs_a_large_burner_needs_it_under_every_pot() {
    assertThat(aPlanFor(supper).with(aRun("pasta", "boil", "18:00", 20).burners("large", "medium"))
        .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("pasta/boil", "medium"));
  }

  @Test
  void two_pots_have_two_burners_and_a_step_without_a_pot_has_one() {
    assertThat(aPlanFor(supper).with(aRun("pasta", "boil", "18:00", 20).burners("large")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("has 1 burners and needs 2"));
    assertThat(aPlanFor(supper).with(peas("18:00")).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(supper).with(peas("18:00", "small", "medium")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void two_pots_do_not_stand_on_one_burner() {
    assertThat(
        aPlanFor(supper).with(aRun("pasta", "boil", "18:00", 20).burners("large", "large")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(20));
  }

  @Test
  void soup_kept_warm_on_its_burner_keeps_it() {
    var warm = aStay("soup", "simmer", "18:30").burners("19:00", "large");

    assertThat(aPlanFor(supper).with(soup("18:00", "large"))
        .with(warm)
        .with(peas("18:50", "large"))
        .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
    assertThat(aPlanFor(supper).with(soup("18:00", "large"))
        .with(warm)
        .with(peas("18:50", "small"))
        .heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void a_salad_takes_no_burner() {
    assertThat(aPlanFor(supper).with(aRun("salad", "toss", "18:00", 10)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(aRun("salad", "toss", "18:00", 10).burners("small")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void no_plan_has_a_burner_the_kitchen_has_not() {
    assertThat(aPlanFor(supper).with(peas("18:00", "campfire")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("there is no burner campfire here"));
    assertThat(aPlanFor(supper).with(aRun("stew", "boil", "18:00", 10).burners("large")).heldAgainst(rule))
        .isEmpty();
  }
}
