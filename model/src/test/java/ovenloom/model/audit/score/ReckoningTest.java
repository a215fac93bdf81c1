package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Events;
import ovenloom.model.audit.Plans;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Score;

class ReckoningTest {

  private final Events supper = aSupperOf(
      aDish("stew").step(aStep("chop")).step(aStep("plate").serve()),
      aDish("cake").course("coffee").step(aStep("ice"))).course("coffee", at("20:00"), 0);

  @Test
  void early_is_from_every_start_to_its_own_course_and_serving_is_free() {
    var plan = aPlanFor(supper)
        .with(aRun("stew", "chop", "18:30", 10))
        .with(aRun("stew", "plate", "19:03", 7))
        .with(aRun("cake", "ice", "18:00", 10))
        .with(aRun("pie", "bake", "10:00", 10))
        .wash("pot", 1, "17:00", "Host");

    assertThat(score(plan).early()).as("30 and 120").isEqualTo(150);
  }

  @Test
  void what_is_made_the_day_before_is_a_day_earlier() {
    assertThat(score(aPlanFor(supper).with(aRun("stew", "chop", daysBefore(1, "18:30"), 10))).early())
        .isEqualTo(30 + 1440);
  }

  @Test
  void the_points_of_each_wish_are_multiplied_by_its_weight() {
    var plan = aPlanFor(supper.wish(Wish.CALM, 3).wish(Wish.SESSIONS, 0))
        .with(aRun("stew", "chop", "10:00", 40).work("Host"))
        .wash("pot", 1, "11:00", "Host");

    var score = score(plan);

    assertThat(score.points()).containsEntry(Wish.CALM, 2L).containsEntry(Wish.SESSIONS, 1L);
    assertThat(score.wishes()).as("2 x 3 + 1 x 0").isEqualTo(6);
  }

  @Test
  void every_wish_has_a_figure_and_steady_has_none_to_count() {
    assertThat(score(aPlanFor(supper)).points()).containsOnlyKeys(Wish.values())
        .containsEntry(Wish.STEADY, 0L);
    assertThat(score(aPlanFor(supper)).breaks()).isZero();
  }

  private static Score score(Plans plans) {
    var plan = plans.plan();
    return Reckoning.of(plan.event(), plan);
  }
}
