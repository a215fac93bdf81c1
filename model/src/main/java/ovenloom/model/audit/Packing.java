package ovenloom.model.audit;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Whether rectangles find room side by side on a surface, turned by a quarter or not. Exact: whatever way they can stand,
 * they can be taken away one by one, each straight back and to the right, past those still there; so they can be put down
 * in the opposite order, each slid to the left and to the front until it rests in a corner of the outline of those there
 * before. All such orders and corners are tried.
 *
 * <p>A gap is part of each rectangle, behind it and to its right, and of the surface too: so it is kept between
 * neighbours and not to the wall.
 */
final class Packing {

  /** Beyond so many, trying takes too long. */
  static final int MOST = 8;

  /** Two sides, in micrometres. */
  record Rectangle(long width, long depth) {

    Rectangle turned() {
      return new Rectangle(/* width= */ depth, /* depth= */ width);
    }

    Rectangle grownBy(long gap) {
      return new Rectangle(width + gap, depth + gap);
    }

    long area() {
      return width * depth;
    }
  }

  /** @param left a bit for each piece that is not placed yet */
  private record State(int left, Outline outline) {}

  private final List<Rectangle> pieces;
  private final Rectangle surface;
  private final Set<State> hopeless = new HashSet<>();

  private Packing(List<Rectangle> pieces, Rectangle surface) {
    this.pieces = pieces;
    this.surface = surface;
  }

  /** Whether all of them do, with a gap between neighbours. */
  static boolean fits(List<Rectangle> pieces, Rectangle surface, long gap) {
    List<Rectangle> largestFirst = pieces.stream()
        .map(piece -> (piece.width() < piece.depth() ? piece.turned() : piece).grownBy(gap))
        .sorted(Comparator.comparingLong(Rectangle::area).thenComparingLong(Rectangle::width).reversed())
        .toList();
    int all = (1 << pieces.size()) - 1;
    return new Packing(largestFirst, surface.grownBy(gap)).fits(new State(all, Outline.EMPTY));
  }

  private boolean fits(State state) {
    if (state.left() == 0) {
      return true;
    }
    if (isTooMuch(state) || !hopeless.add(state)) {
      return false;
    }
    return IntStream.range(0, pieces.size())
        .filter(piece -> isNext(state, piece))
        .anyMatch(piece -> fits(state, piece));
  }

  /** Of pieces that are alike, the first one left. */
  private boolean isNext(State state, int piece) {
    boolean likeTheOneBefore = piece > 0 && pieces.get(piece).equals(pieces.get(piece - 1));
    return isLeft(state, piece) && !(likeTheOneBefore && isLeft(state, piece - 1));
  }

  private static boolean isLeft(State state, int piece) {
    return (state.left() & 1 << piece) != 0;
  }

  /** What lies inside the outline is never used again, nor what is too narrow for all that is left. */
  private boolean isTooMuch(State state) {
    long area = 0;
    long narrowest = Long.MAX_VALUE;
    for (int piece = 0; piece < pieces.size(); piece++) {
      if (isLeft(state, piece)) {
        area += pieces.get(piece).area();
        narrowest = Math.min(narrowest, pieces.get(piece).depth());
        if (!hasRoom(state.outline(), piece)) {
          return true;
        }
      }
    }
    return area > state.outline().leftOf(surface, narrowest);
  }

  private boolean hasRoom(Outline outline, int piece) {
    Rectangle next = pieces.get(piece);
    return outline.hasRoomFor(next, roomFor(piece, next))
        || outline.hasRoomFor(next.turned(), roomFor(piece, next.turned()));
  }

  private boolean fits(State state, int piece) {
    Rectangle next = pieces.get(piece);
    return put(state, piece, next) || (next.width() != next.depth() && put(state, piece, next.turned()));
  }

  private boolean put(State state, int piece, Rectangle next) {
    int left = state.left() & ~(1 << piece);
    return state.outline()
        .with(next, roomFor(piece, next))
        .stream()
        .anyMatch(grown -> fits(new State(left, grown)));
  }

  /** In a mirror what fits still fits: so the middle of the largest, if it is the only one so large, is left and in front. */
  private Rectangle roomFor(int piece, Rectangle next) {
    boolean only = piece == 0 && (pieces.size() == 1 || !pieces.get(1).equals(pieces.get(0)));
    return only ? new Rectangle((surface.width() + next.width()) / 2, (surface.depth() + next.depth()) / 2)
        : surface;
  }
}
