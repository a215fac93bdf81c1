package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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
    assertThat(rack.latestEmpty(170, 20)).isEqualTo(170);
    assertThat(rack.latestEmpty(130, 20)).isEqualTo(80);
    assertThat(rack.blocker()).isEqualTo(TART);
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
  void an_empty_horizon_is_refused() {
    var fit = new RackFit(footprints, CM, CM, 0);

    assertThatThrownBy(() -> new SurfaceTimeline(60, 60, fit))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("[60, 60)");
  }

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
      int empty = asked;
      while (empty >= 0 && !isEmpty(naive, empty, empty + lasting)) {
        empty--;
      }
      assertThat(timeline.latestEmpty(asked, lasting))
          .isEqualTo(empty < 0 ? Timeline.NONE : empty);
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
