package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SurfaceTimelineLawTest {

  private final Footprints footprints = new Footprints();

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  private record Standing(int from, int to, int shape, int owner) {

    boolean at(int moment) {
      return from <= moment && moment < to;
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_rack_answers_as_one_looked_at_minute_by_minute(long seed) {
    var random = new Random(seed);
    int[] kinds = {footprints.number(3, 2), footprints.number(2, 2), footprints.number(4, 1)};
    var fit = new RackFit(footprints, 6, 4, 0);
    var timeline = new SurfaceTimeline(0, 100, fit);
    List<Standing> naive = new ArrayList<>();
    int mark = 0;

    for (int turn = 0; turn < 40; turn++) {
      int from = random.nextInt(90);
      int to = from + 1 + random.nextInt(20);
      int[] shapes = {kinds[random.nextInt(3)], kinds[random.nextInt(3)]};
      int count = 1 + random.nextInt(2);
      assertThat(timeline.fits(from, to, shapes, count))
          .isEqualTo(fits(naive, fit, from, to, shapes, count));
      assertThat(timeline.isEmpty(from, to)).isEqualTo(isEmpty(naive, from, to));
      switch (random.nextInt(8)) {
        case 0 -> mark = naive.size();
        case 1 -> {
          mark = Math.min(mark, naive.size());
          timeline.rollback(mark);
          naive.subList(mark, naive.size()).clear();
        }
        case 2 -> {
          if (isEmpty(naive, from, to)) {
            timeline.close(from, to, turn);
            naive.add(new Standing(from, to, -1, turn));
          }
        }
        default -> {
          if (fits(naive, fit, from, to, shapes, count)) {
            timeline.take(from, to, shapes, count, turn);
            for (int i = 0; i < count; i++) {
              naive.add(new Standing(from, to, shapes[i], turn));
            }
          }
        }
      }

      int asked = random.nextInt(110);
      int lasting = 1 + random.nextInt(25);
      int start = timeline.latestStart(asked, lasting, shapes, count);
      assertThat(start).isEqualTo(latest(naive, fit, asked, lasting, shapes, count));
      int blocker = timeline.blocker();
      if (start == asked) {
        assertThat(blocker).isEqualTo(Timeline.NOBODY);
      } else if (start != Timeline.NONE && start + lasting < 100) {
        assertThat(naive)
            .anyMatch(standing -> standing.owner() == blocker && standing.at(start + lasting));
      }
    }
  }

  private static int latest(
      List<Standing> naive, RackFit fit, int notAfter, int lasting, int[] shapes, int count) {
    for (int start = notAfter; start >= 0; start--) {
      if (fits(naive, fit, start, start + lasting, shapes, count)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private static boolean fits(
      List<Standing> naive, RackFit fit, int from, int to, int[] shapes, int count) {
    for (int moment = from; moment < to; moment++) {
      int now = moment;
      int[] together = IntStream.concat(
          naive.stream().filter(s -> s.at(now)).mapToInt(Standing::shape),
          Arrays.stream(shapes, 0, count))
          .toArray();
      boolean closed = Arrays.stream(together).anyMatch(shape -> shape < 0);
      if (closed || !fit.fits(together, together.length)) {
        return false;
      }
    }
    return from >= 0 && to <= 100;
  }

  private static boolean isEmpty(List<Standing> naive, int from, int to) {
    return from >= 0
        && to <= 100
        && naive.stream().noneMatch(s -> s.shape() >= 0 && s.from() < to && from < s.to());
  }
}
