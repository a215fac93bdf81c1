package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CookTimelineTest {

  private static final int EIGHT = 480;
  private static final int TEN = 600;
  private static final int NOON = 720;

  private static final int ROAST = 1;
  private static final int ROLLS = 2;
  private static final int PEELING = 3;
  private static final int DOOR_OF_THE_BIG_OVEN = 0;
  private static final int DOOR_OF_THE_SMALL_OVEN = 1;

  private final CookTimeline ada = new CookTimeline(0, 1440,
      Presence.between(EIGHT, NOON).except(TEN, TEN + 15));

  @Test
  void a_cook_does_not_peel_and_carve_at_once() {
    ada.take(500, 520, PEELING);

    assertThat(ada.isFree(510, 530)).isFalse();
    assertThat(ada.latestStart(510, 20)).isEqualTo(480);
    assertThat(ada.blocker()).isEqualTo(PEELING);
  }

  @Test
  void a_cook_free_at_the_asked_minute_is_had_then() {
    ada.take(500, 520, PEELING);

    assertThat(ada.isFree(530, 540)).isTrue();
    assertThat(ada.latestStart(530, 10)).isEqualTo(530);
    assertThat(ada.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void the_next_thing_begins_the_minute_the_last_one_ends() {
    ada.take(500, 520, PEELING);

    assertThat(ada.isFree(520, 540)).isTrue();
    assertThat(ada.isFree(480, 500)).isTrue();
    assertThat(ada.isFree(519, 540)).isFalse();
    assertThat(ada.isFree(480, 501)).isFalse();
  }

  @Test
  void nobody_works_before_hours_or_through_the_break() {
    assertThat(ada.isFree(EIGHT, TEN)).isTrue();
    assertThat(ada.isFree(EIGHT - 1, TEN)).isFalse();
    assertThat(ada.isFree(TEN - 1, TEN + 1)).isFalse();
    assertThat(ada.latestStart(TEN + 5, 20)).isEqualTo(TEN - 20);
    assertThat(ada.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(ada.latestStart(NOON, 10)).isEqualTo(NOON - 10);
    assertThat(ada.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void work_longer_than_any_free_stretch_finds_no_time() {
    assertThat(ada.latestStart(NOON, 120)).isEqualTo(EIGHT);
    assertThat(ada.latestStart(NOON, 121)).isEqualTo(Timeline.NONE);
    assertThat(ada.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void with_no_time_left_at_all_what_was_met_last_is_named() {
    ada.take(EIGHT, 500, PEELING);

    assertThat(ada.latestStart(499, 10)).isEqualTo(Timeline.NONE);
    assertThat(ada.blocker()).isEqualTo(Timeline.HOURS);
    var newcomer = new CookTimeline(0, 60, Presence.between(0, 60));
    newcomer.take(0, 30, PEELING);
    assertThat(newcomer.latestStart(20, 10)).isEqualTo(Timeline.NONE);
    assertThat(newcomer.blocker()).isEqualTo(PEELING);
    assertThat(newcomer.latestStart(-1, 10)).isEqualTo(Timeline.NONE);
    assertThat(newcomer.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void an_empty_horizon_is_refused() {
    var always = Presence.between(0, 60);

    assertThatThrownBy(() -> new CookTimeline(60, 60, always))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("[60, 60)");
  }

  @Test
  void the_roast_comes_out_and_the_rolls_go_in_through_one_open_door() {
    ada.takeShared(550, 551, ROAST, DOOR_OF_THE_BIG_OVEN);

    assertThat(ada.isFreeFor(550, 551, DOOR_OF_THE_BIG_OVEN)).isTrue();
    assertThat(ada.latestStartFor(550, 1, DOOR_OF_THE_BIG_OVEN)).isEqualTo(550);
  }

  @Test
  void a_door_opened_a_minute_later_is_opened_anew_and_waits_or_joins_the_first_opening() {
    ada.takeShared(550, 552, ROAST, DOOR_OF_THE_BIG_OVEN);

    assertThat(ada.isFreeFor(551, 552, DOOR_OF_THE_BIG_OVEN)).isFalse();
    assertThat(ada.isFreeFor(549, 551, DOOR_OF_THE_BIG_OVEN)).isFalse();
    assertThat(ada.latestStartFor(551, 2, DOOR_OF_THE_BIG_OVEN)).isEqualTo(550);
    assertThat(ada.blocker()).isEqualTo(ROAST);
    assertThat(ada.latestStartFor(549, 2, DOOR_OF_THE_BIG_OVEN)).isEqualTo(548);
    assertThat(ada.latestStartFor(552, 2, DOOR_OF_THE_BIG_OVEN)).isEqualTo(552);
  }

  @Test
  void two_doors_are_not_held_open_by_one_cook() {
    ada.takeShared(550, 551, ROAST, DOOR_OF_THE_BIG_OVEN);

    assertThat(ada.isFreeFor(550, 551, DOOR_OF_THE_SMALL_OVEN)).isFalse();
    assertThat(ada.latestStartFor(550, 1, DOOR_OF_THE_SMALL_OVEN)).isEqualTo(549);
    assertThat(ada.blocker()).isEqualTo(ROAST);
  }

  @Test
  void peeling_does_not_share_with_an_open_door_nor_the_door_with_peeling() {
    ada.takeShared(550, 552, ROAST, DOOR_OF_THE_BIG_OVEN);
    ada.takeShared(550, 551, ROLLS, DOOR_OF_THE_BIG_OVEN);
    ada.take(560, 570, PEELING);

    assertThat(ada.isFree(551, 552)).isFalse();
    assertThat(ada.isFreeFor(565, 566, DOOR_OF_THE_BIG_OVEN)).isFalse();
    assertThat(ada.isFree(552, 560)).isTrue();
  }

  @Test
  void what_was_taken_since_the_mark_is_given_back_and_the_hours_stay() {
    ada.take(500, 520, PEELING);
    int mark = ada.mark();
    ada.take(490, 495, ROAST);
    ada.take(530, 540, ROLLS);

    ada.rollback(mark);

    assertThat(ada.isFree(480, 500)).isTrue();
    assertThat(ada.isFree(510, 511)).isFalse();
    assertThat(ada.isFree(520, 600)).isTrue();
    assertThat(ada.isFree(TEN, TEN + 1)).isFalse();
  }

  @Test
  void after_clearing_only_the_hours_are_left() {
    ada.take(500, 520, PEELING);

    ada.clear();

    assertThat(ada.isFree(EIGHT, TEN)).isTrue();
    assertThat(ada.isFree(EIGHT - 1, EIGHT)).isFalse();
  }
}
