package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PresenceTest {

  private static final int EIGHT = 480;
  private static final int TEN = 600;
  private static final int NOON = 720;
  private static final int TWO = 840;

  private final Presence morningAndAfternoon = Presence.between(EIGHT, TEN).and(NOON, TWO);

  @Test
  void food_may_still_be_moved_the_minute_hours_end_and_not_one_later() {
    assertThat(morningAndAfternoon.openAt(EIGHT)).isTrue();
    assertThat(morningAndAfternoon.openAt(TEN)).isTrue();
    assertThat(morningAndAfternoon.openAt(EIGHT - 1)).isFalse();
    assertThat(morningAndAfternoon.openAt(TEN + 1)).isFalse();
  }

  @Test
  void the_last_moment_before_a_closed_hour_is_the_one_it_closes() {
    assertThat(morningAndAfternoon.latestMoment(TEN + 30)).isEqualTo(TEN);
    assertThat(morningAndAfternoon.latestMoment(NOON)).isEqualTo(NOON);
    assertThat(morningAndAfternoon.latestMoment(TWO + 60)).isEqualTo(TWO);
    assertThat(morningAndAfternoon.latestMoment(EIGHT - 1)).isEqualTo(Timeline.NONE);
  }

  @Test
  void a_stretch_may_fill_the_hours_to_the_edge_but_not_bridge_the_pause() {
    assertThat(morningAndAfternoon.covers(EIGHT, TEN)).isTrue();
    assertThat(morningAndAfternoon.covers(EIGHT, TEN + 1)).isFalse();
    assertThat(morningAndAfternoon.covers(TEN - 1, NOON + 1)).isFalse();
  }

  @Test
  void what_is_too_long_for_the_afternoon_goes_into_the_morning() {
    var shortAfternoon = Presence.between(EIGHT, TEN).and(NOON, NOON + 30);

    assertThat(shortAfternoon.latestCovered(TWO, 30)).isEqualTo(NOON);
    assertThat(shortAfternoon.latestCovered(TWO, 31)).isEqualTo(TEN - 31);
    assertThat(shortAfternoon.latestCovered(TWO, 121)).isEqualTo(Timeline.NONE);
  }

  @Test
  void when_one_cook_hands_over_to_another_the_kitchen_stays_open() {
    var shifts = Presence.between(EIGHT, TEN).and(Presence.between(TEN, NOON));

    assertThat(shifts.stretches()).isEqualTo(1);
    assertThat(shifts.covers(TEN - 10, TEN + 10)).isTrue();
  }

  @Test
  void a_break_is_not_worked_through() {
    var hours = Presence.between(EIGHT, NOON).except(TEN, TEN + 15);

    assertThat(hours.latestCovered(TEN, 30)).isEqualTo(TEN - 30);
    assertThat(hours.covers(TEN - 1, TEN + 1)).isFalse();
    assertThat(hours.covers(TEN + 15, NOON)).isTrue();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void open_minutes_answer_as_when_ticked_off_one_by_one(long seed) {
    var random = new Random(seed);
    boolean[] ticked = new boolean[100];
    Presence presence = Presence.never();
    for (int i = 0; i < 8; i++) {
      int from = random.nextInt(90);
      int to = from + random.nextInt(10);
      boolean open = random.nextInt(3) > 0;
      presence = open ? presence.and(from, to) : presence.except(from, to);
      for (int minute = from; minute < to; minute++) {
        ticked[minute] = open;
      }
    }

    for (int moment = 0; moment < 100; moment++) {
      assertThat(presence.openAt(moment)).isEqualTo(openAt(ticked, moment));
      assertThat(presence.latestMoment(moment)).isEqualTo(latest(ticked, moment, 0));
      for (int duration = 1; duration < 12; duration++) {
        assertThat(presence.covers(moment, moment + duration))
            .isEqualTo(covers(ticked, moment, duration));
        assertThat(presence.latestCovered(moment, duration))
            .isEqualTo(latest(ticked, moment, duration));
      }
    }
  }

  private static int latest(boolean[] ticked, int notAfter, int duration) {
    for (int start = notAfter; start >= 0; start--) {
      if (duration == 0 ? openAt(ticked, start) : covers(ticked, start, duration)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private static boolean openAt(boolean[] ticked, int moment) {
    return ticked[moment] || (moment > 0 && ticked[moment - 1]);
  }

  private static boolean covers(boolean[] ticked, int from, int duration) {
    return from + duration <= ticked.length
        && IntStream.range(from, from + duration).allMatch(minute -> ticked[minute]);
  }
}
