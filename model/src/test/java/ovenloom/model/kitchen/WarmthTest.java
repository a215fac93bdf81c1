package ovenloom.model.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.measure.Temperature;

/**
 * The figures are worked by hand from the two laws in docs/rules: 10 K a minute up; down, what is above the room shrinks
 * to its e-th part every 15 / ln(180 / 130) = 46.094 minutes.
 */
class WarmthTest {

  private static final Temperature ROOM = Temperature.celsius(20);

  private final Warmth oven = new Warmth(ROOM, celsius(180), 16, celsius(200), celsius(150), 15);

  @Test
  void from_the_room_to_180_takes_the_16_minutes_its_owner_measured() {
    assertThat(oven.minutes(ROOM, celsius(180))).isEqualTo(16);
  }

  @Test
  void twenty_degrees_more_take_two_minutes_and_any_part_of_a_minute_counts_whole() {
    assertThat(oven.minutes(celsius(180), celsius(200))).isEqualTo(2);
    assertThat(oven.minutes(celsius(180), celsius(201))).isEqualTo(3);
    assertThat(oven.minutes(celsius(180), celsius(181))).isEqualTo(1);
  }

  @Test
  void no_change_takes_no_time() {
    assertThat(oven.minutes(celsius(180), celsius(180))).isZero();
    assertThat(oven.minutes(ROOM, ROOM)).isZero();
  }

  @Test
  void from_200_to_150_takes_the_15_minutes_its_owner_measured() {
    assertThat(oven.minutes(celsius(200), celsius(150))).isEqualTo(15);
  }

  @Test
  void cooling_slows_down_towards_the_room() {
    assertThat(oven.minutes(celsius(220), celsius(180))).as("46.094 ln(200/160) = 10.3").isEqualTo(11);
    assertThat(oven.minutes(celsius(180), celsius(140))).as("46.094 ln(160/120) = 13.3").isEqualTo(14);
    assertThat(oven.minutes(celsius(100), celsius(60))).as("46.094 ln(80/40) = 31.9").isEqualTo(32);
  }

  @Test
  void an_hour_after_it_was_switched_off_at_180_it_is_at_63() {
    assertThat(oven.cooled(celsius(180), 60).inCelsius())
        .isCloseTo(20 + 160 * Math.exp(-60 / 46.094), within(0.01))
        .isCloseTo(63.53, within(0.01));
  }

  @Test
  void nothing_has_cooled_in_no_time() {
    assertThat(oven.cooled(celsius(180), 0)).isEqualTo(celsius(180));
  }

  @Test
  void an_hour_off_at_180_the_preheat_back_to_180_takes_11_minutes() {
    assertThat(oven.cooled(celsius(180), 50).inCelsius())
        .as("too cool for ten minutes of warming")
        .isCloseTo(74.08, within(0.01));
    assertThat(oven.cooled(celsius(180), 49).inCelsius())
        .as("warm enough for eleven")
        .isCloseTo(75.27, within(0.01));
    assertThat(oven.preheat(celsius(180), celsius(180), 60)).isEqualTo(11);
  }

  @Test
  void a_cold_oven_off_since_yesterday_takes_the_whole_16_minutes() {
    assertThat(oven.preheat(celsius(180), celsius(180), 1000)).isEqualTo(16);
  }

  @Test
  void an_oven_that_cools_just_in_time_needs_no_preheat_only_its_wait() {
    assertThat(oven.cooled(celsius(200), 15)).isEqualTo(celsius(150));
    assertThat(oven.preheat(celsius(200), celsius(150), 15)).isZero();
  }

  @Test
  void a_gap_too_short_to_cool_in_has_no_preheat() {
    assertThat(oven.preheat(celsius(200), celsius(150), 14)).isEqualTo(15);
  }

  @Test
  void a_gap_too_short_to_warm_in_has_no_preheat() {
    assertThat(oven.preheat(celsius(100), celsius(200), 5)).isEqualTo(6);
  }

  @ParameterizedTest(name = "after {0} minutes off")
  @MethodSource("gaps")
  void a_preheat_is_the_least_that_reaches_the_mark(int gap) {
    int minutes = oven.preheat(celsius(220), celsius(180), gap);

    assertThat(minutes).isLessThanOrEqualTo(gap);
    assertThat(oven.minutes(oven.cooled(celsius(220), gap - minutes), celsius(180)))
        .isLessThanOrEqualTo(minutes);
    IntStream.range(0, minutes)
        .forEach(less -> assertThat(oven.minutes(oven.cooled(celsius(220), gap - less), celsius(180)))
            .as("%d minutes", less)
            .isGreaterThan(less));
  }

  static IntStream gaps() {
    return IntStream.of(11, 12, 20, 29, 30, 31, 45, 90, 240, 1440);
  }

  @Test
  void no_oven_cools_below_its_room() {
    assertThatThrownBy(() -> new Warmth(ROOM, ROOM, 16, celsius(200), celsius(150), 15))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_mark_no_hotter_than_the_room_takes_no_warming_and_is_never_cooled_to() {
    assertThat(oven.minutes(ROOM, celsius(10))).isZero();
    assertThat(oven.minutes(celsius(10), celsius(15))).isZero();
    assertThat(oven.minutes(celsius(100), ROOM)).isEqualTo(Warmth.NEVER);
    assertThat(oven.preheat(ROOM, celsius(10), 60)).isZero();
    assertThat(oven.preheat(celsius(180), ROOM, 60)).as("too short").isEqualTo(61);
  }

  @Test
  void nothing_takes_longer_than_never_however_slow_the_oven() {
    var slow = new Warmth(ROOM, celsius(20.001), 500_000, celsius(200), celsius(199.999), 500_000);

    assertThat(slow.minutes(ROOM, celsius(180))).isEqualTo(Warmth.NEVER);
    assertThat(slow.minutes(celsius(180), celsius(100))).isEqualTo(Warmth.NEVER);
  }

  private static Temperature celsius(double degrees) {
    return Temperature.celsius(degrees);
  }
}
