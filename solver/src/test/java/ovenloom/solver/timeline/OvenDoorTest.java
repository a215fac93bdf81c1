package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.solver.timeline.ABake.aBake;

import org.junit.jupiter.api.Test;

/** An oven that is hot all day, and what is put into it at one setting. */
class OvenDoorTest {

  private static final int NOON = 720;

  private static final int CAKE = 1;
  private static final int FIRST_PIE = 2;
  private static final int SECOND_PIE = 3;

  private final Presence always = Presence.between(0, 1440);
  private final DialTimeline oven = new DialTimeline(0, 1440, new AnOvenHeat(), always, always);

  private static ABake ofMinutes(int minutes) {
    return aBake(minutes, AnOvenHeat.HOT);
  }

  private void cakeAtNoon() {
    oven.take(NOON, ofMinutes(60).bake(), CAKE);
  }

  /** From some minutes past noon until the cake is done too. */
  private void pie(int whose, int past, int load) {
    oven.take(NOON + past, ofMinutes(60 - past).load(load).bake(), whose);
  }

  @Test
  void over_a_cake_the_door_is_opened_by_others_twice_and_not_a_third_time() {
    cakeAtNoon();
    pie(FIRST_PIE, 10, 1);
    pie(SECOND_PIE, 20, 1);

    assertThat(oven.latestStart(NOON + 30, ofMinutes(100).bake())).as("as the second pie goes in")
        .isEqualTo(NOON + 20);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void once_the_cake_is_being_taken_out_the_door_may_be_opened_again() {
    cakeAtNoon();
    pie(FIRST_PIE, 10, 1);
    pie(SECOND_PIE, 20, 1);

    assertThat(oven.latestStart(NOON + 59, ofMinutes(100).bake())).isEqualTo(NOON + 59);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(oven.latestStart(NOON + 58, ofMinutes(100).bake())).isEqualTo(NOON + 20);
  }

  @Test
  void two_pies_that_go_in_at_one_minute_open_the_door_once() {
    cakeAtNoon();
    pie(FIRST_PIE, 10, 1);
    pie(SECOND_PIE, 10, 1);

    assertThat(oven.latestStart(NOON + 30, ofMinutes(100).bake())).isEqualTo(NOON + 30);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void a_cake_is_not_put_in_where_others_go_in_and_out_too_often() {
    oven.take(NOON + 10, ofMinutes(20).bake(), FIRST_PIE);

    assertThat(oven.latestStart(NOON, ofMinutes(60).bake())).as("in and out is twice").isEqualTo(NOON);
    oven.take(NOON + 40, ofMinutes(100).bake(), SECOND_PIE);
    assertThat(oven.latestStart(NOON, ofMinutes(60).bake())).as("out as the second pie goes in")
        .isEqualTo(NOON + 41 - 60);
    assertThat(oven.blocker()).isEqualTo(SECOND_PIE);
  }

  @Test
  void of_three_that_open_the_door_over_a_cake_the_last_is_in_the_way() {
    oven.take(NOON + 5, ofMinutes(45).bake(), FIRST_PIE);
    oven.take(NOON + 10, ofMinutes(90).bake(), SECOND_PIE);

    assertThat(oven.latestStart(NOON, ofMinutes(60).bake())).as("out with the first pie")
        .isEqualTo(NOON + 50 - 60);
    assertThat(oven.blocker()).isEqualTo(FIRST_PIE);
  }

  @Test
  void toast_that_only_goes_in_and_out_minds_no_open_door() {
    pie(FIRST_PIE, -2, 4);
    pie(SECOND_PIE, -1, 3);
    pie(CAKE, 0, 2);

    assertThat(oven.latestStart(NOON, ofMinutes(2).bake())).isEqualTo(NOON);

    oven.clear();
    oven.take(NOON, ofMinutes(2).bake(), CAKE);
    pie(FIRST_PIE, -2, 4);
    pie(SECOND_PIE, -1, 3);
    assertThat(oven.latestStart(NOON, ofMinutes(60).load(2).bake())).isEqualTo(NOON);
  }

  @Test
  void a_slow_loading_that_began_before_counts_for_what_of_it_is_over_the_cake() {
    cakeAtNoon();
    pie(FIRST_PIE, -1, 2);
    pie(SECOND_PIE, 10, 1);
    assertThat(oven.latestStart(NOON + 20, ofMinutes(100).bake())).isEqualTo(NOON + 20);

    oven.clear();
    cakeAtNoon();
    pie(FIRST_PIE, -1, 3);
    pie(SECOND_PIE, 10, 1);
    assertThat(oven.latestStart(NOON + 20, ofMinutes(100).bake())).as("a third over the cake")
        .isEqualTo(NOON + 10);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void a_long_loading_and_a_short_one_at_one_minute_are_as_long_as_the_long_one() {
    cakeAtNoon();
    pie(FIRST_PIE, 0, 1);
    pie(SECOND_PIE, 0, 3);
    pie(SECOND_PIE, 10, 1);

    assertThat(oven.latestStart(NOON + 20, ofMinutes(100).bake())).as("the third over the cake")
        .isEqualTo(NOON + 10);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void a_roast_that_is_basted_opens_the_door_for_the_cake_too() {
    cakeAtNoon();
    oven.take(NOON - 60, ofMinutes(120).opensAt(70, 2).opensAt(90, 2).bake(), FIRST_PIE);

    assertThat(oven.latestStart(NOON + 50, ofMinutes(200).bake())).as("out as the cake goes in")
        .isEqualTo(NOON + 1 - 200);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void a_pie_that_goes_in_as_a_roast_is_basted_opens_the_door_for_itself() {
    cakeAtNoon();
    oven.take(NOON - 60, ofMinutes(120).opensAt(70, 2).bake(), FIRST_PIE);
    pie(SECOND_PIE, 10, 1);

    assertThat(oven.latestStart(NOON + 10, ofMinutes(100).bake())).as("in with the other pie")
        .isEqualTo(NOON + 10);
    assertThat(oven.latestStart(NOON + 20, ofMinutes(100).bake())).as("a third over the cake")
        .isEqualTo(NOON + 10);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void its_own_basting_does_not_count_for_the_roast() {
    oven.take(NOON, ofMinutes(100).opensAt(20, 2).opensAt(40, 2).opensAt(60, 2).bake(), CAKE);

    assertThat(oven.latestStart(NOON + 50, ofMinutes(20).bake())).isEqualTo(NOON + 50);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void over_a_souffle_the_door_stays_shut_until_it_comes_out() {
    oven.take(NOON, ofMinutes(20).shutFor(Integer.MAX_VALUE).bake(), CAKE);

    assertThat(oven.latestStart(NOON + 18, ofMinutes(60).bake())).as("as the souffle goes in")
        .isEqualTo(NOON);
    assertThat(oven.blocker()).isEqualTo(CAKE);
    assertThat(oven.latestStart(NOON + 19, ofMinutes(60).bake())).as("as it comes out").isEqualTo(NOON + 19);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }

  @Test
  void over_a_sponge_it_stays_shut_for_the_minutes_after_loading() {
    oven.take(NOON, ofMinutes(30).load(2).shutFor(15).bake(), CAKE);

    assertThat(oven.latestStart(NOON + 17, ofMinutes(60).bake())).isEqualTo(NOON + 17);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(oven.latestStart(NOON + 16, ofMinutes(60).bake())).isEqualTo(NOON + 1);
    assertThat(oven.blocker()).isEqualTo(CAKE);
  }

  @Test
  void a_souffle_goes_in_where_nobody_opens_the_door() {
    oven.take(NOON - 60, ofMinutes(90).bake(), FIRST_PIE);
    Bake souffle = ofMinutes(20).shutFor(Integer.MAX_VALUE).bake();

    assertThat(oven.latestStart(NOON + 28, souffle)).as("out a minute after the pie's last")
        .isEqualTo(NOON + 29 - 19);
    assertThat(oven.blocker()).isEqualTo(FIRST_PIE);
    assertThat(oven.latestStart(NOON + 29, souffle)).as("in as the pie comes out").isEqualTo(NOON + 29);
    assertThat(oven.blocker()).isEqualTo(Timeline.NOBODY);
  }
}
