package ovenloom.solver.timeline;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Whether vessels fit together on one rack or shelf, each as it is or turned by 90 degrees.
 *
 * <p>All lengths are micrometres. The gap is kept between two vessels, from side to side or from
 * front to back, and not to the edge of the surface. Up to {@value #EXACT} vessels the answer is
 * exact; beyond, a yes comes with a layout, and a no may be wrong. Answers are remembered. Belongs
 * to one thread.
 */
public final class RackFit {

  /** So many vessels are judged exactly. */
  public static final int EXACT = 8;

  private static final int SHUFFLES = 60;
  private static final long TRIES_BEYOND_EXACT = 20_000;
  private static final int REMEMBERED = 1 << 16;

  private final Footprints footprints;
  private final int width;
  private final int depth;
  private final int gap;
  private final Map<ShapeBag, Boolean> answers = new HashMap<>();
  private final ShapeBag asked = new ShapeBag();

  /** A surface, and the gap to leave between two vessels on it; the shapes are shared. */
  public RackFit(Footprints footprints, int width, int depth, int gap) {
    if (width <= 0 || depth <= 0 || gap < 0) {
      throw new IllegalArgumentException(
          "a rack of " + width + " x " + depth + " with a gap of " + gap);
    }
    this.footprints = footprints;
    this.width = width;
    this.depth = depth;
    this.gap = gap;
  }

  /** Whether the first so many of these shapes fit together. */
  public boolean fits(int[] shapes, int count) {
    asked.fill(shapes, count);
    Boolean known = answers.get(asked);
    if (known == null) {
      known = layout(shapes, count) != null;
      if (answers.size() >= REMEMBERED) {
        answers.clear();
      }
      answers.put(asked.copy(), known);
    }
    return known;
  }

  /** A way for the first so many of these shapes to stand together, or null if none is found. */
  public @Nullable Layout layout(int[] shapes, int count) {
    Pieces pieces = new Pieces(footprints, shapes, count, gap);
    boolean tooMuch = pieces.area() > (long) (width + gap) * (depth + gap);
    if (!tooMuch && (bySkyline(pieces) || byCorners(pieces))) {
      return pieces.layout(shapes);
    }
    return null;
  }

  private boolean byCorners(Pieces pieces) {
    long tries = pieces.count() <= EXACT ? Long.MAX_VALUE : TRIES_BEYOND_EXACT;
    return new CornerSearch(width + gap, depth + gap, pieces).search(tries);
  }

  private boolean bySkyline(Pieces pieces) {
    int[] kinds = pieces.kinds();
    Skyline upright = new Skyline(width + gap, depth + gap, pieces, false);
    Skyline sideways = new Skyline(width + gap, depth + gap, pieces, true);
    Random random = new Random(pieces.count());
    int shuffles = pieces.count() <= EXACT ? 1 : SHUFFLES;
    for (int i = 0; i < shuffles; i++) {
      if (upright.lay(kinds, false)
          || upright.lay(kinds, true)
          || sideways.lay(kinds, false)
          || sideways.lay(kinds, true)) {
        return true;
      }
      swapTwo(kinds, random);
      swapTwo(kinds, random);
    }
    return false;
  }

  private static void swapTwo(int[] kinds, Random random) {
    int one = random.nextInt(kinds.length);
    int other = random.nextInt(kinds.length);
    int kind = kinds[one];
    kinds[one] = kinds[other];
    kinds[other] = kind;
  }

  /** Shapes regardless of order, to look up without making anything new. */
  private static final class ShapeBag {

    private int[] shapes = new int[16];
    private int count;

    void fill(int[] source, int howMany) {
      if (howMany > shapes.length) {
        shapes = new int[2 * howMany];
      }
      for (int i = 0; i < howMany; i++) {
        int place = i;
        while (place > 0 && shapes[place - 1] > source[i]) {
          shapes[place] = shapes[place - 1];
          place--;
        }
        shapes[place] = source[i];
      }
      count = howMany;
    }

    ShapeBag copy() {
      ShapeBag copy = new ShapeBag();
      copy.shapes = Arrays.copyOf(shapes, count);
      copy.count = count;
      return copy;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ShapeBag bag
          && Arrays.equals(shapes, 0, count, bag.shapes, 0, bag.count);
    }

    @Override
    public int hashCode() {
      int hash = 1;
      for (int i = 0; i < count; i++) {
        hash = 31 * hash + shapes[i];
      }
      return hash;
    }
  }
}
