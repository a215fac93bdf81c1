package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.sheet.Words;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/**
 * A lane as it is drawn in a window.
 *
 * @param label what stands beside it
 * @param rows those of its lane in which anything is, in rising order
 * @param curve of an oven's dial; empty for all else
 */
public record Drawn(Event event, Lane lane, String label, List<Integer> rows, List<Lettered> boxes,
    Dial curve) {

  static final int ROW = 24;
  static final int CURVE = 32;

  /** Of the words under a curve. */
  static final int WORDS = 14;

  public Drawn {
    rows = List.copyOf(rows);
    boxes = List.copyOf(boxes);
  }

  static Drawn of(Plan plan, Lane lane, Lettering lettering) {
    Stretch when = lettering.window().when();
    List<Box> seen = lane.boxes().stream().filter(box -> box.when().overlaps(when)).toList();
    List<Lettered> boxes = seen.stream()
        .map(box -> lettering.of(box, next(box, seen, when), forms(box, lane.kind())))
        .toList();
    Dial dial = lane.kind() == Lane.Kind.OVEN ? Dial.of(plan, lane.name(), lettering) : Dial.none();
    List<Integer> rows = seen.stream().map(Box::row).distinct().sorted().toList();
    return new Drawn(plan.event(), lane, label(plan.event(), lane), rows, boxes, dial);
  }

  private static String label(Event event, Lane lane) {
    Store store = lane.kind() == Lane.Kind.SHELF ? event.kitchen().store(lane.place()) : null;
    boolean isPart = store != null && store.shelves().size() > 1;
    return isPart ? lane.place() + ", " + lane.name() : lane.place();
  }

  /** When something else begins in a box's row. */
  private static int next(Box box, List<Box> seen, Stretch when) {
    return seen.stream()
        .filter(other -> other.row() == box.row() && other.when().from() >= box.when().to())
        .mapToInt(other -> other.when().from())
        .reduce(when.to(), Math::min);
  }

  /** What may be written of a box, the longest words first. */
  private static List<String> forms(Box box, Lane.Kind kind) {
    return switch (box.use()) {
      case WORK -> kind == Lane.Kind.COOK ? List.of(box.dish() + ": " + box.step(), box.dish())
          : List.of(box.dish());
      case WAIT -> List.of(box.dish());
      case FULL -> List.of(Words.counted(box.count(), box.dish()));
      case WASH -> List.of("wash " + Words.counted(box.count(), box.dish()), "wash");
      case BREAK -> List.of("break");
    };
  }

  /** Pixels. */
  public int height() {
    return curveTop() + (curve.isEmpty() ? 0 : CURVE + WORDS) + 2;
  }

  /** Pixels from the top of the lane; the racks of an oven from the bottom up. Rows in which nothing is are left out. */
  public int top(Box box) {
    int row = rows.indexOf(box.row());
    return (lane.kind() == Lane.Kind.OVEN ? rows.size() - 1 - row : row) * ROW + 1;
  }

  /** Pixels. */
  public int boxHeight() {
    return ROW - 3;
  }

  /** Pixels from the top of the lane to the top of the curve. */
  public int curveTop() {
    return Math.max(1, rows.size()) * ROW;
  }

  /** Pixels. */
  public int curveHeight() {
    return CURVE;
  }

  /** Pixels of it and of what is written under it. */
  public int curveWords() {
    return CURVE + WORDS;
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

  /** What it is, in full, for who points at it or listens. */
  public String told(Box box, Window window) {
    return label + ": " + box.dish() + step(box) + which(box) + window.told(box.when());
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
    return ", " + Words.batches(box.batches());
  }
}
