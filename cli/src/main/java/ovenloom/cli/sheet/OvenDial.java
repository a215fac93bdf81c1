package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Span;

/** What an oven's dial is set to. */
record OvenDial(Book book, String oven) {

  /** Just before a minute; nothing where it is off. */
  String words(int at) {
    List<Span> spans = book.plan()
        .ovens()
        .stream()
        .filter(log -> log.oven().equals(oven))
        .map(OvenLog::spans)
        .flatMap(List::stream)
        .toList();
    for (int i = 0; i < spans.size(); i++) {
      if (spans.get(i).when().from() < at && at <= spans.get(i).when().to()) {
        return words(spans.subList(i, spans.size()), at);
      }
    }
    return "";
  }

  private String words(List<Span> spans, int at) {
    Span now = spans.getFirst();
    Clock clock = new Clock(book.event().calendar());
    String mark = new Words(book.event().kitchen()).mode(oven, now.mode()) + now.mark().written();
    String ready = mark + " at " + clock.time(now.when().to(), at) + ".";
    return switch (now.doing()) {
      case WARMING -> "Warming: " + ready;
      case COOLING -> "Cooling: " + ready;
      case AT -> Words.capital(mark) + " until " + clock.time(end(spans), at) + ".";
    };
  }

  /** When the dial of the first is turned. */
  private static int end(List<Span> spans) {
    Span first = spans.getFirst();
    int end = first.when().to();
    for (Span next : spans.subList(1, spans.size())) {
      boolean isTurned = !next.mark().equals(first.mark()) || !next.mode().equals(first.mode());
      if (isTurned || next.when().from() != end) {
        return end;
      }
      end = next.when().to();
    }
    return end;
  }
}
