package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Waits;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Wish;

/** A hot dish is best for 15 minutes off the cold shelf. */
class FreshnessTest {

  @Test
  void a_quarter_of_an_hour_costs_nothing_and_ten_minutes_more_a_point() {
    assertThat(freshness(stew(), wait("18:45").counter("19:00"))).isZero();
    assertThat(freshness(stew(), wait("18:36").counter("19:00"))).as("nine beyond").isZero();
    assertThat(freshness(stew(), wait("18:35").counter("19:00"))).as("ten beyond").isEqualTo(1);
    assertThat(freshness(stew(), wait("18:25").counter("19:00"))).isEqualTo(2);
  }

  @Test
  void hot_places_ovens_and_burners_are_off_the_cold_shelf() {
    assertThat(freshness(stew(), wait("18:25").shelf("19:00", "cabinet", "upper"))).isEqualTo(2);
    assertThat(freshness(stew(), wait("18:25").oven("19:00", "oven", 80))).isEqualTo(2);
    assertThat(freshness(stew(), wait("18:25").burners("19:00", "small"))).isEqualTo(2);
  }

  @Test
  void six_hours_in_the_fridge_are_a_point_and_five_hours_59_are_none() {
    assertThat(freshness(stew(), wait("13:00").shelf("19:00", "fridge", "top"))).isEqualTo(1);
    assertThat(freshness(stew(), wait("13:01").shelf("19:00", "fridge", "top"))).isZero();
    assertThat(
        freshness(stew(), aStay("stew", "cook", daysBefore(1, "19:00")).shelf("19:00", "fridge", "top")))
        .isEqualTo(4);
  }

  @Test
  void what_is_left_of_both_is_added_before_it_is_rounded() {
    assertThat(freshness(stew(), wait("15:40").counter("16:00").shelf("19:00", "fridge", "top")))
        .as("5 of 10 minutes beyond and 3 of 6 hours")
        .isEqualTo(1);
    assertThat(freshness(stew(), wait("15:41").counter("16:00").shelf("19:00", "fridge", "top"))).isZero();
  }

  @Test
  void all_waits_of_a_batch_count_together() {
    var stew = aDish("stew").step(aStep("chop")).step(aStep("cook"));

    assertThat(
        freshness(stew, aStay("stew", "chop", "17:45").counter("18:00"), wait("18:50").counter("19:00")))
        .as("15 and 10 less 15")
        .isEqualTo(1);
  }

  @Test
  void each_batch_has_its_own_free_minutes() {
    assertThat(freshness(stew().batches(2), wait("18:45").batch(1).counter("19:00"),
        wait("18:45").batch(2).counter("19:00"))).isZero();
    assertThat(freshness(stew().batches(2), wait("18:30").batch(1).counter("19:00"),
        wait("18:39").batch(2).counter("19:00"))).as("15 beyond are 1, 6 beyond none").isEqualTo(1);
  }

  @Test
  void what_all_batches_share_counts_with_the_first() {
    var stew = aDish("stew").batches(2).step(aStep("mix").once()).step(aStep("cook"));

    assertThat(freshness(stew, aStay("stew", "mix", "17:45").batches(1, 2).counter("18:00"),
        wait("18:50").batch(1).counter("19:00"),
        wait("18:50").batch(2).counter("19:00"))).as("25 of the first, 10 of the second").isEqualTo(1);
  }

  @Test
  void a_cold_dish_is_best_for_four_hours_and_another_for_what_it_says() {
    assertThat(freshness(stew().arrives(Arrives.COLD), wait("14:50").counter("19:00"))).isEqualTo(1);
    assertThat(freshness(stew().arrives(Arrives.COLD), wait("14:51").counter("19:00"))).isZero();
    assertThat(freshness(stew().bestFor(60), wait("17:50").counter("19:00"))).isEqualTo(1);
  }

  private static Dishes stew() {
    return aDish("stew").step(aStep("cook"));
  }

  private static Waits wait(String from) {
    return aStay("stew", "cook", from);
  }

  private static long freshness(Dishes dish, Waits... waits) {
    Plans plan = aPlanFor(aSupperOf(dish));
    for (Waits wait : waits) {
      plan.with(wait);
    }
    return Counting.points(Wish.FRESHNESS, plan);
  }
}
