package ovenloom.model.file;

import java.nio.file.Path;
import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * The text of one file.
 *
 * @param name as it is called in messages
 * @param path where it really is
 */
record Sheet(String name, Path path, String text, List<Line> lines) {

  private static final Line NOTHING = new Line("");
  /** Enough of what stands behind a text to see what it is. */
  private static final int BEHIND = 80;

  Sheet(String name, Path path, String text) {
    this(name, path, text, text.lines().map(Line::new).toList());
  }

  Place first() {
    return place(0, 0, 1);
  }

  Place at(Mark mark) {
    return place(mark.getLine(), mark.getColumn(), 1);
  }

  /** From one mark to another, or to the end of the line where the other is on a later one. */
  Place between(Mark from, Mark to) {
    int end = from.getLine() == to.getLine() ? to.getColumn() : line(from.getLine()).length();
    return place(from.getLine(), from.getColumn(), end - from.getColumn());
  }

  /** What stands on a mark's line from the mark on, or the beginning of it. */
  String behind(Mark mark) {
    return line(mark.getLine()).from(mark.getColumn(), BEHIND);
  }

  private Place place(int line, int column, int length) {
    return new Place(name, line + 1, column + 1, line(line).text(), Math.max(1, length));
  }

  private Line line(int line) {
    return line < lines.size() ? lines.get(line) : NOTHING;
  }
}
