package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;

/** Text in columns, wrapped at a width in characters. */
final class Page {

  private static final String BOLD = "\u001b[1m";
  private static final String PLAIN = "\u001b[0m";

  private final int width;
  private final boolean colour;
  private final StringBuilder text = new StringBuilder();

  Page(int width, boolean colour) {
    this.width = width;
    this.colour = colour;
  }

  int width() {
    return width;
  }

  Page blank() {
    text.append('\n');
    return this;
  }

  Page heading(String words) {
    for (String line : Wrapped.lines(words, width)) {
      text.append(colour ? BOLD + line + PLAIN : line).append('\n');
    }
    return this;
  }

  Page underlined(String words) {
    heading(words);
    return line("-".repeat(Math.min(width, Wrapped.length(words))));
  }

  Page line(String words) {
    Wrapped.lines(words, width).forEach(line -> text.append(line).append('\n'));
    return this;
  }

  /** A row of cells, the last of which takes what is left of the width. */
  Page row(List<Cell> cells) {
    List<List<String>> columns = new ArrayList<>();
    int left = width;
    for (int i = 0; i < cells.size(); i++) {
      boolean last = i == cells.size() - 1;
      columns.add(Wrapped.lines(cells.get(i).words(), last ? left : cells.get(i).width()));
      left -= cells.get(i).width() + Cell.GAP;
    }
    int lines = columns.stream().mapToInt(List::size).max().orElse(0);
    for (int line = 0; line < lines; line++) {
      text.append(line(cells, columns, line).stripTrailing()).append('\n');
    }
    return this;
  }

  private String line(List<Cell> cells, List<List<String>> columns, int line) {
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String words = line < columns.get(i).size() ? columns.get(i).get(line) : "";
      row.append(cells.get(i).bold() && colour && !words.isEmpty() ? BOLD + words + PLAIN : words);
      row.append(" ".repeat(Math.max(0, cells.get(i).width() - Wrapped.length(words)) + Cell.GAP));
    }
    return row.toString();
  }

  /** Words in a column; the last column's width does not matter. */
  record Cell(String words, int width, boolean bold) {
    static final int GAP = 2;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
