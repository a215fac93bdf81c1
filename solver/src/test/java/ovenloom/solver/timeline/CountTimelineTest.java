package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CountTimelineTest {

  private static final int SOUP = 1;
  private static final int SAUCE = 2;
  private static final int DOUGH = 3;

  private final CountTimeline mixers = new CountTimeline(-120, 600, 2);

  @Test
  void two_mixers_do_not_serve_three_mixtures_at_once() {
    mixers.take(100, 130, 1, SOUP);
    mixers.take(110, 140, 1, SAUCE);

    assertThat(mixers.fits(120, 121, 1)).isFalse();
    assertThat(mixers.freeOver(90, 150)).isZero();
  }

  @Test
  void what_is_asked_of_two_mixers_by_three_is_short_for_the_minutes_they_share() {
    mixers.take(100, 130, 1, SOUP);
    mixers.take(110, 140, 1, SAUCE);
    assertThat(mixers.minutesShort()).isZero();

    mixers.take(129, 150, 1, DOUGH);
    assertThat(mixers.minutesShort()).isEqualTo(1);

    mixers.take(-120, -110, 3, DOUGH);
    mixers.take(590, 600, 3, DOUGH);
    assertThat(mixers.minutesShort()).isEqualTo(21);
  }

  @Test
  void the_second_mixer_is_free_while_the_first_one_turns() {
    mixers.take(100, 130, 1, SOUP);

    assertThat(mixers.fits(90, 150, 1)).isTrue();
    assertThat(mixers.fits(90, 150, 2)).isFalse();
    assertThat(mixers.latestStart(100, 30, 1)).isEqualTo(100);
    assertThat(mixers.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void both_mixers_may_be_had_up_to_the_minute_one_is_wanted_and_from_the_minute_it_is_back() {
    mixers.take(100, 130, 1, SOUP);

    assertThat(mixers.fits(70, 100, 2)).isTrue();
    assertThat(mixers.fits(130, 160, 2)).isTrue();
    assertThat(mixers.fits(70, 101, 2)).isFalse();
    assertThat(mixers.fits(129, 160, 2)).isFalse();
  }

  @Test
  void what_does_not_fit_is_moved_ahead_of_what_is_in_the_way() {
    mixers.take(100, 130, 1, SOUP);
    mixers.take(40, 60, 2, DOUGH);

    int start = mixers.latestStart(110, 30, 2);

    assertThat(start).isEqualTo(70);
    assertThat(mixers.blocker()).isEqualTo(SOUP);
  }

  @Test
  void a_gap_too_short_is_passed_over_and_the_last_in_the_way_is_named() {
    mixers.take(100, 130, 1, SOUP);
    mixers.take(40, 75, 2, DOUGH);

    int start = mixers.latestStart(110, 30, 2);

    assertThat(start).isEqualTo(10);
    assertThat(mixers.blocker()).isEqualTo(DOUGH);
  }

  @Test
  void of_two_in_the_way_the_one_that_begins_there_is_named_then_the_larger_then_the_newer() {
    mixers.take(90, 130, 1, SOUP);
    mixers.take(100, 130, 1, SAUCE);

    assertThat(mixers.latestStart(110, 10, 1)).isEqualTo(90);
    assertThat(mixers.blocker()).isEqualTo(SAUCE);

    mixers.clear();
    mixers.take(100, 130, 2, SOUP);
    mixers.take(100, 130, 1, SAUCE);
    mixers.latestStart(110, 10, 2);
    assertThat(mixers.blocker()).isEqualTo(SOUP);

    mixers.clear();
    mixers.take(100, 130, 1, SOUP);
    mixers.take(100, 130, 1, SAUCE);
    mixers.latestStart(110, 10, 2);
    assertThat(mixers.blocker()).isEqualTo(SAUCE);
  }

  @Test
  void looking_forward_the_one_that_gives_it_back_last_is_named() {
    mixers.take(100, 130, 1, SOUP);
    mixers.take(100, 140, 1, SAUCE);

    assertThat(mixers.earliestStart(110, 10, 2)).isEqualTo(140);
    assertThat(mixers.blocker()).isEqualTo(SAUCE);
    assertThat(mixers.earliestStart(110, 10, 1)).isEqualTo(130);
    assertThat(mixers.blocker()).isEqualTo(SOUP);
  }

  @Test
  void three_mixers_are_never_to_be_had_from_two_and_nobody_is_to_blame_but_the_kitchen() {
    mixers.take(100, 130, 1, SOUP);

    assertThat(mixers.latestStart(110, 10, 3)).isEqualTo(Timeline.NONE);
    assertThat(mixers.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(mixers.earliestStart(110, 10, 3)).isEqualTo(Timeline.NONE);
    assertThat(mixers.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void nothing_starts_before_the_horizon_or_ends_after_it() {
    assertThat(mixers.latestStart(595, 10, 1)).isEqualTo(590);
    assertThat(mixers.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(mixers.earliestStart(-200, 10, 1)).isEqualTo(-120);
    assertThat(mixers.latestStart(-120, 10, 1)).isEqualTo(-120);
    assertThat(mixers.latestStart(-121, 10, 1)).isEqualTo(Timeline.NONE);
    assertThat(mixers.earliestStart(591, 10, 1)).isEqualTo(Timeline.NONE);
    assertThat(mixers.latestStart(600, 720, 1)).isEqualTo(-120);
    assertThat(mixers.latestStart(600, 721, 1)).isEqualTo(Timeline.NONE);
  }

  @Test
  void something_that_takes_no_minutes_fits_even_while_all_mixers_turn() {
    mixers.take(100, 130, 2, SOUP);

    assertThat(mixers.latestStart(110, 0, 2)).isEqualTo(110);
    assertThat(mixers.earliestStart(110, 0, 2)).isEqualTo(110);
  }

  @Test
  void a_mixer_lent_out_in_the_morning_is_still_lent_out_after_clearing() {
    mixers.reduce(0, 240, 1);
    mixers.take(300, 330, 2, SOUP);

    mixers.clear();

    assertThat(mixers.freeOver(0, 240)).isEqualTo(1);
    assertThat(mixers.freeOver(240, 600)).isEqualTo(2);
    assertThat(mixers.latestStart(220, 30, 2)).isEqualTo(-30);
    assertThat(mixers.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void the_kitchen_is_not_made_smaller_once_work_is_under_way() {
    mixers.take(100, 130, 1, SOUP);

    assertThatThrownBy(() -> mixers.reduce(0, 240, 1)).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void what_was_taken_since_the_mark_is_given_back_and_nothing_else() {
    mixers.take(100, 130, 1, SOUP);
    int mark = mixers.mark();
    mixers.take(90, 130, 1, SAUCE);
    mixers.take(130, 200, 2, DOUGH);

    mixers.rollback(mark);

    assertThat(mixers.freeOver(90, 100)).isEqualTo(2);
    assertThat(mixers.freeOver(100, 130)).isEqualTo(1);
    assertThat(mixers.freeOver(130, 200)).isEqualTo(2);
  }

  @Test
  void outside_the_calendar_there_is_none() {
    assertThat(mixers.freeOver(-120, 600)).isEqualTo(2);
    assertThat(mixers.freeOver(-121, 0)).isZero();
    assertThat(mixers.freeOver(0, 601)).isZero();
  }

  @Test
  void more_taken_than_there_is_shows_as_less_than_nothing() {
    mixers.take(100, 130, 3, SOUP);

    assertThat(mixers.freeOver(100, 130)).isEqualTo(-1);
  }

  @Test
  void an_empty_horizon_is_refused() {
    assertThatThrownBy(() -> new CountTimeline(60, 60, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("[60, 60)");
  }
}
