package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.sheet.Words;
import ovenloom.model.menu.Event;

/**
 * A lane as it is drawn in a window.
 *
 * @param label what stands beside it
 * @param curve of an oven's dial; empty for all else
 */
public record Drawn(Event event, Lane lane, String label, List<Box> boxes, Dial curve) {

  static final int ROW = 24;
  static final int CURVE = 40;

  public Drawn {
    boxes = List.copyOf(boxes);
  }

  /** Pixels. */
  public int height() {
    return rows() * ROW + (curve.isEmpty() ? 0 : CURVE) + 2;
  }

  private int rows() {
    return boxes.stream().mapToInt(Box::row).max().orElse(0) + 1;
  }

  /** Pixels from the top of the lane; the racks of an oven from the bottom up. */
  public int top(Box box) {
    int row = lane.kind() == Lane.Kind.OVEN ? rows() - 1 - box.row() : box.row();
    return row * ROW + 1;
  }

  /** Pixels. */
  public int boxHeight() {
    return ROW - 3;
  }

  /** Pixels from the top of the lane to the top of the curve. */
  public int curveTop() {
    return rows() * ROW;
  }

  /** Pixels. */
  public int curveHeight() {
    return CURVE;
  }

  /** Classes of its rectangle: where it is, and whether work is done there. */
  public String style(Box box) {
    if (box.use() == Box.Use.BREAK) {
      return "break";
    }
    String place = lane.kind().name().toLowerCase(Locale.ROOT);
    return box.use() == Box.Use.WORK ? place + " work" : place;
  }

  /** What is laid over it so that no colour need be told; nothing over work. */
  public String pattern(Box box) {
    return switch (box.use()) {
      case WAIT -> "url(#hatch)";
      case WASH -> "url(#dots)";
      case WORK, FULL, BREAK -> "";
    };
  }

  /** What is written in it. */
  public String text(Box box) {
    return switch (box.use()) {
      case WORK -> lane.kind() == Lane.Kind.COOK ? box.dish() + ": " + box.step() : box.dish();
      case WAIT -> box.dish();
      case FULL -> box.count() == 1 ? box.dish() : box.count() + " x " + box.dish();
      case WASH -> "wash " + Words.counted(box.count(), box.dish());
      case BREAK -> "break";
    };
  }

  /** The same in full, for who points at it or listens. */
  public String told(Box box, Window window) {
    return label + ": " + box.dish() + step(box) + which(box) + " from "
        + window.clock().time(box.when().from(), window.when().from()) + " to "
        + window.clock().time(box.when().to(), window.when().from());
  }

  private static String step(Box box) {
    return switch (box.use()) {
      case WORK, FULL -> ", " + box.step();
      case WAIT -> ", waits after " + box.step();
      case WASH -> ", " + box.count() + " washed";
      case BREAK -> "break";
    };
  }

  /** Which batches, where it is not all of them. */
  private String which(Box box) {
    if (box.step().isEmpty() || box.batches().count() == event.dish(box.dish()).batches()) {
      return "";
    }
    return ", "
        + Words.batches(box.batches());
  }
}
