package ovenloom.solver.place;

import static java.util.stream.IntStream.range;
import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.solver.place.ACook.aCook;
import static ovenloom.solver.place.ACook.withBreak;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.solver.timeline.Timeline;

/** Pots counted minute by minute: in use, dirty, in the sink, clean. */
class VesselPoolLawTest {

  private static final int LONGEST = 300;
  private static final int FIRST = -400;
  private static final int WASH = 4;

  private record Use(int from, int to, int pots) {

    Use with(int start, int end) {
      return new Use(Math.min(from, start), Math.max(to, end), pots);
    }

    boolean holds(int minute) {
      return from <= minute && minute < to;
    }
  }

  private final Map<Integer, Use> uses = new HashMap<>();

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_pot_is_used_twice_at_once_or_dirty(long seed) {
    var random = new Random(seed);
    int count = 1 + random.nextInt(4);
    var crew = new Crew(List.of(withBreak(aCook("Ines", 0, 250), 90, 120), aCook("Tom", 100, 140)), FIRST,
        LONGEST);
    var pots = new VesselPool(0, count, WASH, 10, crew, List.of(), List.of());

    for (int turn = 0; turn < 30; turn++) {
      int fill = random.nextInt(10);
      int wanted = uses.containsKey(fill) ? uses.get(fill).pots() : 1 + random.nextInt(3);
      int minutes = 1 + random.nextInt(40);
      int asked = random.nextInt(LONGEST - minutes);
      int start = pots.latestStart(asked, minutes, fill, wanted);
      assertThat(start).as("turn %d", turn).isEqualTo(latest(asked, minutes, fill, wanted, count));

      var before = pots.state();
      int[] cooks = crew.marks();
      if (start >= 0 && pots.take(fill, wanted, start, start + minutes)) {
        uses.merge(fill, new Use(start, start + minutes, wanted),
            (was, now) -> was.with(now.from(), now.to()));
        assertClean(pots, count);
      } else if (start >= 0) {
        pots.back(before);
        crew.rollback(cooks);
      }
    }
  }

  private int latest(int asked, int minutes, int fill, int wanted, int count) {
    for (int start = asked; start >= FIRST; start--) {
      Use use = uses.getOrDefault(fill, new Use(start, start, wanted)).with(start, start + minutes);
      if (range(use.from(), use.to()).allMatch(minute -> others(fill, minute) + wanted <= count)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private int others(int fill, int minute) {
    return uses.entrySet()
        .stream()
        .filter(each -> each.getKey() != fill && each.getValue().holds(minute))
        .mapToInt(each -> each.getValue().pots())
        .sum();
  }

  private void assertClean(VesselPool pots, int count) {
    List<VesselPool.Done> washes = new ArrayList<>();
    range(0, pots.washes()).mapToObj(pots::wash).filter(wash -> wash.pieces() > 0).forEach(washes::add);
    int dirty = 0;
    for (int minute = 0; minute < LONGEST; minute++) {
      int now = minute;
      int washed = washes.stream().filter(each -> each.to() == now).mapToInt(VesselPool.Done::pieces).sum();
      dirty += uses.values().stream().filter(use -> use.to() == now).mapToInt(Use::pots).sum() - washed;
      int inTheSink = washes.stream()
          .filter(each -> each.from() <= now && now < each.to())
          .mapToInt(VesselPool.Done::pieces)
          .sum();
      assertThat(inTheSink).as("washed at %d", minute).isLessThanOrEqualTo(dirty);
      assertThat(others(-1, minute) + dirty).as("not clean at %d", minute).isLessThanOrEqualTo(count);
    }
  }
}
