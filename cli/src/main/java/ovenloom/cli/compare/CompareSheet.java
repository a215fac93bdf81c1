package ovenloom.cli.compare;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.cli.sheet.Page;

/** A comparison for a terminal. */
public final class CompareSheet {

  private static final int LABEL = 22;

  /** How narrow a column may be; where there is no room for all, they come in groups, each with the first again. */
  private static final int COLUMN = 12;

  private final Comparison comparison;
  private final Page page;

  private CompareSheet(Comparison comparison, int width, boolean colour) {
    this.comparison = comparison;
    page = new Page(Math.max(Page.NARROWEST, width), colour);
  }

  /**
   * The figures side by side, then what is said of each.
   *
   * @param width of a line, in characters
   */
  public static String of(Comparison comparison, int width, boolean colour) {
    return new CompareSheet(comparison, width, colour).write().toString();
  }

  private Page write() {
    page.heading(comparison.title());
    if (!comparison.what().isEmpty()) {
      page.line(comparison.what());
    }
    groups().forEach(this::figures);
    page.blank();
    comparison.cautions().forEach(page::line);
    page.line(Comparison.LEGEND);
    comparison.said().forEach(this::say);
    return page;
  }

  /** Which columns stand side by side. */
  private List<List<Integer>> groups() {
    int others = Math.max(1, (page.width() - LABEL) / (COLUMN + Cell.GAP) - 1);
    List<List<Integer>> groups = new ArrayList<>();
    for (int from = 1; from < comparison.all().size(); from += others) {
      List<Integer> group = new ArrayList<>(List.of(0));
      for (int i = from; i < Math.min(from + others, comparison.all().size()); i++) {
        group.add(i);
      }
      groups.add(group);
    }
    return groups;
  }

  private void figures(List<Integer> columns) {
    page.blank();
    row("", comparison.names(), columns, true);
    comparison.rows().forEach(row -> row(row.label(), row.cells(), columns, false));
  }

  private void row(String label, List<String> words, List<Integer> columns, boolean isBold) {
    int width = (page.width() - LABEL - Cell.GAP) / columns.size() - Cell.GAP;
    List<Cell> cells = new ArrayList<>(List.of(new Cell(label, LABEL, false)));
    columns.forEach(column -> cells.add(new Cell(words.get(column), Math.max(1, width), isBold)));
    page.row(cells);
  }

  private void say(Said said) {
    String name = said.name();
    page.blank();
    for (String sentence : said.sentences()) {
      page.row(List.of(new Cell(name, LABEL, true), new Cell(sentence, 0, false)));
      name = "";
    }
  }
}
