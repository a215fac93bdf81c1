package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.audit.Packing.Rectangle;

/**
 * The outline of what stands on a surface, seen from behind on the right: stairs that go down from the left wall.
 *
 * @param stairs from left to right, each less deep than the one before; the last one, of no depth, is left out
 */
record Outline(List<Stair> stairs) {

  /** From the right end of the stair before it to {@code right}, everything up to this depth is taken. */
  record Stair(long right, long depth) {}

  static final Outline EMPTY = new Outline(List.of());

  /** Where the stairs have their corners, of which there is one more than stairs. */
  private long leftOf(int corner) {
    return corner == 0 ? 0 : stairs.get(corner - 1).right();
  }

  private long frontOf(int corner) {
    return corner == stairs.size() ? 0 : stairs.get(corner).depth();
  }

  /** How much of a surface lies outside and can be reached by something that is at least so narrow. */
  long leftOf(Rectangle surface, long narrowest) {
    long front = stairs.stream()
        .filter(stair -> surface.width() - stair.right() < narrowest)
        .mapToLong(Stair::depth)
        .reduce(0, Math::max);
    long area = 0;
    for (int corner = 0; corner <= stairs.size(); corner++) {
      long right = corner == stairs.size() ? surface.width() : stairs.get(corner).right();
      if (surface.depth() - frontOf(corner) >= narrowest) {
        area += (right - leftOf(corner)) * (surface.depth() - Math.max(front, frontOf(corner)));
      }
    }
    return area;
  }

  /** Whether a rectangle finds room in one of the corners and does not stand out. */
  boolean hasRoomFor(Rectangle piece, Rectangle surface) {
    for (int corner = 0; corner <= stairs.size(); corner++) {
      if (hasRoomIn(corner, piece, surface)) {
        return true;
      }
    }
    return false;
  }

  private boolean hasRoomIn(int corner, Rectangle piece, Rectangle surface) {
    return leftOf(corner) + piece.width() <= surface.width()
        && frontOf(corner) + piece.depth() <= surface.depth();
  }

  /** The outlines there may be once it is put there. */
  List<Outline> with(Rectangle piece, Rectangle surface) {
    List<Outline> outlines = new ArrayList<>();
    for (int corner = 0; corner <= stairs.size(); corner++) {
      if (hasRoomIn(corner, piece, surface)) {
        outlines.add(with(new Stair(leftOf(corner) + piece.width(), frontOf(corner) + piece.depth())));
      }
    }
    return outlines;
  }

  private Outline with(Stair added) {
    List<Stair> all = new ArrayList<>();
    for (Stair stair : stairs) {
      if (stair.depth() > added.depth()) {
        all.add(stair);
      }
    }
    all.add(added);
    for (Stair stair : stairs) {
      if (stair.depth() <= added.depth() && stair.right() > added.right()) {
        all.add(stair);
      }
    }
    return new Outline(all);
  }
}
