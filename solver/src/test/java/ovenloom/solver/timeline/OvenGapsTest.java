package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.solver.timeline.ABake.aBake;
import static ovenloom.solver.timeline.AnOvenHeat.HOT;
import static ovenloom.solver.timeline.AnOvenHeat.MILD;

import org.junit.jupiter.api.Test;

/**
 * An oven that takes 20 minutes from the room to 220 C and 10 to 120 C. Someone is there from 8:00 to 22:00, and was the day
 * before.
 */
class OvenGapsTest {

  private static final int BREAD = 7;
  private static final int CUSTARD = 8;
  private static final int TART = 9;

  private static final int DAY = 1440;
  private static final int FOUR = 240;
  private static final int EIGHT = 480;
  private static final int TEN_PM = 1320;

  private static final OvenHeat HEAT = new AnOvenHeat();
  private static final Presence ALWAYS = Presence.between(-DAY, DAY);

  private final Presence someone = Presence.between(EIGHT, TEN_PM).and(EIGHT - DAY, TEN_PM - DAY);
  private final DialTimeline oven = open(ALWAYS);
  private final DialTimeline nightShift = new DialTimeline(-DAY, DAY, HEAT, ALWAYS, ALWAYS);

  private DialTimeline open(Presence hours) {
    return new DialTimeline(-DAY, DAY, HEAT, hours, someone);
  }

  @Test
  void a_cold_oven_is_switched_on_by_someone() {
    assertThat(oven.latestStart(EIGHT + 20, aBake(30, HOT).bake())).isEqualTo(EIGHT + 20);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(oven.latestStart(EIGHT + 19, aBake(30, HOT).bake())).as("switched on at 22:00 the day before")
        .isEqualTo(TEN_PM - DAY + 20);
    assertThat(oven.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void an_oven_that_was_in_use_this_morning_is_warm() {
    oven.take(EIGHT + 20, aBake(10, HOT).bake(), BREAD);

    assertThat(oven.latestStart(EIGHT + 30, aBake(10, HOT).bake())).isEqualTo(EIGHT + 30);
  }

  @Test
  void at_four_in_the_morning_an_empty_oven_is_cold() {
    oven.take(FOUR - 30, aBake(30, HOT).bake(), BREAD);

    assertThat(oven.latestStart(FOUR + 10, aBake(10, HOT).bake())).as("nobody switches it on")
        .isEqualTo(FOUR);
    assertThat(oven.latestStart(FOUR, aBake(10, HOT).bake())).as("in as the bread comes out").isEqualTo(FOUR);
    assertThat(oven.latestStart(EIGHT + 20, aBake(10, HOT).bake())).isEqualTo(EIGHT + 20);
  }

  @Test
  void an_oven_with_food_in_it_at_four_stays_warm() {
    oven.take(FOUR - 30, aBake(31, HOT).bake(), BREAD);

    assertThat(oven.latestStart(FOUR + 10, aBake(10, HOT).bake())).isEqualTo(FOUR + 10);
  }

  @Test
  void a_cold_oven_is_warmed_while_it_is_empty() {
    nightShift.take(FOUR - 30, aBake(30, HOT).bake(), BREAD);

    assertThat(nightShift.latestStart(FOUR + 20, aBake(10, HOT).bake())).isEqualTo(FOUR + 20);
    assertThat(nightShift.latestStart(FOUR + 19, aBake(10, HOT).bake())).isEqualTo(FOUR);
    assertThat(nightShift.blocker()).isEqualTo(BREAD);
  }

  @Test
  void what_is_baked_in_the_night_leaves_the_morning_time_to_warm() {
    nightShift.take(FOUR + 15, aBake(30, HOT).bake(), BREAD);

    assertThat(nightShift.latestStart(FOUR - 15, aBake(10, HOT).bake())).as("cold at four, 20 min to warm")
        .isEqualTo(FOUR - 15);
    assertThat(nightShift.latestStart(FOUR - 14, aBake(10, HOT).bake())).isEqualTo(FOUR - 15);
    assertThat(nightShift.blocker()).isEqualTo(BREAD);
    assertThat(nightShift.latestStart(FOUR - 9, aBake(10, HOT).bake())).as("inside at four")
        .isEqualTo(FOUR - 9);
  }

  @Test
  void bread_that_goes_in_at_four_finds_the_oven_as_it_was_left() {
    nightShift.take(FOUR, aBake(30, HOT).bake(), BREAD);

    assertThat(nightShift.latestStart(FOUR - 15, aBake(10, HOT).bake())).isEqualTo(FOUR - 15);
    assertThat(nightShift.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void an_oven_is_baked_in_and_warmed_within_its_hours() {
    var rented = open(Presence.between(EIGHT, 720));

    assertThat(rented.latestStart(720 - 30, aBake(30, HOT).bake())).isEqualTo(720 - 30);
    assertThat(rented.latestStart(720 - 29, aBake(30, HOT).bake())).isEqualTo(720 - 30);
    assertThat(rented.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(rented.latestStart(EIGHT + 20, aBake(30, HOT).bake())).isEqualTo(EIGHT + 20);
    assertThat(rented.latestStart(EIGHT + 19, aBake(30, HOT).bake())).isEqualTo(Timeline.NONE);
    assertThat(rented.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void an_oven_lent_out_at_noon_is_warmed_again_when_it_is_back() {
    var shared = open(ALWAYS.except(720, 840));
    shared.take(660, aBake(60, MILD).bake(), CUSTARD);

    assertThat(shared.latestStart(840 + 20, aBake(30, HOT).bake())).isEqualTo(840 + 20);
    assertThat(shared.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(shared.latestStart(840 + 19, aBake(30, HOT).bake())).as("20 min to warm again").isEqualTo(616);
    assertThat(shared.blocker()).isEqualTo(CUSTARD);
  }

  @Test
  void an_oven_that_would_be_held_while_it_is_lent_out_is_not_used_so_soon() {
    var shared = open(ALWAYS.except(720, 740));
    shared.take(840, aBake(60, HOT).bake(), BREAD);

    assertThat(shared.latestStart(720 - 30, aBake(30, HOT).bake())).as("off for two hours").isEqualTo(690);
    shared.take(690, aBake(30, HOT).bake(), TART);
    assertThat(shared.latestStart(749, aBake(30, HOT).bake())).as("held, were it in so soon").isEqualTo(690);
    assertThat(shared.latestStart(760, aBake(30, HOT).bake())).isEqualTo(760);
  }

  @Test
  void an_oven_that_would_be_held_for_the_next_bake_while_it_is_lent_out_is_left_sooner() {
    var shared = open(ALWAYS.except(720, 725));
    shared.take(745, aBake(60, HOT).bake(), BREAD);

    assertThat(shared.latestStart(720 - 30, aBake(30, HOT).bake())).as("off for half an hour")
        .isEqualTo(715 - 30);
    assertThat(shared.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(shared.latestStart(715 - 30, aBake(30, HOT).bake())).isEqualTo(715 - 30);
    assertThat(shared.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void nothing_is_warmed_for_before_the_calendar_begins_or_baked_when_it_is_over() {
    var morning = new DialTimeline(EIGHT, 720, HEAT, ALWAYS, ALWAYS);

    assertThat(morning.latestStart(EIGHT + 20, aBake(30, HOT).bake())).isEqualTo(EIGHT + 20);
    assertThat(morning.latestStart(EIGHT + 19, aBake(30, HOT).bake())).isEqualTo(Timeline.NONE);
    assertThat(morning.blocker()).isEqualTo(Timeline.HOURS);
    assertThat(morning.latestStart(720, aBake(30, HOT).bake())).isEqualTo(690);
    assertThat(morning.blocker()).isEqualTo(Timeline.HOURS);
  }
}
