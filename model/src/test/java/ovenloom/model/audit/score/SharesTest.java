package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Events;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;

/** Supper is at 19:00, by one host. */
class SharesTest {

  private final Events supper = aSupperOf(aDish("soup").step(aStep("stir")),
      aDish("salad").step(aStep("toss")));
  private final Plan plan = aPlanFor(supper).with(aRun("soup", "stir", "18:30", 10).work("Host"))
      .with(aRun("salad", "toss", "17:30", 10).work("Host"))
      .plan();
  private final Shares shares = Shares.of(new Cards(Work.of(supper.event())), plan);

  @Test
  void work_of_the_last_hour_is_of_its_step_and_a_hand_that_is_not_free_of_nobody() {
    assertThat(shares.of(Wish.CALM)).containsEntry("soup/stir", 10L)
        .containsEntry("salad/toss", 0L)
        .containsEntry("no hand free", 40L)
        .containsEntry("work on the day", 1L);
  }

  @Test
  void what_begins_early_is_counted_by_dish() {
    assertThat(shares.early()).containsEntry("soup", 30L).containsEntry("salad", 90L);
  }
}
