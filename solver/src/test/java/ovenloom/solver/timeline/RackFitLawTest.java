package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RackFitLawTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void up_to_five_pans_fit_if_and_only_if_some_way_of_setting_them_down_is_found(long seed) {
    var random = new Random(seed);
    for (int round = 0; round < 20; round++) {
      int width = 2 + random.nextInt(6);
      int depth = 2 + random.nextInt(6);
      int gap = random.nextInt(2);
      int count = 1 + random.nextInt(5);
      var footprints = new Footprints();
      int[] shapes = someShapes(footprints, random, count, width, depth);
      var rack = new RackFit(footprints, width, depth, gap);

      boolean fits = rack.fits(shapes, count);

      assertThat(fits)
          .isEqualTo(new EveryPlace(footprints, shapes, width, depth, gap).canSetDown(0));
      var layout = rack.layout(shapes, count);
      assertThat(layout != null).isEqualTo(fits);
      if (layout != null) {
        LayoutCheck.holds(layout, footprints, shapes, width, depth, gap);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void eight_pans_cut_from_one_sheet_go_back_on_it_and_a_ninth_does_not(long seed) {
    var random = new Random(seed);
    var footprints = new Footprints();
    int[] shapes = Guillotine.cut(footprints, 400, 300, 8, random);
    var rack = new RackFit(footprints, 400, 300, 0);

    var layout = Objects.requireNonNull(rack.layout(shapes, 8));

    LayoutCheck.holds(layout, footprints, shapes, 400, 300, 0);
    shapes = Arrays.copyOf(shapes, 9);
    shapes[8] = footprints.number(1, 1);
    assertThat(rack.fits(shapes, 9)).isFalse();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void thirty_unlike_pans_find_room_where_a_quarter_is_left_over(long seed) {
    var random = new Random(seed);
    var footprints = new Footprints();
    int[] shapes = new int[30];
    long area = 0;
    for (int i = 0; i < shapes.length; i++) {
      shapes[i] = footprints.number(60 + random.nextInt(120), 60 + random.nextInt(120));
      area += (footprints.longSide(shapes[i]) + 10L) * (footprints.shortSide(shapes[i]) + 10L);
    }
    int side = (int) Math.ceil(Math.sqrt(area / 0.75)) - 10;
    var rack = new RackFit(footprints, side, side, 10);

    var layout = Objects.requireNonNull(rack.layout(shapes, shapes.length));

    LayoutCheck.holds(layout, footprints, shapes, side, side, 10);
  }

  private static int[] someShapes(
      Footprints footprints, Random random, int count, int width, int depth) {
    int[] shapes = new int[count];
    for (int i = 0; i < count; i++) {
      int side = 1 + random.nextInt(Math.max(1, width * 2 / 3));
      int other = 1 + random.nextInt(Math.max(1, depth * 2 / 3));
      shapes[i] = footprints.number(side, other);
    }
    return shapes;
  }

  /** Tries every place on the grid for one pan after the other. */
  private static final class EveryPlace {

    private final Footprints footprints;
    private final int[] shapes;
    private final int width;
    private final int depth;
    private final int gap;
    private final int[][] laid;

    EveryPlace(Footprints footprints, int[] shapes, int width, int depth, int gap) {
      this.footprints = footprints;
      this.shapes = shapes;
      this.width = width;
      this.depth = depth;
      this.gap = gap;
      laid = new int[shapes.length][];
    }

    boolean canSetDown(int pan) {
      if (pan == shapes.length) {
        return true;
      }
      int longer = footprints.longSide(shapes[pan]);
      int shorter = footprints.shortSide(shapes[pan]);
      return canSetDown(pan, longer, shorter)
          || (longer != shorter && canSetDown(pan, shorter, longer));
    }

    private boolean canSetDown(int pan, int across, int along) {
      for (int x = 0; x + across <= width; x++) {
        for (int y = 0; y + along <= depth; y++) {
          laid[pan] = new int[]{x, y, x + across, y + along};
          if (clearOfEarlier(pan) && canSetDown(pan + 1)) {
            return true;
          }
        }
      }
      return false;
    }

    private boolean clearOfEarlier(int pan) {
      for (int i = 0; i < pan; i++) {
        int[] one = laid[i];
        int[] other = laid[pan];
        if (one[0] < other[2] + gap
            && other[0] < one[2] + gap
            && one[1] < other[3] + gap
            && other[1] < one[3] + gap) {
          return false;
        }
      }
      return true;
    }
  }

  /** Cuts a sheet into pans by straight cuts from edge to edge. */
  private static final class Guillotine {

    private Guillotine() {}

    static int[] cut(Footprints footprints, int width, int depth, int count, Random random) {
      var pans = new ArrayList<int[]>();
      pans.add(new int[]{width, depth});
      while (pans.size() < count) {
        pans.sort((one, other) -> Integer.compare(other[0] * other[1], one[0] * one[1]));
        int[] largest = pans.remove(0);
        int across = largest[0] >= largest[1] ? 0 : 1;
        int at = largest[across] / 4 + random.nextInt(largest[across] / 2);
        for (int part : new int[]{at, largest[across] - at}) {
          int[] pan = largest.clone();
          pan[across] = part;
          pans.add(pan);
        }
      }
      return pans.stream().mapToInt(pan -> footprints.number(pan[0], pan[1])).toArray();
    }
  }
}
