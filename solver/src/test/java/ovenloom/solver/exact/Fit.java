package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;

/**
 * Whether vessels fit side by side, tried in every order in every corner.
 *
 * <p>With half the gap on either side of each vessel, and as much more room all around, none is kept.
 */
final class Fit {

  /** How many the contract judges exactly. */
  static final int MOST = 8;

  private record Box(long left, long front, long right, long back) {
    boolean meets(Box other) {
      return left < other.right && other.left < right && front < other.back && other.front < back;
    }
  }

  private final long width;
  private final long depth;
  private final long gap;
  private final Map<List<String>, Boolean> known = new HashMap<>();

  Fit(Length width, Length depth, Length gap) {
    this.gap = gap.micrometres();
    this.width = width.micrometres() + this.gap;
    this.depth = depth.micrometres() + this.gap;
  }

  boolean holds(List<Size> sizes) {
    List<String> key = sizes.stream().map(size -> size.width() + " x " + size.depth()).sorted().toList();
    return known.computeIfAbsent(key, each -> holds(sizes, new ArrayList<>()));
  }

  private boolean holds(List<Size> left, List<Box> placed) {
    if (left.isEmpty()) {
      return true;
    }
    for (int i = 0; i < left.size(); i++) {
      List<Size> rest = new ArrayList<>(left);
      Size next = rest.remove(i);
      long one = next.width().micrometres() + gap;
      long other = next.depth().micrometres() + gap;
      if (placed(one, other, rest, placed) || placed(other, one, rest, placed)) {
        return true;
      }
    }
    return false;
  }

  private boolean placed(long wide, long deep, List<Size> rest, List<Box> placed) {
    for (long left : corners(placed, true)) {
      for (long front : corners(placed, false)) {
        Box box = new Box(left, front, left + wide, front + deep);
        boolean fits = box.right <= width && box.back <= depth && placed.stream().noneMatch(box::meets);
        if (fits) {
          placed.add(box);
          boolean all = holds(rest, placed);
          placed.remove(box);
          if (all) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static List<Long> corners(List<Box> placed, boolean across) {
    List<Long> corners = new ArrayList<>(List.of(0L));
    placed.forEach(box -> corners.add(across ? box.right : box.back));
    return corners.stream().distinct().sorted().toList();
  }
}
