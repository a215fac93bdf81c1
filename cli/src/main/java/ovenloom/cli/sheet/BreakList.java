package ovenloom.cli.sheet;

import java.util.Comparator;
import java.util.List;
import ovenloom.model.audit.Break;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;

/** Rules that a plan breaks, worst first. */
public final class BreakList {

  private BreakList() {}

  /** {@code it breaks 2 rules in 5 places}. */
  public static String count(List<Break> breaks) {
    long rules = breaks.stream().map(Break::rule).distinct().count();
    String all = rules == 1 ? "it breaks a rule" : "it breaks " + rules + " rules";
    return breaks.size() == rules ? all : all + " in " + breaks.size() + " places";
  }

  /**
   * Each with the rule's sentence, who is in it, when, and by how much.
   *
   * @param width of a line, in characters
   */
  public static String of(Event event, List<Break> breaks, int width) {
    Page page = new Page(width, false);
    Clock clock = new Clock(event.calendar());
    int number = 1;
    for (Break each : worstFirst(breaks)) {
      List<Line.Cell> cells = List.of(
          new Line.Cell(number++ + ".", Integer.toString(breaks.size()).length() + 1, false),
          new Line.Cell(words(each, clock), 0, false));
      page.row(cells);
    }
    return page.toString();
  }

  /** The first of them, of one at least. */
  static String worst(Event event, List<Break> breaks) {
    return words(worstFirst(breaks).getFirst(), new Clock(event.calendar()));
  }

  private static List<Break> worstFirst(List<Break> breaks) {
    return breaks.stream().sorted(Comparator.comparingLong(BreakList::weight).reversed()).toList();
  }

  private static String words(Break each, Clock clock) {
    Stretch when = each.when();
    String time = when == null ? "" : " " + stretch(when, clock) + ".";
    return each.sentence() + " " + String.join(" and ", each.who()) + ": " + each.what() + "." + time
        + " Off by "
        + amount(each.off(), each.unit()) + ".";
  }

  private static String stretch(Stretch when, Clock clock) {
    String from = clock.dayAndMonth(when.from()) + " " + clock.column(when.from());
    return when.minutes() <= 1 ? from : from + " to " + clock.time(when.to(), when.from());
  }

  private static String amount(long off, Break.Unit unit) {
    return switch (unit) {
      case MINUTES -> off + " min";
      case PIECES -> off == 1 ? "1 piece" : off + " pieces";
      case COOKS -> off == 1 ? "1 cook" : off + " cooks";
      case WATTS -> off + " W";
      case KELVINS -> off + " K";
      case MILLIMETRES -> off + " mm";
      case GRAMS -> new Mass(off * 1_000).written();
      case OPENINGS -> off == 1 ? "1 opening" : off + " openings";
      case POINTS -> off == 1 ? "1 point" : off + " points";
      case TIMES -> off == 1 ? "once" : off + " times";
    };
  }

  /** In minutes, roughly as hard to put right; only the order of the list hangs on it. */
  private static long weight(Break each) {
    return switch (each.unit()) {
      case MINUTES -> each.off();
      case PIECES, COOKS, TIMES -> each.off() * 30;
      case OPENINGS -> each.off() * 15;
      case KELVINS -> each.off();
      case MILLIMETRES -> each.off() / 10;
      case GRAMS -> each.off() / 100;
      case WATTS -> each.off() / 100;
      case POINTS -> 0;
    };
  }
}
