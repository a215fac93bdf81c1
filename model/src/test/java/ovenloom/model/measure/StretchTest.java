package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StretchTest {

  private static final Stretch SIX_TO_SEVEN = new Stretch(360, 420);
  private static final Stretch NOTHING_AT_SIX_THIRTY = new Stretch(390, 390);

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @Test
  void an_hour_is_sixty_minutes() {
    assertThat(SIX_TO_SEVEN.minutes()).isEqualTo(60);
    assertThat(NOTHING_AT_SIX_THIRTY.minutes()).isZero();
  }

  @Test
  void no_stretch_ends_before_it_begins() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Stretch(420, 419))
        .withMessageContaining("420")
        .withMessageContaining("419");
  }

  @Test
  void no_stretch_is_longer_than_can_be_counted() {
    assertThatThrownBy(() -> new Stretch(Integer.MIN_VALUE, 0)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void custard_may_go_in_the_minute_the_bread_comes_out() {
    var custard = new Stretch(420, 460);

    assertThat(SIX_TO_SEVEN.overlaps(custard)).isFalse();
    assertThat(custard.overlaps(SIX_TO_SEVEN)).isFalse();
    assertThat(SIX_TO_SEVEN.abuts(custard)).isTrue();
    assertThat(custard.abuts(SIX_TO_SEVEN)).isTrue();
  }

  @Test
  void a_minute_earlier_it_shares_the_oven_with_the_bread() {
    var custard = new Stretch(419, 460);

    assertThat(SIX_TO_SEVEN.overlaps(custard)).isTrue();
    assertThat(SIX_TO_SEVEN.abuts(custard)).isFalse();
    assertThat(SIX_TO_SEVEN.shared(custard)).isEqualTo(new Stretch(419, 420));
  }

  @Test
  void a_minute_later_the_two_no_longer_touch() {
    var custard = new Stretch(421, 460);

    assertThat(SIX_TO_SEVEN.overlaps(custard)).isFalse();
    assertThat(SIX_TO_SEVEN.abuts(custard)).isFalse();
  }

  @Test
  void an_empty_stretch_overlaps_nothing_not_even_what_is_all_round_it() {
    assertThat(NOTHING_AT_SIX_THIRTY.overlaps(SIX_TO_SEVEN)).isFalse();
    assertThat(SIX_TO_SEVEN.overlaps(NOTHING_AT_SIX_THIRTY)).isFalse();
    assertThat(NOTHING_AT_SIX_THIRTY.overlaps(NOTHING_AT_SIX_THIRTY)).isFalse();
    assertThat(SIX_TO_SEVEN.shared(NOTHING_AT_SIX_THIRTY)).isNull();
  }

  @Test
  void a_stretch_encloses_itself_and_what_shares_an_end_with_it() {
    assertThat(SIX_TO_SEVEN.encloses(SIX_TO_SEVEN)).isTrue();
    assertThat(SIX_TO_SEVEN.encloses(new Stretch(360, 361))).isTrue();
    assertThat(SIX_TO_SEVEN.encloses(new Stretch(419, 420))).isTrue();
    assertThat(SIX_TO_SEVEN.encloses(NOTHING_AT_SIX_THIRTY)).isTrue();
  }

  @Test
  void a_stretch_does_not_enclose_what_sticks_out_by_a_minute() {
    assertThat(SIX_TO_SEVEN.encloses(new Stretch(359, 400))).isFalse();
    assertThat(SIX_TO_SEVEN.encloses(new Stretch(400, 421))).isFalse();
  }

  @Test
  void the_first_minute_is_inside_and_the_end_is_not() {
    assertThat(SIX_TO_SEVEN.contains(359)).isFalse();
    assertThat(SIX_TO_SEVEN.contains(360)).isTrue();
    assertThat(SIX_TO_SEVEN.contains(419)).isTrue();
    assertThat(SIX_TO_SEVEN.contains(420)).isFalse();
    assertThat(NOTHING_AT_SIX_THIRTY.contains(390)).isFalse();
  }

  @Test
  void what_touches_shares_nothing() {
    assertThat(SIX_TO_SEVEN.shared(new Stretch(420, 460))).isNull();
  }

  @Test
  void a_stretch_may_be_put_earlier_or_later() {
    assertThat(SIX_TO_SEVEN.shiftedBy(15)).isEqualTo(new Stretch(375, 435));
    assertThat(SIX_TO_SEVEN.shiftedBy(-400)).isEqualTo(new Stretch(-40, 20));
  }

  @Test
  void a_stretch_cannot_be_put_past_the_end_of_counting() {
    assertThatThrownBy(() -> SIX_TO_SEVEN.shiftedBy(Integer.MAX_VALUE))
        .isInstanceOf(ArithmeticException.class);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void two_stretches_overlap_when_and_only_when_some_minute_is_in_both(long seed) {
    var random = new Random(seed);
    Stretch one = anyStretch(random);
    Stretch other = anyStretch(random);

    int inBoth = (int) IntStream.range(-5, 25).filter(m -> one.contains(m) && other.contains(m)).count();
    Stretch shared = one.shared(other);

    assertThat(one.overlaps(other)).isEqualTo(inBoth > 0).isEqualTo(other.overlaps(one));
    assertThat(shared == null ? 0 : shared.minutes()).isEqualTo(inBoth);
  }

  private static Stretch anyStretch(Random random) {
    int from = random.nextInt(-5, 15);
    return new Stretch(from, from + random.nextInt(8));
  }
}
