package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SurfaceTimelineTest {

  private static final int CM = 10_000;
  private static final int TART = 1;
  private static final int ROAST = 2;
  private static final int BREAD = 3;

  private final Footprints footprints = new Footprints();
  private final int[] halfTray = {footprints.number(30 * CM, 20 * CM)};
  private final int[] fullTray = {footprints.number(41 * CM, 30 * CM)};
  private final int[] twoHalfTrays = {halfTray[0], halfTray[0]};
  private final SurfaceTimeline rack = new SurfaceTimeline(-60, 600,
      new RackFit(footprints, 41 * CM, 30 * CM, CM));

  @Test
  void a_third_half_tray_waits_until_one_of_two_is_out() {
    rack.take(100, 140, halfTray, 1, TART);
    rack.take(120, 180, halfTray, 1, ROAST);

    assertThat(rack.fits(130, 150, halfTray, 1)).isFalse();
    assertThat(rack.latestStart(130, 20, halfTray, 1)).isEqualTo(100);
    assertThat(rack.blocker()).isEqualTo(ROAST);
  }

  @Test
  void two_half_trays_stand_side_by_side() {
    rack.take(100, 140, halfTray, 1, TART);

    assertThat(rack.fits(90, 150, halfTray, 1)).isTrue();
    assertThat(rack.latestStart(130, 20, halfTray, 1)).isEqualTo(130);
    assertThat(rack.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void a_full_tray_goes_in_the_minute_the_half_one_comes_out_and_comes_out_as_the_next_goes_in() {
    rack.take(100, 140, halfTray, 1, TART);
    rack.take(200, 240, halfTray, 1, ROAST);

    assertThat(rack.fits(140, 200, fullTray, 1)).isTrue();
    assertThat(rack.fits(139, 200, fullTray, 1)).isFalse();
    assertThat(rack.fits(140, 201, fullTray, 1)).isFalse();
  }

  @Test
  void two_half_trays_of_one_dish_come_and_go_together() {
    rack.take(100, 140, twoHalfTrays, 2, TART);

    assertThat(rack.fits(100, 101, halfTray, 1)).isFalse();
    assertThat(rack.latestStart(120, 30, twoHalfTrays, 2)).isEqualTo(70);
    assertThat(rack.blocker()).isEqualTo(TART);
  }

  @Test
  void nothing_stands_on_a_rack_while_the_bread_below_reaches_through_it() {
    rack.close(100, 140, BREAD);

    assertThat(rack.fits(130, 150, halfTray, 1)).isFalse();
    assertThat(rack.fits(140, 150, halfTray, 1)).isTrue();
    assertThat(rack.latestStart(120, 20, halfTray, 1)).isEqualTo(80);
    assertThat(rack.blocker()).isEqualTo(BREAD);
  }

  @Test
  void a_rack_is_closed_only_while_nothing_stands_on_it_but_by_several_at_once() {
    rack.take(100, 140, halfTray, 1, TART);
    rack.close(150, 200, BREAD);

    assertThat(rack.isEmpty(139, 150)).isFalse();
    assertThat(rack.isEmpty(140, 220)).isTrue();
    assertThat(rack.isEmpty(80, 100)).isTrue();
    assertThat(rack.isEmpty(81, 101)).isFalse();
  }

  @Test
  void a_tray_larger_than_the_rack_never_fits() {
    int[] tooLarge = {footprints.number(42 * CM, 30 * CM)};

    assertThat(rack.fits(0, 10, tooLarge, 1)).isFalse();
    assertThat(rack.latestStart(100, 10, tooLarge, 1)).isEqualTo(Timeline.NONE);
    assertThat(rack.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void what_stood_there_before_the_day_stays_when_the_plan_is_cleared() {
    rack.take(-60, 50, halfTray, 1, Timeline.HOURS);
    rack.keep();
    rack.take(0, 100, halfTray, 1, TART);
    int mark = rack.mark();
    rack.take(100, 140, halfTray, 1, ROAST);

    rack.rollback(mark);
    assertThat(rack.fits(100, 140, fullTray, 1)).isTrue();
    assertThat(rack.fits(40, 60, halfTray, 1)).isFalse();

    rack.clear();
    assertThat(rack.fits(40, 60, halfTray, 1)).isTrue();
    assertThat(rack.fits(40, 60, fullTray, 1)).isFalse();
    assertThat(rack.latestStart(40, 20, fullTray, 1)).isEqualTo(Timeline.NONE);
  }

  @Test
  void what_takes_no_minutes_finds_a_place_on_a_full_rack_up_to_the_edge_of_the_horizon() {
    rack.take(-60, 600, fullTray, 1, ROAST);

    assertThat(rack.latestStart(130, 0, halfTray, 1)).isEqualTo(130);
    assertThat(rack.latestStart(-60, 0, halfTray, 1)).isEqualTo(-60);
    assertThat(rack.latestStart(-61, 0, halfTray, 1)).isEqualTo(Timeline.NONE);
    assertThat(rack.fits(130, 130, halfTray, 1)).isTrue();
    assertThat(rack.isEmpty(130, 130)).isTrue();
  }

  @Test
  void what_is_too_large_for_the_rack_takes_no_room_in_no_minutes() {
    int[] roastingTin = {footprints.number(50 * CM, 30 * CM)};

    assertThat(rack.latestStart(130, 0, roastingTin, 1)).isEqualTo(130);
    assertThat(rack.latestStart(130, 1, roastingTin, 1)).isEqualTo(Timeline.NONE);
    assertThat(rack.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void with_no_time_left_at_all_what_was_met_last_is_named() {
    rack.take(-60, 30, fullTray, 1, ROAST);

    assertThat(rack.latestStart(20, 10, halfTray, 1)).isEqualTo(Timeline.NONE);
    assertThat(rack.blocker()).isEqualTo(ROAST);
    assertThat(rack.latestStart(-61, 10, halfTray, 1)).isEqualTo(Timeline.NONE);
    assertThat(rack.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void an_empty_horizon_is_refused() {
    var fit = new RackFit(footprints, CM, CM, 0);

    assertThatThrownBy(() -> new SurfaceTimeline(60, 60, fit))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("[60, 60)");
  }
}
