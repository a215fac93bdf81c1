package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountTimelineLawTest {

  private static final int FROM = -40;
  private static final int TO = 80;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_pool_answers_as_one_counted_minute_by_minute(long seed) {
    var random = new Random(seed);
    int capacity = 1 + random.nextInt(4);
    var pool = new CountTimeline(FROM, TO, capacity);
    var naive = new NaivePool(FROM, TO, capacity);
    for (int i = random.nextInt(3); i > 0; i--) {
      int from = moment(random);
      int to = from + random.nextInt(30);
      pool.reduce(from, to, 1);
      naive.reduce(from, to, 1);
    }
    int mark = 0;

    for (int turn = 0; turn < 120; turn++) {
      switch (random.nextInt(12)) {
        case 0 -> mark = naive.mark();
        case 1 -> {
          mark = Math.min(mark, naive.mark());
          pool.rollback(mark);
          naive.rollback(mark);
        }
        case 2 -> {
          if (random.nextInt(5) == 0) {
            pool.clear();
            naive.clear();
          }
        }
        default -> {
          int from = moment(random);
          int to = from + random.nextInt(20);
          int demand = random.nextInt(3);
          if (naive.fits(from, to, demand) || random.nextInt(4) == 0) {
            pool.take(from, to, demand, turn);
            naive.take(from, to, demand, turn);
          }
        }
      }
      assertThat(pool.mark()).isEqualTo(naive.mark());
      compare(pool, naive, random);
    }
  }

  private static void compare(CountTimeline pool, NaivePool naive, Random random) {
    assertThat(pool.minutesShort())
        .isEqualTo(IntStream.range(FROM, TO).filter(minute -> naive.freeAt(minute) < 0).count());

    int moment = moment(random);
    int duration = random.nextInt(15);
    int demand = random.nextInt(5);

    assertThat(pool.fits(moment, moment + duration, demand))
        .isEqualTo(duration == 0 || naive.fits(moment, moment + duration, demand));

    int latest = pool.latestStart(moment, duration, demand);
    assertThat(latest).isEqualTo(naive.latestStart(moment, duration, demand));
    if (latest == moment) {
      assertThat(pool.blocker()).isEqualTo(Timeline.NOBODY);
    } else if (latest != Timeline.NONE) {
      assertThat(naive.isInTheWay(pool.blocker(), latest + duration, demand)).isTrue();
    }

    int earliest = pool.earliestStart(moment, duration, demand);
    assertThat(earliest).isEqualTo(naive.earliestStart(moment, duration, demand));
    if (earliest == moment) {
      assertThat(pool.blocker()).isEqualTo(Timeline.NOBODY);
    } else if (earliest != Timeline.NONE) {
      assertThat(naive.isInTheWay(pool.blocker(), earliest - 1, demand)).isTrue();
    }
  }

  private static int moment(Random random) {
    return FROM - 5 + random.nextInt(TO - FROM + 10);
  }
}
