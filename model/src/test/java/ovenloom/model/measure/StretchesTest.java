package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StretchesTest {

  private final Stretches hours = Stretches.of(new Stretch(540, 780), new Stretch(900, 1020));

  @Test
  void what_touches_or_overlaps_is_one() {
    assertThat(
        Stretches.of(new Stretch(30, 40), new Stretch(10, 20), new Stretch(20, 25), new Stretch(35, 50))
            .parts())
        .containsExactly(new Stretch(10, 25), new Stretch(30, 50));
  }

  @Test
  void no_time_is_no_stretch() {
    assertThat(Stretches.of(new Stretch(10, 10)).isEmpty()).isTrue();
    assertThat(hours.isEmpty()).isFalse();
  }

  @Test
  void a_minute_in_two_stretches_counts_once() {
    assertThat(Stretches.of(new Stretch(0, 60), new Stretch(30, 90)).minutes()).isEqualTo(90);
  }

  @Test
  void work_across_the_afternoon_pause_is_not_within_hours() {
    assertThat(hours.encloses(new Stretch(540, 780))).isTrue();
    assertThat(hours.encloses(new Stretch(700, 781))).isFalse();
    assertThat(hours.encloses(new Stretch(700, 950))).isFalse();
    assertThat(hours.encloses(new Stretch(800, 800))).as("no time at all").isTrue();
  }

  @Test
  void the_break_is_taken_out_of_the_hours() {
    assertThat(hours.without(Stretches.of(new Stretch(600, 615))).parts())
        .containsExactly(new Stretch(540, 600), new Stretch(615, 780), new Stretch(900, 1020));
  }

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void minute_by_minute_it_is_what_it_says(long seed) {
    Random random = new Random(seed);
    Stretches one = some(random);
    Stretches other = some(random);

    for (int minute = -5; minute < 45; minute++) {
      boolean inOne = one.contains(minute);
      boolean inOther = other.contains(minute);
      assertThat(one.shared(other).contains(minute)).isEqualTo(inOne && inOther);
      assertThat(one.without(other).contains(minute)).isEqualTo(inOne && !inOther);
      assertThat(Stretches.any(List.of(one, other)).contains(minute)).isEqualTo(inOne || inOther);
    }
    assertThat(one.minutes()).isEqualTo(IntStream.range(-5, 45).filter(one::contains).count());
  }

  private static Stretches some(Random random) {
    return new Stretches(IntStream.range(0, random.nextInt(5)).mapToObj(each -> {
      int from = random.nextInt(30);
      return new Stretch(from, from + random.nextInt(10));
    }).toList());
  }
}
