package ovenloom.cli.lane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A place, a pair of hands or a kind of vessel over time.
 *
 * @param place the oven or store it is part of; of all else its own name
 * @param name as the kitchen has it; of a shelf without its store
 * @param boxes in the order of their start
 */
public record Lane(Kind kind, String place, String name, List<Box> boxes) {

  /** Of what. */
  public enum Kind {
    OVEN,
    BURNER,
    COOK,
    SHELF,
    VESSEL
  }

  public Lane {
    boxes = boxes.stream().sorted(Comparator.comparingInt(box -> box.when().from())).toList();
  }

  /** The same, each box in the first row that is free. */
  Lane stacked() {
    return new Lane(kind, place, name, stacked(boxes, 0));
  }

  /** The same, for one that has levels: the boxes of a level in rows of their own, above those of the levels below it. */
  Lane stackedByLevel() {
    List<Box> all = new ArrayList<>();
    int first = 0;
    for (int level : boxes.stream().map(Box::row).distinct().sorted().toList()) {
      List<Box> rows = stacked(boxes.stream().filter(box -> box.row() == level).toList(), first);
      first = rows.stream().mapToInt(Box::row).max().orElse(first) + 1;
      all.addAll(rows);
    }
    return new Lane(kind, place, name, all);
  }

  private static List<Box> stacked(List<Box> boxes, int first) {
    List<Box> stacked = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    for (Box box : boxes) {
      int row = 0;
      while (row < ends.size() && ends.get(row) > box.when().from()) {
        row++;
      }
      if (row == ends.size()) {
        ends.add(box.when().to());
      } else {
        ends.set(row, box.when().to());
      }
      stacked.add(box.inRow(first + row));
    }
    return stacked;
  }
}
