package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CookTimelineLawTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_cook_answers_as_a_pool_of_one_counted_minute_by_minute(long seed) {
    var random = new Random(seed);
    var cook = new CookTimeline(-40, 80, Presence.between(-50, 10).and(20, 60).except(-20, -15));
    var naive = new NaivePool(-40, 80, 1);
    naive.reduce(10, 20, 1);
    naive.reduce(60, 80, 1);
    naive.reduce(-20, -15, 1);
    int mark = 0;

    for (int turn = 0; turn < 80; turn++) {
      int from = random.nextInt(130) - 45;
      int duration = random.nextInt(9);
      switch (random.nextInt(10)) {
        case 0 -> mark = naive.mark();
        case 1 -> {
          mark = Math.min(mark, naive.mark());
          cook.rollback(mark);
          naive.rollback(mark);
        }
        case 2 -> {
          if (random.nextInt(5) == 0) {
            cook.clear();
            naive.clear();
          }
        }
        default -> {
          if (duration > 0 && naive.fits(from, from + duration, 1)) {
            cook.take(from, from + duration, turn);
            naive.take(from, from + duration, 1, turn);
          }
        }
      }

      int asked = random.nextInt(130) - 45;
      int lasting = random.nextInt(12);
      assertThat(cook.isFree(asked, asked + lasting))
          .isEqualTo(lasting == 0 || naive.fits(asked, asked + lasting, 1));
      int latest = cook.latestStart(asked, lasting);
      assertThat(latest).isEqualTo(naive.latestStart(asked, lasting, 1));
      if (latest == asked) {
        assertThat(cook.blocker()).isEqualTo(Timeline.NOBODY);
      } else if (latest != Timeline.NONE) {
        assertThat(naive.isInTheWay(cook.blocker(), latest + lasting, 1)).isTrue();
      }
    }
  }

  private record Work(int from, int to, int tag) {

    boolean bars(int start, int end, int asked) {
      boolean overlaps = from < end && start < to;
      return overlaps && (tag != asked || tag == CookTimeline.ALONE || from != start);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_door_answers_as_when_every_other_piece_of_work_were_looked_at(long seed) {
    var random = new Random(seed);
    var cook = new CookTimeline(0, 100, Presence.between(0, 100));
    List<Work> naive = new ArrayList<>();

    for (int turn = 0; turn < 60; turn++) {
      int tag = random.nextInt(3) - 1;
      int asked = random.nextInt(105) - 2;
      int lasting = 1 + random.nextInt(4);
      int expected = asked;
      while (expected >= 0 && !isFree(naive, expected, expected + lasting, tag)) {
        expected--;
      }

      assertThat(cook.latestStartFor(asked, lasting, tag))
          .isEqualTo(expected < 0 ? Timeline.NONE : expected);
      boolean free = isFree(naive, asked, asked + lasting, tag);
      assertThat(cook.isFreeFor(asked, asked + lasting, tag)).isEqualTo(free);
      if (free) {
        cook.takeShared(asked, asked + lasting, turn, tag);
        naive.add(new Work(asked, asked + lasting, tag));
      }
    }
  }

  private static boolean isFree(List<Work> naive, int from, int to, int tag) {
    return from >= 0 && to <= 100 && naive.stream().noneMatch(work -> work.bars(from, to, tag));
  }
}
