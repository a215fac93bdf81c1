package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * Rectangles to lay out, grown by the gap on the far and the right side, and where they came to
 * lie. Kinds are the distinct shapes among them, the largest first.
 */
final class Pieces {

  private final int[] shape;
  private final int[] countOfEach;
  private final int[] longSide;
  private final int[] shortSide;
  private final int count;

  private final int[] laidKind;
  private final int[] laidX;
  private final int[] laidY;
  private final boolean[] laidTurned;

  Pieces(Footprints footprints, int[] shapes, int count, int gap) {
    this.count = count;
    shape = Arrays.stream(shapes, 0, count)
        .distinct()
        .boxed()
        .sorted((one, other) -> Long.compare(footprints.area(other), footprints.area(one)))
        .mapToInt(Integer::intValue)
        .toArray();
    countOfEach = new int[shape.length];
    for (int i = 0; i < count; i++) {
      countOfEach[kindOf(shapes[i])]++;
    }
    longSide = Arrays.stream(shape).map(s -> footprints.longSide(s) + gap).toArray();
    shortSide = Arrays.stream(shape).map(s -> footprints.shortSide(s) + gap).toArray();
    laidKind = new int[count];
    laidX = new int[count];
    laidY = new int[count];
    laidTurned = new boolean[count];
  }

  private int kindOf(int wanted) {
    int kind = 0;
    while (shape[kind] != wanted) {
      kind++;
    }
    return kind;
  }

  int count() {
    return count;
  }

  int[] countOfEachKind() {
    return countOfEach.clone();
  }

  /** The kind of each piece, the largest first. */
  int[] kinds() {
    int[] kinds = new int[count];
    int next = 0;
    for (int kind = 0; kind < shape.length; kind++) {
      Arrays.fill(kinds, next, next + countOfEach[kind], kind);
      next += countOfEach[kind];
    }
    return kinds;
  }

  int longSide(int kind) {
    return longSide[kind];
  }

  int shortSide(int kind) {
    return shortSide[kind];
  }

  long area() {
    long area = 0;
    for (int kind = 0; kind < shape.length; kind++) {
      area += (long) countOfEach[kind] * longSide[kind] * shortSide[kind];
    }
    return area;
  }

  void lay(int place, int kind, int x, int y, boolean turned) {
    laidKind[place] = kind;
    laidX[place] = x;
    laidY[place] = y;
    laidTurned[place] = turned;
  }

  /** Where they lie, in the order in which these shapes were given. */
  Layout layout(int[] shapes) {
    Layout.Spot[] spots = new Layout.Spot[count];
    boolean[] given = new boolean[count];
    for (int i = 0; i < count; i++) {
      int kind = kindOf(shapes[i]);
      int place = 0;
      while (given[place] || laidKind[place] != kind) {
        place++;
      }
      given[place] = true;
      spots[i] = new Layout.Spot(laidX[place], laidY[place], laidTurned[place]);
    }
    return new Layout(Arrays.asList(spots));
  }
}
