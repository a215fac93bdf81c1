package ovenloom.cli.list;

import java.util.regex.Pattern;

/** Words as they may stand in a cell without a spreadsheet making something else of them. */
final class Shown {

  /** What a spreadsheet would work out rather than show (OWASP, CSV injection). */
  private static final Pattern FORMULA = Pattern.compile("[=+\\-@\t\r].*", Pattern.DOTALL);

  /** What it would take for a date, for a fraction or for a number with less digits (common practice); an ISO date it may. */
  private static final Pattern MISREAD = Pattern
      .compile("\\d{16,}|(?!\\d{4}-\\d{2}-\\d{2}$)\\d+(?:[-/.,eE]\\d+)+");

  private static final String APOSTROPHE = "'";

  private Shown() {}

  static String withoutFormula(String cell) {
    return FORMULA.matcher(cell).matches() ? APOSTROPHE + cell : cell;
  }

  /** With an apostrophe before what would be misread, and before what has one itself, so that it can be taken away again. */
  static String asWords(String cell) {
    boolean isMisread = MISREAD.matcher(cell).matches() || cell.startsWith(APOSTROPHE);
    return isMisread ? APOSTROPHE + cell : withoutFormula(cell);
  }
}
