package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Events;
import ovenloom.model.audit.Plans;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Wish;

/** Supper is at 19:00; the host and, where there is one, a guest are there from 8:00 to 22:00. */
class CalmTest {

  private final Events alone = aSupperOf(aDish("stew").step(aStep("stir")).step(aStep("plate").serve()));
  private final Cook host = aCook("Host", between("8:00", "22:00"));
  private final Cook guest = aCook("Guest", between("8:00", "22:00"));

  @Test
  void work_in_the_morning_costs_a_point_for_twenty_minutes() {
    assertThat(calm(stirred(alone, "10:00", 19))).isZero();
    assertThat(calm(stirred(alone, "10:00", 20))).isEqualTo(1);
    assertThat(calm(stirred(alone, "10:00", 59))).isEqualTo(2);
  }

  @Test
  void work_on_the_days_before_costs_no_calm() {
    assertThat(calm(aPlanFor(alone).with(aRun("stew", "stir", daysBefore(1, "10:00"), 100).work("Host"))))
        .isZero();
    assertThat(calm(aPlanFor(alone).with(aRun("stew", "stir", -10, 29).work("Host")))).as("19 after midnight")
        .isZero();
    assertThat(calm(aPlanFor(alone).with(aRun("stew", "stir", -10, 30).work("Host")))).isEqualTo(1);
  }

  @Test
  void alone_in_the_last_two_hours_each_minute_costs_two_and_in_the_last_one_more() {
    assertThat(calm(stirred(alone, "17:30", 10))).as("10 with no hand free").isEqualTo(20);
    assertThat(calm(stirred(alone, "18:30", 10))).as("and 10 in the last hour").isEqualTo(30);
  }

  @Test
  void the_windows_begin_at_five_and_at_six_and_end_at_seven() {
    assertThat(calm(stirred(alone, "16:50", 10))).isZero();
    assertThat(calm(stirred(alone, "16:51", 10))).isEqualTo(2);
    assertThat(calm(stirred(alone, "17:50", 10))).isEqualTo(20);
    assertThat(calm(stirred(alone, "17:51", 10))).isEqualTo(21);
    assertThat(calm(stirred(alone, "18:59", 10))).isEqualTo(3);
    assertThat(calm(stirred(alone, "19:00", 10))).isZero();
  }

  @Test
  void where_someone_has_a_hand_free_only_the_work_of_the_last_hour_costs() {
    assertThat(calm(stirred(two(), "17:30", 10))).isZero();
    assertThat(calm(stirred(two(), "18:30", 10))).isEqualTo(10);
  }

  @Test
  void two_at_work_are_two_in_the_last_hour_and_no_hand_is_free() {
    var both = aPlanFor(two()).with(aRun("stew", "stir", "18:30", 10).work("Host", "Guest"));

    assertThat(calm(both)).as("20 cook-minutes, 10 minutes without a free hand, 20 on the day")
        .isEqualTo(20 + 20 + 1);
  }

  @Test
  void who_has_a_break_or_has_gone_home_has_no_hand_to_give() {
    var resting = new Cook("Guest", List.of(between("8:00", "22:00")), List.of(between("17:30", "17:35")),
        Set.of());
    var gone = aCook("Guest", between("8:00", "17:33"));

    assertThat(calm(stirred(alone.cooks(host, resting), "17:30", 10))).isEqualTo(10);
    assertThat(calm(stirred(alone.cooks(host, gone), "17:30", 10))).isEqualTo(14);
  }

  @Test
  void serving_is_no_work_and_washing_is() {
    assertThat(calm(aPlanFor(alone).with(aRun("stew", "plate", "18:00", 30).work("Host")))).isZero();
    assertThat(calm(aPlanFor(alone).wash("pot", 1, "17:30", "Host"))).isEqualTo(10);
  }

  @Test
  void unloading_what_waited_in_the_oven_is_work() {
    assertThat(
        calm(aPlanFor(alone).with(aStay("stew", "stir", "17:00").oven("17:30", "oven", 80).unload("Host"))))
        .isEqualTo(2);
  }

  @Test
  void a_minute_before_two_courses_counts_once_and_a_course_without_a_dish_has_no_window() {
    var late = aSupperOf(aDish("stew").step(aStep("stir")), aDish("cake").course("coffee").step(aStep("ice")))
        .course("coffee", at("19:30"), 0)
        .course("speeches", at("16:30"), 0);

    assertThat(calm(stirred(late, "18:40", 10))).isEqualTo(30);
    assertThat(calm(stirred(late, "19:00", 10))).as("the hour before coffee").isEqualTo(30);
    assertThat(calm(stirred(late, "16:00", 10))).isZero();
  }

  @Test
  void what_a_cook_does_twice_at_once_is_a_minute_once() {
    assertThat(calm(stirred(alone, "18:30", 10).wash("pot", 1, "18:30", "Host"))).isEqualTo(30);
  }

  private Events two() {
    return alone.cooks(host, guest);
  }

  private static Plans stirred(Events event, String from, int minutes) {
    return aPlanFor(event).with(aRun("stew", "stir", from, minutes).work("Host"));
  }

  private static long calm(Plans plan) {
    return Counting.points(Wish.CALM, plan);
  }
}
