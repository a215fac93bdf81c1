package ovenloom.model.tally;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.plan.Score;

/** Plans that no other beats: none has fewer minutes of hands and no more energy, or less energy and no more minutes. */
public final class Front {

  /**
   * One of them.
   *
   * @param hands minutes of all cooks in the hour before each course
   * @param energy tenths of a kilowatt-hour
   * @param alike how many more runs have just as much of both
   */
  public record Point(long hands, long energy, String name, Score score, long alike) {
    private Point withOneMore() {
      return new Point(hands, energy, name, score, alike + 1);
    }
  }

  /** From the fewest minutes on; each has less energy than the one before it. */
  private final TreeMap<Long, Point> byHands = new TreeMap<>();

  void add(Point point) {
    Map.Entry<Long, Point> fewer = byHands.floorEntry(point.hands());
    if (fewer == null || fewer.getValue().energy() > point.energy()) {
      byHands.tailMap(point.hands(), true).values().removeIf(other -> other.energy() >= point.energy());
      byHands.put(point.hands(), point);
    } else if (fewer.getKey() == point.hands() && fewer.getValue().energy() == point.energy()) {
      byHands.put(point.hands(), fewer.getValue().withOneMore());
    }
  }

  /** From the fewest minutes on. */
  public List<Point> points() {
    return List.copyOf(byHands.values());
  }
}
