package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.solver.timeline.ABake.aBake;
import static ovenloom.solver.timeline.AnOvenHeat.HOT;
import static ovenloom.solver.timeline.AnOvenHeat.HOT_WITH_THE_FAN;
import static ovenloom.solver.timeline.AnOvenHeat.MILD;

import org.junit.jupiter.api.Test;

/**
 * An oven that warms by 10 K a minute and is half as far above a room of 20 C after 14 minutes: 20 minutes to 220 C, 10 to
 * 120 C, 10 from 120 C to 220 C, 14 back.
 */
class DialTimelineTest {

  private static final int BREAD = 7;
  private static final int CUSTARD = 8;
  private static final int TART = 9;

  private static final int TEN = 600;

  private static final OvenHeat HEAT = new AnOvenHeat();
  private static final Presence ALWAYS = Presence.between(0, 1440);

  private final DialTimeline oven = new DialTimeline(0, 1440, HEAT, ALWAYS, ALWAYS);

  private void breadAtTen() {
    oven.take(TEN, aBake(30, HOT).bake(), BREAD);
  }

  @Test
  void bread_at_220_and_custard_at_120_are_not_in_the_oven_together() {
    breadAtTen();

    assertThat(oven.latestStart(TEN + 20, aBake(40, MILD).bake())).isEqualTo(TEN - 10 - 40);
    assertThat(oven.blocker()).isEqualTo(BREAD);
  }

  @Test
  void custard_goes_in_once_the_oven_has_cooled_from_the_bread() {
    breadAtTen();

    assertThat(oven.latestStart(TEN + 30 + 14, aBake(40, MILD).bake())).isEqualTo(TEN + 30 + 14);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void a_minute_sooner_it_has_not_and_custard_is_baked_before_the_bread() {
    breadAtTen();

    assertThat(oven.latestStart(TEN + 30 + 13, aBake(40, MILD).bake())).isEqualTo(TEN - 10 - 40);
    assertThat(oven.blocker()).isEqualTo(BREAD);
  }

  @Test
  void custard_comes_out_in_time_to_warm_for_the_bread() {
    breadAtTen();

    assertThat(oven.latestStart(TEN - 10 - 40, aBake(40, MILD).bake())).isEqualTo(TEN - 50);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(oven.latestStart(TEN - 10 - 39, aBake(40, MILD).bake())).isEqualTo(TEN - 50);
    assertThat(oven.blocker()).isEqualTo(BREAD);
  }

  @Test
  void two_tarts_at_one_mark_share_the_oven_and_the_next_goes_in_as_the_last_comes_out() {
    breadAtTen();

    assertThat(oven.latestStart(TEN + 10, aBake(30, HOT).bake())).isEqualTo(TEN + 10);
    assertThat(oven.latestStart(TEN + 30, aBake(30, HOT).bake())).isEqualTo(TEN + 30);
    assertThat(oven.latestStart(TEN - 30, aBake(30, HOT).bake())).isEqualTo(TEN - 30);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void with_the_fan_it_is_another_setting_that_takes_no_minutes_to_reach() {
    breadAtTen();

    assertThat(oven.latestStart(TEN + 29, aBake(30, HOT_WITH_THE_FAN).bake())).isEqualTo(TEN - 30);
    assertThat(oven.blocker()).isEqualTo(BREAD);
    assertThat(oven.latestStart(TEN + 30, aBake(30, HOT_WITH_THE_FAN).bake())).isEqualTo(TEN + 30);
  }

  @Test
  void an_empty_horizon_is_refused() {
    assertThatThrownBy(() -> new DialTimeline(60, 60, HEAT, ALWAYS, ALWAYS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("[60, 60)");
  }

  @Test
  void two_legs_of_lamb_are_turned_down_together() {
    Bake lamb = aBake(20, HOT).then(40, MILD).bake();
    oven.take(TEN, lamb, BREAD);

    assertThat(oven.latestStart(TEN, lamb)).isEqualTo(TEN);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void a_leg_of_lamb_a_minute_later_is_not_turned_down_with_the_first() {
    Bake lamb = aBake(20, HOT).then(40, MILD).bake();
    oven.take(TEN, lamb, BREAD);

    assertThat(oven.latestStart(TEN + 1, lamb)).isEqualTo(TEN);
    assertThat(oven.blocker()).isEqualTo(BREAD);
    assertThat(oven.latestStart(TEN - 1, lamb)).isEqualTo(TEN - 10 - 60);
    assertThat(oven.blocker()).isEqualTo(BREAD);
  }

  @Test
  void bread_comes_out_the_minute_the_lamb_is_turned_down_and_no_later() {
    oven.take(TEN, aBake(20, HOT).then(40, MILD).bake(), TART);

    assertThat(oven.latestStart(TEN - 10, aBake(30, HOT).bake())).isEqualTo(TEN - 10);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(oven.latestStart(TEN - 9, aBake(30, HOT).bake())).isEqualTo(TEN - 10);
    assertThat(oven.blocker()).isEqualTo(TART);
  }

  @Test
  void custard_joins_the_lamb_once_the_oven_has_cooled() {
    oven.take(TEN, aBake(20, HOT).then(40, MILD).bake(), TART);

    assertThat(oven.latestStart(TEN + 34, aBake(30, MILD).bake())).isEqualTo(TEN + 34);
    assertThat(oven.latestStart(TEN + 33, aBake(30, MILD).bake())).isEqualTo(TEN - 10 - 30);
    assertThat(oven.blocker()).isEqualTo(TART);
  }

  @Test
  void lamb_that_comes_later_is_turned_down_when_the_bread_is_out() {
    breadAtTen();
    Bake lamb = aBake(20, HOT).then(40, MILD).bake();

    assertThat(oven.latestStart(TEN + 10, lamb)).isEqualTo(TEN + 10);
    assertThat(oven.latestStart(TEN + 9, lamb)).as("no custard where there is bread")
        .isEqualTo(TEN - 10 - 60);
    assertThat(oven.blocker()).isEqualTo(BREAD);
  }

  @Test
  void fish_and_pastry_do_not_meet_in_the_oven() {
    Bake fish = aBake(30, HOT).tagged(1).avoiding(2).bake();
    Bake pastry = aBake(20, HOT).tagged(2).bake();
    oven.take(TEN, pastry, TART);

    assertThat(oven.latestStart(TEN + 19, fish)).isEqualTo(TEN - 30);
    assertThat(oven.blocker()).isEqualTo(TART);
    assertThat(oven.latestStart(TEN + 20, fish)).isEqualTo(TEN + 20);
    assertThat(oven.latestStart(TEN + 10, aBake(30, HOT).tagged(4).avoiding(8).bake())).isEqualTo(TEN + 10);
  }

  @Test
  void an_oven_knows_its_marks_in_use() {
    oven.take(TEN, aBake(20, HOT).then(40, HOT_WITH_THE_FAN).bake(), TART);

    assertThat(oven.uses(HOT)).isTrue();
    assertThat(oven.uses(HOT_WITH_THE_FAN)).isTrue();
    assertThat(oven.uses(MILD)).isFalse();
  }

  @Test
  void what_was_put_in_since_the_mark_is_out_again() {
    breadAtTen();
    int mark = oven.mark();
    oven.take(TEN + 60, aBake(40, MILD).bake(), CUSTARD);

    oven.rollback(mark);

    assertThat(oven.uses(MILD)).isFalse();
    assertThat(oven.latestStart(TEN + 70, aBake(30, HOT).bake())).isEqualTo(TEN + 70);
    assertThat(oven.latestStart(TEN + 10, aBake(40, MILD).bake())).isEqualTo(TEN - 50);
  }

  @Test
  void a_cleared_oven_is_empty() {
    breadAtTen();

    oven.clear();

    assertThat(oven.uses(HOT)).isFalse();
    assertThat(oven.latestStart(TEN + 10, aBake(40, MILD).bake())).isEqualTo(TEN + 10);
  }

  @Test
  void an_oven_takes_as_many_bakes_as_come() {
    for (int i = 0; i < 40; i++) {
      oven.take(TEN + 20 * i, aBake(20, HOT).bake(), i);
    }

    assertThat(oven.latestStart(TEN + 20 * 40, aBake(10, MILD).bake())).isEqualTo(TEN - 20);
    assertThat(oven.blocker()).as("the first").isZero();
  }
}
