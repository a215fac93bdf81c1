package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Runs;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Wash;

class SessionsTest {

  @Test
  void work_the_day_before_costs_ten_and_on_the_day_nothing() {
    assertThat(sessions(work(daysBefore(1, "18:00"), 30))).isEqualTo(10);
    assertThat(sessions(work(daysBefore(0, "10:00"), 30))).isZero();
  }

  @Test
  void a_pause_of_an_hour_makes_two_of_it_and_one_of_59_minutes_does_not() {
    assertThat(sessions(work(daysBefore(1, "18:00"), 30), work(daysBefore(1, "19:30"), 30))).isEqualTo(20);
    assertThat(sessions(work(daysBefore(1, "18:00"), 30), work(daysBefore(1, "19:29"), 30))).isEqualTo(10);
  }

  @Test
  void four_minutes_of_work_are_free_and_five_are_not() {
    assertThat(sessions(work(daysBefore(1, "18:00"), 4))).isZero();
    assertThat(sessions(work(daysBefore(1, "18:00"), 5))).isEqualTo(10);
    assertThat(sessions(work(daysBefore(1, "18:00"), 2), work(daysBefore(1, "18:30"), 3))).isEqualTo(10);
  }

  @Test
  void two_who_work_at_the_same_time_are_in_one_session() {
    var both = work(daysBefore(1, "18:00"), 4).work("Guest");

    assertThat(sessions(both)).as("four minutes of the clock, though eight of work").isZero();
    assertThat(sessions(work(daysBefore(1, "18:00"), 30).work("Guest"))).isEqualTo(10);
  }

  @Test
  void what_goes_on_past_midnight_counts_until_then() {
    assertThat(sessions(work(-4, 30))).isZero();
    assertThat(sessions(work(-5, 30))).isEqualTo(10);
  }

  @Test
  void each_wash_costs_one_on_any_day() {
    var plan = plan(work(daysBefore(1, "18:00"), 30)).wash("pot", 1, "15:00", "Host")
        .wash("bowl", 3, "16:00", "Host");

    assertThat(Counting.points(Wish.SESSIONS, plan)).isEqualTo(12);
  }

  @Test
  void washing_up_the_day_before_is_work_too() {
    int eve = daysBefore(1, "18:00");

    assertThat(
        Counting.points(Wish.SESSIONS, plan().with(new Wash("pot", 1, new Stretch(eve, eve + 5), "Host"))))
        .isEqualTo(11);
  }

  private static Runs work(int from, int minutes) {
    return aRun("stew", "cook", from, minutes).work("Host");
  }

  private static long sessions(Runs... runs) {
    return Counting.points(Wish.SESSIONS, plan(runs));
  }

  private static Plans plan(Runs... runs) {
    Plans plan = aPlanFor(aSupperOf(aDish("stew").step(aStep("cook"))));
    for (Runs run : runs) {
      plan.with(run);
    }
    return plan;
  }
}
