package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.solver.timeline.RackFit;
import ovenloom.solver.timeline.SurfaceTimeline;
import ovenloom.solver.timeline.Timeline;

/**
 * Surfaces one above another, over time: the racks of an oven from the bottom up, or the shelves of a store from the top
 * down.
 */
final class Tiers {

  private final SurfaceTimeline[] surfaces;
  private final long[] clear;
  private final boolean tallReachesUp;
  private final long[] order;
  private final int[] orderFrom;
  private final int[] orderTo;
  private final int[] orderTier;
  private final int[] owners;
  private int ordered;
  private final List<Closing> closings = new ArrayList<>();
  private int blocker = Timeline.NOBODY;

  /**
   * Empty surfaces.
   *
   * @param clear how tall a vessel on each may be, micrometres
   * @param tallReachesUp whether a taller one closes the surfaces that follow, rather than not fitting at all
   */
  Tiers(int from, int to, List<RackFit> fits, long[] clear, boolean tallReachesUp) {
    surfaces = fits.stream().map(fit -> new SurfaceTimeline(from, to, fit)).toArray(SurfaceTimeline[]::new);
    this.clear = clear.clone();
    this.tallReachesUp = tallReachesUp;
    order = new long[MANY];
    orderFrom = new int[MANY];
    orderTo = new int[MANY];
    orderTier = new int[MANY];
    owners = new int[MANY];
  }

  private static final int MANY = 4096;

  private static final List<Piece> WITHOUT_A_VESSEL = List.of(
      new Piece(Piece.NO_ROOM, false, 0, BurnerSize.SMALL));

  private record Closing(int tier, int from, int to) {}

  /** Takes one of them for good, over a stretch. */
  void close(int tier, int from, int to) {
    surfaces[tier].close(from, to, Timeline.HOURS);
    surfaces[tier].keep();
    closings.add(new Closing(tier, from, to));
  }

  /**
   * Finds a surface for each piece over a stretch.
   *
   * @param tiers those that will do, the best first
   * @param requires the cooking temperature the food still asks for: in a store, what asks for more stands below
   * @return one for each piece, one in all for food without a vessel, or null if there is no room
   */
  int @Nullable [] room(
      int from, int to, List<Piece> pieces, List<Integer> tiers, long requires) {
    List<Piece> all = pieces.isEmpty() ? WITHOUT_A_VESSEL : pieces;
    int[] found = room(from, to, all, asListed(all), tiers, requires);
    return found == null && !areAlike(all) ? room(from, to, all, tallestFirst(all), tiers, requires) : found;
  }

  private static int[] asListed(List<Piece> pieces) {
    int[] order = new int[pieces.size()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    return order;
  }

  private static boolean areAlike(List<Piece> pieces) {
    for (Piece piece : pieces) {
      if (!piece.equals(pieces.getFirst())) {
        return false;
      }
    }
    return true;
  }

  private static int[] tallestFirst(List<Piece> pieces) {
    return IntStream.range(0, pieces.size())
        .boxed()
        .sorted(Comparator.comparingLong((Integer i) -> -pieces.get(i).height()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int @Nullable [] room(
      int from, int to, List<Piece> pieces, int[] order, List<Integer> tiers, long requires) {
    int[] found = new int[pieces.size()];
    int[] marks = mark();
    boolean all = true;
    for (int next = 0; next < found.length && all; next++) {
      int i = order[next];
      found[i] = tierFor(from, to, pieces.get(i), tiers, requires);
      all = found[i] >= 0;
      if (all) {
        stand(from, to, pieces.get(i), found[i]);
      }
    }
    rollback(marks);
    return all ? found : null;
  }

  /** Whether each piece has room on the surface named for it, over a stretch. */
  boolean hasRoom(int from, int to, List<Piece> pieces, int[] tiers, long requires) {
    int[] marks = mark();
    List<Piece> each = pieces.isEmpty() ? WITHOUT_A_VESSEL : pieces;
    boolean all = true;
    for (int i = 0; i < each.size() && all; i++) {
      all = tierFor(from, to, each.get(i), List.of(tiers[i]), requires) >= 0;
      if (all) {
        stand(from, to, each.get(i), tiers[i]);
      }
    }
    rollback(marks);
    return all;
  }

  /** Whether each piece alone has room on one of them while nothing else is there. */
  boolean admits(List<Piece> pieces) {
    return pieces.stream()
        .allMatch(piece -> IntStream.range(0, surfaces.length).anyMatch(tier -> admits(piece, tier)));
  }

  private boolean admits(Piece piece, int tier) {
    return piece.shape() == Piece.NO_ROOM
        || (topOf(piece, tier) < surfaces.length && surfaces[tier].admits(piece.shape()));
  }

  private int tierFor(int from, int to, Piece piece, List<Integer> tiers, long requires) {
    for (int tier : tiers) {
      if (fits(from, to, piece, tier) && (tallReachesUp || isInOrder(from, to, tier, requires))) {
        return tier;
      }
    }
    return -1;
  }

  private boolean fits(int from, int to, Piece piece, int tier) {
    if (piece.shape() == Piece.NO_ROOM) {
      return isOpen(from, to, tier);
    }
    int top = topOf(piece, tier);
    if (top >= surfaces.length) {
      return false;
    }
    for (int above = tier + 1; above <= top; above++) {
      if (!surfaces[above].isEmpty(from, to)) {
        return false;
      }
    }
    return surfaces[tier].fits(from, to, new int[]{piece.shape()}, 1);
  }

  private boolean isOpen(int from, int to, int tier) {
    for (Closing closing : closings) {
      if (closing.tier == tier && closing.from < to && from < closing.to) {
        return false;
      }
    }
    return true;
  }

  /** The last surface a piece closes; its own where it is not too tall; the number of them where it fits nowhere. */
  private int topOf(Piece piece, int tier) {
    long room = clear[tier];
    int top = tier;
    while (room < piece.height()) {
      top++;
      if (!tallReachesUp || top >= surfaces.length) {
        return surfaces.length;
      }
      room += clear[top];
    }
    return top;
  }

  private boolean isInOrder(int from, int to, int tier, long requires) {
    for (int i = 0; i < ordered; i++) {
      boolean meets = orderFrom[i] < to && from < orderTo[i];
      if (meets && Integer.signum(Integer.compare(tier, orderTier[i])) != Long.compare(requires, order[i])
          && !(tier != orderTier[i] && requires == order[i])) {
        return false;
      }
    }
    return true;
  }

  /** The latest start, not after this one and not before {@code floor}, with room for all pieces; or NONE. */
  int latestStart(
      int notAfter, int minutes, List<Piece> pieces, List<Integer> tiers, long requires, int floor) {
    int start = notAfter;
    blocker = Timeline.NOBODY;
    while (start >= floor) {
      if (room(start, start + minutes, pieces, tiers, requires) != null) {
        return start;
      }
      int next = lastMet(start, start + minutes);
      if (next == Timeline.NONE) {
        blocker = Timeline.HOURS;
        return next;
      }
      start = next - minutes;
    }
    return Timeline.NONE;
  }

  /** When the last that meets a stretch began, and whose it is. */
  private int lastMet(int from, int to) {
    int last = Timeline.NONE;
    for (Closing closing : closings) {
      if (closing.from < to && from < closing.to && closing.from > last) {
        last = closing.from;
        blocker = Timeline.HOURS;
      }
    }
    for (int i = 0; i < ordered; i++) {
      if (orderFrom[i] < to && from < orderTo[i] && orderFrom[i] > last) {
        last = orderFrom[i];
        blocker = owners[i];
      }
    }
    return last;
  }

  /** When the last other thing is put there within a stretch; not after its start, if none is. */
  int lastWantedBefore(int from, int to) {
    return Math.max(from, lastMet(from, to));
  }

  /** Who stood in the way of the last search. */
  int blocker() {
    return blocker;
  }

  /** Puts pieces where {@link #room} found it. */
  void take(int from, int to, List<Piece> pieces, int[] tiers, long requires, int owner) {
    for (int i = 0; i < tiers.length; i++) {
      int tier = tiers[i];
      if (i < pieces.size()) {
        stand(from, to, pieces.get(i), tier);
      }
      remember(from, to, tier, requires, owner);
    }
  }

  private void remember(int from, int to, int tier, long requires, int owner) {
    if (ordered < MANY) {
      orderFrom[ordered] = from;
      orderTo[ordered] = to;
      orderTier[ordered] = tier;
      owners[ordered] = owner;
      order[ordered++] = requires;
    }
  }

  private void stand(int from, int to, Piece piece, int tier) {
    if (piece.shape() == Piece.NO_ROOM) {
      return;
    }
    surfaces[tier].take(from, to, new int[]{piece.shape()}, 1, 0);
    for (int above = tier + 1; above <= topOf(piece, tier); above++) {
      surfaces[above].close(from, to, 0);
    }
  }

  /** Takes everything away again. */
  void clear() {
    ordered = 0;
    for (SurfaceTimeline surface : surfaces) {
      surface.clear();
    }
  }

  int size() {
    return surfaces.length;
  }

  private int[] mark() {
    int[] marks = new int[surfaces.length];
    for (int i = 0; i < marks.length; i++) {
      marks[i] = surfaces[i].mark();
    }
    return marks;
  }

  private void rollback(int[] marks) {
    for (int i = 0; i < marks.length; i++) {
      surfaces[i].rollback(marks[i]);
    }
  }
}
