package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.plan.HandsOn.Act;

/** That free work comes first, and what is cleaned in between, is common practice; the edges are the sentence's. */
class AllergensApartTest {

  private final KitchenRule rule = new AllergensApart();

  private final Events supper = aSupperOf(
      aDish("torte").tags("contains nuts", "contains milk").step(aStep("mix").hands()),
      aDish("sponge").tags("free of nuts").step(aStep("mix").hands()),
      aDish("ice").tags("free of nuts", "free of milk").step(aStep("mix").hands()),
      aDish("bread").step(aStep("mix").hands()),
      aChore("scrub").tags("clean down").step(aStep("boards").hands()).step(aStep("knives").hands()),
      aChore("table").step(aStep("lay").hands()))
      .from(daysBefore(2, "8:00"));

  private static Runs work(String dish, String step, String from, int minutes) {
    return aRun(dish, step, from, minutes).work("Host");
  }

  private List<Break> held(Runs... runs) {
    Plans plan = aPlanFor(supper);
    for (Runs run : runs) {
      plan.with(run);
    }
    return plan.heldAgainst(rule);
  }

  @Test
  void a_sponge_free_of_nuts_is_mixed_before_the_nut_torte() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("sponge", "mix", "15:30", 10))).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(40);
          assertThat(each.when()).isEqualTo(between("15:30", "15:40"));
          assertThat(each.who()).containsExactly("sponge/mix", "torte/mix");
          assertThat(each.what()).isEqualTo(
              "sponge/mix must be free of nuts, and comes after torte/mix with no clean down between");
        });
    assertThat(held(work("sponge", "mix", "14:00", 10), work("torte", "mix", "15:00", 20))).isEmpty();
  }

  @Test
  void it_may_be_done_the_minute_the_torte_is_begun_and_not_one_later() {
    assertThat(held(work("sponge", "mix", "14:50", 10), work("torte", "mix", "15:00", 20))).isEmpty();
    assertThat(held(work("sponge", "mix", "14:51", 10), work("torte", "mix", "15:00", 20)))
        .extracting(Break::off)
        .containsExactly(1L);
    assertThat(held(work("sponge", "mix", "15:00", 20), work("torte", "mix", "15:00", 20))).hasSize(1);
  }

  @Test
  void what_nothing_is_said_of_may_come_when_it_likes() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("bread", "mix", "15:30", 10))).isEmpty();
    assertThat(held(work("bread", "mix", "15:00", 20), work("sponge", "mix", "15:30", 10))).isEmpty();
  }

  @Test
  void on_another_day_the_kitchen_is_clean_unless_work_went_on_into_it() {
    assertThat(held(aRun("torte", "mix", daysBefore(1, "23:00"), 60).work("Host"),
        aRun("sponge", "mix", at("0:00"), 10).work("Host"))).isEmpty();
    assertThat(held(aRun("torte", "mix", daysBefore(1, "23:00"), 61).work("Host"),
        aRun("sponge", "mix", at("0:10"), 10).work("Host"))).hasSize(1);
  }

  @Test
  void all_of_a_clean_down_between_makes_it_good() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("scrub", "boards", "15:20", 10),
        work("scrub", "knives", "15:30", 10), work("sponge", "mix", "15:40", 10))).isEmpty();
  }

  @Test
  void a_clean_down_that_is_begun_too_soon_or_not_over_makes_nothing_good() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("scrub", "boards", "15:19", 10),
        work("scrub", "knives", "15:30", 10), work("sponge", "mix", "15:40", 10))).hasSize(1);
    assertThat(held(work("torte", "mix", "15:00", 20), work("scrub", "boards", "15:20", 10),
        work("scrub", "knives", "15:31", 10), work("sponge", "mix", "15:40", 10))).hasSize(1);
    assertThat(held(work("torte", "mix", "15:00", 20), work("table", "lay", "15:20", 10),
        work("sponge", "mix", "15:40", 10))).hasSize(1);
  }

  @Test
  void after_a_second_torte_the_clean_down_before_it_is_spent() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("scrub", "boards", "15:20", 10),
        work("torte", "mix", "15:40", 5), work("sponge", "mix", "15:45", 10))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(15));
  }

  @Test
  void two_allergens_are_told_at_once() {
    assertThat(held(work("torte", "mix", "15:00", 20), work("ice", "mix", "15:30", 10))).singleElement()
        .satisfies(each -> assertThat(each.what()).contains("free of milk and nuts"));
  }

  @Test
  void who_only_sees_to_an_oven_door_touches_nothing() {
    var load = aRun("sponge", "mix", "15:30", 30).load("Host").unload("Host");
    var late = aRun("sponge", "mix", "15:30", 30).hands(Act.WORK, at("15:40"), at("15:42"), "Host");

    assertThat(held(work("torte", "mix", "15:00", 20), load)).isEmpty();
    assertThat(held(work("torte", "mix", "15:00", 20), late)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(42));
    assertThat(held(work("torte", "mix", "15:40", 20), late.load("Host"))).hasSize(1);
  }

  @Test
  void what_goes_into_a_dish_is_handled_with_it() {
    Events filled = aSupperOf(
        aDish("praline").tags("contains nuts").step(aStep("grind").hands()),
        aDish("cream").step(aStep("whip").hands().uses("praline", "grind")),
        aDish("dough").step(aStep("knead").hands()),
        aDish("tart").tags("free of nuts").step(aStep("line").uses("dough", "knead")));

    assertThat(aPlanFor(filled)
        .with(work("cream", "whip", "15:00", 10))
        .with(work("dough", "knead", "15:10", 10))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("dough/knead", "cream/whip"));
  }
}
