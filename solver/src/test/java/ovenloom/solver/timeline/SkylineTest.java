package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SkylineTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whichever_way_pans_are_laid_none_lies_on_another_or_over_the_edge(long seed) {
    var random = new Random(seed);
    var footprints = new Footprints();
    int[] shapes = new int[20];
    for (int i = 0; i < shapes.length; i++) {
      shapes[i] = footprints.number(1 + random.nextInt(9), 1 + random.nextInt(9));
    }
    var pieces = new Pieces(footprints, shapes, shapes.length, 0);
    int laid = 0;

    for (int way = 0; way < 4; way++) {
      var skyline = new Skyline(26, 30, pieces, way % 2 == 0);
      if (skyline.lay(pieces.kinds(), way < 2)) {
        LayoutCheck.holds(pieces.layout(shapes), footprints, shapes, 26, 30, 0);
        laid++;
      }
    }

    assertThat(laid).isPositive();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void pans_all_alike_fill_the_rack_to_the_last_one_whichever_way_they_are_laid(long seed) {
    var random = new Random(seed);
    var footprints = new Footprints();
    int across = 1 + random.nextInt(5);
    int along = 1 + random.nextInt(5);
    int[] shapes = new int[across * along];
    Arrays.fill(shapes, footprints.number(70, 70));
    var pieces = new Pieces(footprints, shapes, shapes.length, 0);

    for (int way = 0; way < 4; way++) {
      var skyline = new Skyline(70 * across, 70 * along, pieces, way % 2 == 0);
      assertThat(skyline.lay(pieces.kinds(), way < 2)).isTrue();
      LayoutCheck.holds(
          pieces.layout(shapes), footprints, shapes, 70 * across, 70 * along, 0);
      var tooShort = new Skyline(70 * across, 70 * along - 1, pieces, way % 2 == 0);
      assertThat(tooShort.lay(pieces.kinds(), way < 2)).isFalse();
    }
  }
}
