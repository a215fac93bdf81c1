package ovenloom.cli.compare;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.plan.Bound;
import ovenloom.model.variation.Standing;

/** What people compare of plans, figure by figure. */
final class Rows {

  private static final String NONE = "-";

  /** Dishes that are named; the rest are counted. */
  private static final int NAMED = 3;

  private final List<Contender> all;

  private Rows(List<Contender> all) {
    this.all = all;
  }

  static List<Row> of(List<Contender> all) {
    return new Rows(all).rows();
  }

  private List<Row> rows() {
    return List.of(
        new Row("Fits", all.stream().map(Rows::fits).toList()),
        row("Work begins", (clock, of) -> clock.time(of.figures().begins(), 0)),
        row("On the day", Rows::onTheDay),
        row("Hands, last hour", (clock, of) -> of.figures().handsInTheLastHour() + " min"),
        row("Hottest minute",
            (clock, of) -> clock.time(of.figures().hottest(), 0) + ", " + of.figures().atOnce() + " at once"),
        row("Too cool or too warm", (clock, of) -> astray(of)),
        row("Dial turns", (clock, of) -> Long.toString(of.figures().dialTurns())),
        row("Energy", (clock, of) -> energy(of.figures().energy())),
        row("At the table", (clock, of) -> grouped(of.plan().score().atTheTableInAll())),
        row("At the table, at least", (clock, of) -> proven(of, Bound::atTheTable)),
        row("Wishes", (clock, of) -> grouped(of.plan().score().wishes())),
        row("Wishes, at least", (clock, of) -> proven(of, Bound::wishes)));
  }

  private Row row(String label, BiFunction<Clock, Planned, String> cell) {
    return new Row(label, all.stream().map(each -> cell(each, cell)).toList());
  }

  private static String cell(Contender of, BiFunction<Clock, Planned, String> cell) {
    Planned planned = of.planned();
    return planned == null ? NONE : cell.apply(of.clock(), planned);
  }

  static String fits(Contender of) {
    return switch (of.standing()) {
      case Standing.Fits plan -> "a plan";
      case Standing.NoPlan() -> "no plan, proven";
      case Standing.NoneFound() -> "none found";
    };
  }

  private static String onTheDay(Clock clock, Planned of) {
    int begins = of.figures().onTheDay();
    return begins < 0 ? "no work" : clock.time(begins, 0);
  }

  private static String astray(Planned of) {
    Map<String, Long> tenths = Astray.tenths(of.plan());
    if (tenths.isEmpty()) {
      return "nothing";
    }
    Stream<String> named = tenths.entrySet()
        .stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(NAMED)
        .map(each -> each.getKey() + " " + Astray.words(each.getValue()));
    int more = tenths.size() - NAMED;
    return String.join(", ",
        Stream.concat(named, more > 0 ? Stream.of(more + " more") : Stream.of()).toList());
  }

  static String energy(long tenths) {
    return String.format(Locale.ENGLISH, "%.1f kWh", tenths / 10.0);
  }

  private static String proven(Planned of, ToLongFunction<Bound> points) {
    Bound bound = of.plan().bound();
    return bound == null ? "nothing" : grouped(points.applyAsLong(bound));
  }

  static String grouped(long points) {
    return String.format(Locale.ENGLISH, "%,d", points);
  }
}
