package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.Plan;

/**
 * How hot an oven is by its dial, drawn: rising while it warms, level at a mark, gone while it is off.
 *
 * @param hottest C at the top of the drawing
 */
public record Dial(List<Run> runs, List<Mark> marks, long hottest) {

  private static final long HOTTEST = 300;

  /**
   * While it is on without a break.
   *
   * @param points for a polyline, minutes of the window across and C down from the hottest
   */
  public record Run(String points) {}

  private static long hottest(Plan plan, String oven) {
    return spans(plan, oven).stream()
        .mapToLong(span -> Math.round(span.mark().temperature().inCelsius()))
        .reduce(HOTTEST, Math::max);
  }

  /** As long as it is at one mark, and has come to it. */
  public record Mark(Stretch when, String words) {}

  public Dial {
    runs = List.copyOf(runs);
    marks = List.copyOf(marks);
  }

  static Dial none() {
    return new Dial(List.of(), List.of(), HOTTEST);
  }

  public boolean isEmpty() {
    return runs.isEmpty();
  }

  static Dial of(Plan plan, String oven, Stretch window) {
    double room = plan.event().kitchen().room().inCelsius();
    long hottest = hottest(plan, oven);
    List<Run> runs = new ArrayList<>();
    List<String> points = new ArrayList<>();
    double before = room;
    int end = Integer.MIN_VALUE;
    for (OvenLog.Span span : spans(plan, oven)) {
      if (span.when().from() != end && !points.isEmpty()) {
        runs.add(new Run(String.join(" ", points)));
        points.clear();
        before = room;
      }
      double mark = span.mark().temperature().inCelsius();
      double from = span.doing() == Doing.AT ? mark : before;
      points.add(point(span.when().from(), hottest - from, window));
      points.add(point(span.when().to(), hottest - mark, window));
      before = mark;
      end = span.when().to();
    }
    if (!points.isEmpty()) {
      runs.add(new Run(String.join(" ", points)));
    }
    boolean isSeen = spans(plan, oven).stream().anyMatch(span -> span.when().overlaps(window));
    return isSeen ? new Dial(runs, marks(plan, oven, window), hottest) : none();
  }

  private static List<Mark> marks(Plan plan, String oven, Stretch window) {
    return spans(plan, oven).stream()
        .filter(span -> span.doing() == Doing.AT && span.when().overlaps(window))
        .map(span -> new Mark(span.when(), span.mark().toString()))
        .toList();
  }

  private static List<OvenLog.Span> spans(Plan plan, String oven) {
    return plan.ovens()
        .stream()
        .filter(log -> log.oven().equals(oven))
        .flatMap(log -> log.spans().stream())
        .toList();
  }

  private static String point(int minute, double down, Stretch window) {
    return String.format(Locale.ROOT, "%d,%.0f", minute - window.from(), down);
  }
}
