package ovenloom.solver.place;

import static java.util.stream.IntStream.range;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.solver.timeline.Footprints;
import ovenloom.solver.timeline.RackFit;
import ovenloom.solver.timeline.Timeline;

/** Three racks or shelves as wide as four trays of 9 cm with a gap of 1 cm, looked at minute by minute. */
class TiersLawTest {

  private static final int CENTIMETRE = 10_000;
  private static final int TO = 150;

  private static final List<Integer> ALL = List.of(0, 1, 2);
  private static final long[] REQUIRES = {0, 336_150, 347_039};

  private record Stood(int from, int to, int tier, int wide, int height, long requires) {

    boolean isThere(int minute) {
      return from <= minute && minute < to;
    }
  }

  private final List<Stood> all = new ArrayList<>();
  private final Footprints footprints = new Footprints();
  private final RackFit fit = new RackFit(footprints, 39 * CENTIMETRE, 10 * CENTIMETRE, CENTIMETRE);

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  /** Trays of one or two places, so that side by side is all there is to it. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_place_is_found_as_if_every_minute_were_looked_at(long seed) {
    var random = new Random(seed);
    boolean oven = random.nextBoolean();
    var tiers = new Tiers(0, TO, List.of(fit, fit, fit), new long[]{10, 8, 10}, oven);
    int lent = random.nextInt(TO - 20);
    int tier = random.nextInt(3);
    tiers.close(tier, lent, lent + 20);
    all.add(new Stood(lent, lent + 20, tier, 4, 0, -1));

    for (int turn = 0; turn < 40; turn++) {
      int wide = 1 + random.nextInt(2);
      int height = 5 + random.nextInt(6) + (oven ? random.nextInt(8) : 0);
      int minutes = 1 + random.nextInt(25);
      long requires = oven ? 0 : REQUIRES[random.nextInt(3)];
      int asked = random.nextInt(TO - minutes + 1);
      var piece = List
          .of(new Piece(footprints.number((10 * wide - 1) * CENTIMETRE, 10 * CENTIMETRE), false, height,
              BurnerSize.SMALL));

      int start = tiers.latestStart(asked, minutes, piece, ALL, requires, 0);

      assertThat(start).as("turn %d", turn).isEqualTo(latest(asked, minutes, wide, height, requires, oven));
      int[] found = start < 0 ? null : tiers.room(start, start + minutes, piece, ALL, requires);
      if (found != null) {
        tiers.take(start, start + minutes, piece, found, requires, turn);
        all.add(new Stood(start, start + minutes, found[0], wide, height, requires));
      }
    }
  }

  private int latest(int asked, int minutes, int wide, int height, long requires, boolean oven) {
    for (int start = asked; start >= 0; start--) {
      int begin = start;
      if (ALL.stream()
          .map(tier -> new Stood(begin, begin + minutes, tier, wide, height, requires))
          .anyMatch(tray -> range(begin, begin + minutes).allMatch(minute -> fits(tray, minute, oven)))) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private boolean fits(Stood tray, int minute, boolean oven) {
    List<Stood> there = new ArrayList<>(all.stream().filter(each -> each.isThere(minute)).toList());
    int top = top(tray, oven);
    int beside = there.stream().filter(each -> each.tier == tray.tier).mapToInt(Stood::wide).sum();
    return top < 3
        && beside + tray.wide <= 4
        && there.stream().noneMatch(each -> each.tier < tray.tier && tray.tier <= top(each, oven))
        && there.stream().noneMatch(each -> each.height > 0 && tray.tier < each.tier && each.tier <= top)
        && (oven || there.stream().allMatch(each -> isInOrder(each, tray)));
  }

  private static int top(Stood tray, boolean oven) {
    int[] clear = {10, 8, 10};
    int top = tray.tier;
    int room = clear[top];
    while (room < tray.height && top < 3) {
      top++;
      room += oven && top < 3 ? clear[top] : 0;
    }
    return top;
  }

  private static boolean isInOrder(Stood one, Stood other) {
    if (one.requires < 0) {
      return true;
    }
    return one.tier == other.tier ? one.requires == other.requires
        : one.tier < other.tier ? one.requires <= other.requires
            : other.requires <= one.requires;
  }
}
