package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;

/** The calendar runs from two days before at 8:00 to the end of service, 19:10. */
class InTheCalendarTest {

  private final KitchenRule rule = new InTheCalendar();
  private final Events ham = aSupperOf(
      aDish("ham").step(aStep("soak").takes(60)).step(aStep("slice").serve()));

  @Test
  void soaking_may_begin_with_the_calendar_and_slicing_end_with_it() {
    var breaks = aPlanFor(ham)
        .with(aRun("ham", "soak", daysBefore(2, "8:00"), 60))
        .with(aRun("ham", "slice", "19:00", 10))
        .heldAgainst(rule);

    assertThat(breaks).isEmpty();
  }

  @Test
  void soaking_from_seven_is_an_hour_before_the_calendar() {
    var breaks = aPlanFor(ham).with(aRun("ham", "soak", daysBefore(2, "7:00"), 60)).heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(60);
      assertThat(each.who()).containsExactly("ham/soak");
    });
  }

  @Test
  void a_minute_after_the_end_of_service_is_one_too_late() {
    var breaks = aPlanFor(ham).with(aRun("ham", "slice", "19:01", 10)).heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void waiting_preheating_and_washing_lie_in_the_calendar_too() {
    var late = aSupperOf(aDish("ham").step(aStep("soak"))).from(Clock.at("12:00"));

    var breaks = aPlanFor(late)
        .with(aStay("ham", "soak", "11:57").counter("12:30"))
        .with(aLog("oven").warming(180, "11:59", "12:15"))
        .wash("pot", 1, "19:07", "Host")
        .heldAgainst(rule);

    assertThat(breaks).extracting(Break::off).containsExactly(3L, 1L, 2L);
    assertThat(breaks).extracting(each -> each.who().getFirst())
        .containsExactly("waiting of ham/soak", "oven", "washing of pot");
  }
}
