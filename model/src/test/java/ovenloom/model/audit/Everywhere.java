package ovenloom.model.audit;

import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.audit.Packing.Rectangle;

/** Packs a small rack by trying every place for every pan: slow, and plainly right. */
final class Everywhere {

  private record Put(long left, long front, long width, long depth) {

    boolean isApartFrom(Put other, long gap) {
      return left + width + gap <= other.left || other.left + other.width + gap <= left
          || front + depth + gap <= other.front || other.front + other.depth + gap <= front;
    }
  }

  private final List<Rectangle> pans;
  private final Rectangle rack;
  private final long gap;

  private Everywhere(List<Rectangle> pans, Rectangle rack, long gap) {
    this.pans = pans;
    this.rack = rack;
    this.gap = gap;
  }

  static boolean fits(List<Rectangle> pans, Rectangle rack, long gap) {
    return new Everywhere(pans, rack, gap).fits(List.of());
  }

  private boolean fits(List<Put> before) {
    if (before.size() == pans.size()) {
      return true;
    }
    Rectangle next = pans.get(before.size());
    return fits(before, next) || fits(before, next.turned());
  }

  private boolean fits(List<Put> before, Rectangle next) {
    for (long left = 0; left + next.width() <= rack.width(); left++) {
      for (long front = 0; front + next.depth() <= rack.depth(); front++) {
        Put put = new Put(left, front, next.width(), next.depth());
        if (before.stream().allMatch(other -> put.isApartFrom(other, gap)) && fits(with(before, put))) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<Put> with(List<Put> before, Put put) {
    return Stream.concat(before.stream(), Stream.of(put)).toList();
  }
}
