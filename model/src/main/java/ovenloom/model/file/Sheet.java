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
record Sheet(String name, Path path, String text, List<String> lines) {

  Sheet(String name, Path path, String text) {
    this(name, path, text, text.lines().toList());
  }

  Place first() {
    return place(0, 0, 1);
  }

  Place at(Mark mark) {
    return place(mark.getLine(), mark.getColumn(), 1);
  }

  /** From one mark to another, or to the end of the line where the other is on a later one. */
  Place between(Mark from, Mark to) {
    int rest = length(line(from.getLine()).stripTrailing()) - from.getColumn();
    int length = from.getLine() == to.getLine() ? to.getColumn() - from.getColumn() : rest;
    return place(from.getLine(), from.getColumn(), length);
  }

  /** What stands on a mark's line from the mark on. */
  String behind(Mark mark) {
    String line = line(mark.getLine());
    return mark.getColumn() >= length(line) ? ""
        : line.substring(line.offsetByCodePoints(0, mark.getColumn()));
  }

  private Place place(int line, int column, int length) {
    return new Place(name, line + 1, column + 1, line(line), Math.max(1, length));
  }

  private String line(int line) {
    return line < lines.size() ? lines.get(line) : "";
  }

  private static int length(String line) {
    return line.codePointCount(0, line.length());
  }
}
