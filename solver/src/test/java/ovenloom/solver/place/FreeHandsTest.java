package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.solver.place.ACook.aCook;
import static ovenloom.solver.place.ACook.withBreak;
import static ovenloom.solver.place.ARun.aRun;
import static ovenloom.solver.place.ARun.load;
import static ovenloom.solver.place.ARun.unload;
import static ovenloom.solver.place.ARun.work;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Cook;
import ovenloom.solver.timeline.Timeline;

/** Cooks taken by hand: who is free when, and who is in the way. */
class FreeHandsTest {

  private static final int PEELING = 0;
  private static final int CARVING = 1;
  private static final int ROLLS = 2;

  private static final int INES = 0;
  private static final int TOM = 1;

  private static final int OVEN = 0;
  private static final int OTHER_OVEN = 1;

  private final Crew ines = crewOf(withBreak(aCook("Ines", 0, 500, "carving"), 300, 330));
  private final Crew both = crewOf(aCook("Ines", 0, 500, "carving"), aCook("Tom", 100, 500));

  private static Crew crewOf(Cook... cooks) {
    return new Crew(List.of(cooks), -60, 600);
  }

  private static void take(Crew crew, int start, Run run, int minutes) {
    run.hands().forEach(need -> assertThat(crew.take(start, run, need, minutes, OVEN)).isNotNull());
  }

  private static List<Integer> cooks(Crew crew, int start, HandsNeed need, int door) {
    return Objects.requireNonNull(crew.take(start, aRun(ROLLS, need), need, 30, door)).cooks();
  }

  @Test
  void one_cook_peels_and_then_carves() {
    take(ines, 100, aRun(PEELING, work(0, 30)), 30);

    assertThat(ines.latestStart(130, aRun(CARVING, work(0, 15)).hands(), 30, OVEN)).isEqualTo(130);
    assertThat(ines.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(ines.latestStart(129, aRun(CARVING, work(0, 15)).hands(), 30, OVEN)).isEqualTo(85);
    assertThat(ines.blocker()).isEqualTo(PEELING);
  }

  @Test
  void hands_at_the_end_are_counted_from_the_end() {
    take(ines, 100, aRun(PEELING, work(0, 30)), 30);

    assertThat(ines.latestStart(90, aRun(CARVING, work(-5, 5)).hands(), 15, OVEN)).isEqualTo(85);
    assertThat(ines.latestStart(120, aRun(CARVING, work(-5, 5)).hands(), 15, OVEN)).isEqualTo(120);
    assertThat(ines.latestStart(119, aRun(CARVING, work(-5, 5)).hands(), 15, OVEN)).isEqualTo(85);
  }

  @Test
  void of_two_stretches_the_one_that_finds_nobody_names_who_is_in_the_way() {
    take(ines, 100, aRun(PEELING, work(0, 10)), 30);

    assertThat(ines.latestStart(105, aRun(CARVING, work(0, 5), work(25, 5)).hands(), 30, OVEN)).isEqualTo(95);
    assertThat(ines.blocker()).isEqualTo(PEELING);
  }

  @Test
  void nobody_works_through_the_break_but_is_there() {
    assertThat(ines.latestStart(301, aRun(CARVING, work(0, 15)).hands(), 15, OVEN)).isEqualTo(285);
    assertThat(ines.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(ines.there().covers(280, 340)).isTrue();
    assertThat(ines.there().openAt(500)).isTrue();
    assertThat(ines.there().openAt(501)).isFalse();
  }

  @Test
  void who_is_on_a_break_has_the_other_carve_if_the_other_can() {
    Crew crew = crewOf(withBreak(aCook("Ines", 0, 500, "carving"), 300, 330), aCook("Tom", 0, 500));

    assertThat(crew.latestStart(310, aRun(ROLLS, work(0, 15)).hands(), 15, OVEN)).isEqualTo(310);
    assertThat(crew.latestStart(310, aRun(ROLLS, work(0, 15, 0, 1, "carving")).hands(), 15, OVEN))
        .isEqualTo(285);
    assertThat(crew.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void a_skill_nobody_has_and_more_hands_than_there_are_are_not_found() {
    assertThat(both.latestStart(310, aRun(ROLLS, work(0, 15, 0, 1, "sugar work")).hands(), 15, OVEN))
        .isEqualTo(Timeline.NONE);
    assertThat(both.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(both.latestStart(310, aRun(ROLLS, work(0, 15, 0, 3, null)).hands(), 15, OVEN))
        .isEqualTo(Timeline.NONE);
    assertThat(both.take(310, aRun(ROLLS), work(0, 15, 0, 3, null), 15, OVEN)).isNull();
    assertThat(both.take(310, aRun(ROLLS), work(0, 15, 0, 1, "sugar work"), 15, OVEN)).isNull();
  }

  @Test
  void two_are_needed_to_lift_the_pan_and_tom_comes_at_a_hundred() {
    HandsNeed lift = work(0, 10, 0, 2, "carving");

    assertThat(both.latestStart(100, aRun(ROLLS, lift).hands(), 10, OVEN)).isEqualTo(100);
    assertThat(both.latestStart(99, aRun(ROLLS, lift).hands(), 10, OVEN)).isEqualTo(Timeline.NONE);
    assertThat(cooks(both, 100, lift, OVEN)).containsExactly(INES, TOM);
    assertThat(both.take(105, aRun(ROLLS), lift, 10, OVEN)).isNull();
  }

  @Test
  void whoever_has_done_least_takes_what_comes() {
    assertThat(cooks(both, 100, work(0, 30), OVEN)).containsExactly(INES);
    assertThat(cooks(both, 200, work(0, 10), OVEN)).containsExactly(TOM);
    assertThat(cooks(both, 300, work(0, 10), OVEN)).containsExactly(TOM);
    assertThat(cooks(both, 400, work(0, 10, 0, 1, "carving"), OVEN)).containsExactly(INES);
  }

  @Test
  void work_that_is_given_back_tires_nobody() {
    int[] before = both.marks();
    cooks(both, 100, work(0, 30), OVEN);

    both.rollback(before);

    assertThat(cooks(both, 100, work(0, 10), OVEN)).containsExactly(INES);
    both.clear();
    assertThat(cooks(both, 100, work(0, 10), OVEN)).containsExactly(INES);
  }

  @Test
  void what_was_done_before_stays_when_the_rest_is_given_back() {
    take(both, 100, aRun(PEELING, work(0, 30, 0, 2, null)), 30);
    int[] before = both.marks();
    take(both, 200, aRun(CARVING, work(0, 30, 0, 2, null)), 30);

    both.rollback(before);

    assertThat(both.latestStart(210, aRun(ROLLS, work(0, 10, 0, 2, null)).hands(), 10, OVEN)).isEqualTo(210);
    assertThat(both.latestStart(130, aRun(ROLLS, work(0, 10, 0, 2, null)).hands(), 10, OVEN)).isEqualTo(130);
    assertThat(both.latestStart(129, aRun(ROLLS, work(0, 10, 0, 2, null)).hands(), 10, OVEN))
        .isEqualTo(Timeline.NONE);
  }

  @Test
  void whoever_has_the_door_open_sees_to_it_even_if_another_did_less() {
    cooks(both, 100, work(0, 30), OVEN);
    assertThat(cooks(both, 160, load(1), OVEN)).containsExactly(TOM);
    cooks(both, 200, work(0, 30, 0, 1, null), OVEN);

    assertThat(cooks(both, 160, load(1), OVEN)).containsExactly(TOM);
  }

  @Test
  void the_roast_comes_out_and_the_rolls_go_in_by_the_same_hands() {
    take(both, 100, aRun(PEELING, unload(2)), 62);

    assertThat(cooks(both, 160, load(1), OVEN)).as("whoever has the door open").containsExactly(INES);
    assertThat(cooks(both, 160, load(1), OTHER_OVEN)).as("another door").containsExactly(TOM);
    assertThat(both.latestStart(160, aRun(ROLLS, load(1)).hands(), 30, OTHER_OVEN + 1)).as("a third")
        .isEqualTo(159);
  }

  @Test
  void a_cook_goes_back_to_the_minute_at_which_the_door_is_open_anyway() {
    take(ines, 160, aRun(ROLLS, load(1)), 30);
    take(ines, 161, aRun(PEELING, work(0, 30)), 30);

    assertThat(ines.latestStart(170, aRun(CARVING, load(1)).hands(), 30, OVEN)).isEqualTo(160);
    assertThat(ines.latestStart(170, aRun(CARVING, load(1)).hands(), 30, OTHER_OVEN)).isEqualTo(159);
  }

  @Test
  void basting_may_slip_three_minutes_either_way() {
    HandsNeed basting = work(10, 2, 3, 1, null);
    take(ines, 112, aRun(PEELING, work(0, 10)), 30);

    assertThat(ines.latestStart(103, aRun(ROLLS, basting).hands(), 30, OVEN)).as("three minutes sooner")
        .isEqualTo(103);
    assertThat(ines.latestStart(104, aRun(ROLLS, basting).hands(), 30, OVEN)).isEqualTo(103);
    assertThat(ines.blocker()).isEqualTo(PEELING);
    assertThat(ines.latestStart(109, aRun(ROLLS, basting).hands(), 30, OVEN)).as("three minutes later")
        .isEqualTo(109);
    assertThat(ines.latestStart(108, aRun(ROLLS, basting).hands(), 30, OVEN)).isEqualTo(103);
    assertThat(Objects.requireNonNull(ines.take(103, aRun(ROLLS), basting, 30, OVEN)).from()).isEqualTo(110);
  }

  @Test
  void what_slips_stays_inside_its_run() {
    take(ines, 100, aRun(PEELING, work(0, 12)), 30);

    assertThat(ines.latestStart(102, aRun(ROLLS, work(10, 2, 3, 1, null)).hands(), 12, OVEN)).isEqualTo(102);
    assertThat(ines.latestStart(101, aRun(ROLLS, work(10, 2, 3, 1, null)).hands(), 12, OVEN))
        .as("not seven minutes later")
        .isEqualTo(91);
    assertThat(ines.take(101, aRun(ROLLS), work(10, 2, 3, 1, null), 12, OVEN)).isNull();
  }

  @Test
  void somebody_washes_up_who_is_free_to() {
    take(both, 100, aRun(PEELING, work(0, 30, 0, 2, null)), 30);

    assertThat(both.latestWash(129, 5)).isEqualTo(95);
    assertThat(both.takeForWash(95, 5)).isEqualTo(INES);
    assertThatThrownBy(() -> both.takeForWash(95, 5)).isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("95");
  }
}
