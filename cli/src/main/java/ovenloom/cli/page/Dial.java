package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;
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

  /**
   * As long as it is at one mark, or on its way to it.
   *
   * @param words that stand under it; none where there is no room, or nothing to say
   * @param told the same in full
   */
  public record Mark(Stretch when, String words, String told) {}

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

  static Dial of(Plan plan, String oven, Lettering lettering) {
    List<Span> spans = spans(plan, oven);
    List<Mark> marks = marks(spans, lettering);
    if (marks.isEmpty()) {
      return none();
    }
    long hottest = hottest(spans);
    double room = plan.event().kitchen().room().inCelsius();
    return new Dial(runs(spans, hottest, room, lettering.window().when()), marks, hottest);
  }

  private static long hottest(List<Span> spans) {
    return spans.stream().mapToLong(span -> Math.round(celsius(span))).reduce(HOTTEST, Math::max);
  }

  private static List<Run> runs(List<Span> spans, long hottest, double room, Stretch window) {
    List<Run> runs = new ArrayList<>();
    List<String> points = new ArrayList<>();
    double last = room;
    int end = Integer.MIN_VALUE;
    for (Span span : spans) {
      if (span.when().from() != end) {
        add(runs, points);
        last = room;
      }
      double from = span.doing() == Doing.AT ? celsius(span) : last;
      points.add(point(span.when().from(), hottest - from, window));
      points.add(point(span.when().to(), hottest - celsius(span), window));
      last = celsius(span);
      end = span.when().to();
    }
    add(runs, points);
    return runs;
  }

  private static void add(List<Run> runs, List<String> points) {
    if (!points.isEmpty()) {
      runs.add(new Run(String.join(" ", points)));
      points.clear();
    }
  }

  private static List<Mark> marks(List<Span> spans, Lettering lettering) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < spans.size(); i++) {
      Span span = spans.get(i);
      if (span.when().overlaps(lettering.window().when())) {
        int until = next(spans.subList(i + 1, spans.size()));
        List<String> forms = forms(span, preheat(spans, i), lettering.window());
        marks.add(new Mark(span.when(), lettering.line(span.when().from(), until, forms),
            told(span, lettering.window())));
      }
    }
    return marks;
  }

  /** When an oven comes to a mark again. */
  private static int next(List<Span> later) {
    return later.stream()
        .filter(span -> span.doing() == Doing.AT)
        .mapToInt(span -> span.when().from())
        .findFirst()
        .orElse(Integer.MAX_VALUE);
  }

  /** How a cold oven came to a mark; null where it was warm before. */
  private static @Nullable Span preheat(List<Span> spans, int at) {
    Span before = at == 0 ? null : spans.get(at - 1);
    boolean isFirst = before != null && before.doing() == Doing.WARMING
        && (at == 1 || spans.get(at - 2).when().to() < before.when().from());
    return isFirst ? before : null;
  }

  /** Under what slopes stands nothing; when it was switched on is said once it is hot. */
  private static List<String> forms(Span span, @Nullable Span preheat, Window window) {
    if (span.doing() != Doing.AT) {
      return List.of();
    }
    String mark = span.mark().toString();
    return preheat == null ? List.of(mark)
        : List.of(mark + ", on at " + window.clock().column(preheat.when().from()), mark);
  }

  private static String told(Span span, Window window) {
    String doing = switch (span.doing()) {
      case WARMING -> "warms to ";
      case COOLING -> "cools to ";
      case AT -> "at ";
    };
    return doing + span.mark() + window.told(span.when());
  }

  private static List<Span> spans(Plan plan, String oven) {
    return plan.ovens()
        .stream()
        .filter(log -> log.oven().equals(oven))
        .map(OvenLog::spans)
        .flatMap(List::stream)
        .toList();
  }

  private static double celsius(Span span) {
    return span.mark().temperature().inCelsius();
  }

  private static String point(int minute, double down, Stretch window) {
    return String.format(Locale.ROOT, "%d,%.0f", minute - window.from(), down);
  }
}
