package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.menu.Event;

/** Text in columns, wrapped at a width in characters. */
public final class Page {

  public static final int NARROWEST = 40;

  private final int width;
  private final boolean colour;
  private final List<Line> lines = new ArrayList<>();

  /** An empty one. */
  public Page(int width, boolean colour) {
    this.width = width;
    this.colour = colour;
  }

  /** With what the event is, for how many and when at its head. */
  static Page of(Event event, int width, boolean colour) {
    Title title = new Title(event);
    return new Page(Math.max(NARROWEST, width), colour).heading(title.name()).line(title.sentence());
  }

  public int width() {
    return width;
  }

  List<Line> lines() {
    return List.copyOf(lines);
  }

  public Page blank() {
    return with(new Line.Blank());
  }

  public Page heading(String words) {
    return with(new Line.Heading(words));
  }

  Page underlined(String words) {
    return with(new Line.Underlined(words));
  }

  public Page line(String words) {
    return with(new Line.Sentence(words));
  }

  public Page row(List<Line.Cell> cells) {
    return with(new Line.Row(cells));
  }

  private Page with(Line line) {
    lines.add(line);
    return this;
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (Line line : lines) {
      printed(line).forEach(each -> text.append(each).append('\n'));
    }
    return text.toString();
  }

  private List<String> printed(Line line) {
    return switch (line) {
      case Line.Blank() -> List.of("");
      case Line.Heading(String words) -> bold(words);
      case Line.Underlined(String words) -> underlinedWords(words);
      case Line.Sentence(String words) -> Wrapped.lines(words, width);
      case Line.Row(List<Line.Cell> cells) -> printed(cells);
    };
  }

  private List<String> bold(String words) {
    return Wrapped.lines(words, width).stream().map(each -> colour ? Ink.PLAIN.bold(each) : each).toList();
  }

  private List<String> underlinedWords(String words) {
    List<String> all = new ArrayList<>(bold(words));
    all.addAll(Wrapped.lines("-".repeat(Math.min(width, Wrapped.length(words))), width));
    return all;
  }

  private List<String> printed(List<Line.Cell> cells) {
    List<List<String>> columns = new ArrayList<>();
    int left = width;
    for (int i = 0; i < cells.size(); i++) {
      Line.Cell cell = cells.get(i);
      boolean last = i == cells.size() - 1;
      columns.add(filled(cell, Wrapped.lines(cell.words(), last ? left : cell.width())));
      left -= cell.width() + Line.Cell.GAP;
    }
    int most = columns.stream().mapToInt(List::size).max().orElse(0);
    List<String> rows = new ArrayList<>();
    for (int line = 0; line < most; line++) {
      rows.add(row(cells, columns, line).stripTrailing());
    }
    return rows;
  }

  /** Each line with what lies between it and the next column. */
  private List<String> filled(Line.Cell cell, List<String> lines) {
    List<String> inked = inked(cell, lines);
    return IntStream.range(0, lines.size())
        .mapToObj(line -> aligned(cell, inked.get(line), gap(cell, lines.get(line))))
        .toList();
  }

  private static String aligned(Line.Cell cell, String words, int gap) {
    int before = cell.right() ? gap - Line.Cell.GAP : 0;
    return " ".repeat(before) + words + " ".repeat(gap - before);
  }

  private static int gap(Line.Cell cell, String words) {
    return Math.max(0, cell.width() - Wrapped.length(words)) + Line.Cell.GAP;
  }

  private List<String> inked(Line.Cell cell, List<String> lines) {
    Ink ink = cell.ink();
    if (!colour) {
      return lines;
    }
    return ink == null ? Stress.inked(lines)
        : lines.stream().map(each -> cell.bold() ? ink.bold(each) : ink.on(each)).toList();
  }

  private static String row(List<Line.Cell> cells, List<List<String>> columns, int line) {
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      row.append(line < columns.get(i).size() ? columns.get(i).get(line) : " ".repeat(gap(cells.get(i), "")));
    }
    return row.toString();
  }
}
