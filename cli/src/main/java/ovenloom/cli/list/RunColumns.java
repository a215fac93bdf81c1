package ovenloom.cli.list;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.audit.score.Figures.Scarce;
import ovenloom.model.measure.Calendar;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;

/** The columns of the table of runs, in their order. */
public final class RunColumns {

  private static final int WATT_HOURS = 100;

  private final Calendar calendar;
  private final List<RunColumn> columns = new ArrayList<>();

  private RunColumns(Calendar calendar) {
    this.calendar = calendar;
  }

  /**
   * Those for runs that make a choice along each of these axes.
   *
   * @param calendar by which minutes are told as times of the clock
   */
  public static List<RunColumn> of(List<Axis> axes, Calendar calendar) {
    RunColumns all = new RunColumns(calendar);
    all.words("run", Result::run);
    all.answer();
    all.score();
    all.figures();
    all.columns.addAll(1, choices(axes, all.columns));
    return List.copyOf(all.columns);
  }

  /** Called after its axis; with something added where there is a column of that name. */
  private static List<RunColumn> choices(List<Axis> axes, List<RunColumn> others) {
    Set<String> taken = new HashSet<>();
    others.forEach(column -> taken.add(column.name()));
    List<RunColumn> choices = new ArrayList<>();
    for (Axis axis : axes) {
      String name = axis.name();
      while (!taken.add(name.toLowerCase(Locale.ROOT))) {
        name += " (choice)";
      }
      choices.add(new RunColumn(name, axis.isNumbers(), result -> result.choice(axis)));
    }
    return choices;
  }

  private void answer() {
    words("answer", result -> result.answer().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    words("why", result -> result.why() == null ? null : result.why().strip().replaceAll("\\s+", " "));
    words("decides", Result::decides);
  }

  private void score() {
    number("at the table", Result::score, Score::atTheTableInAll);
    number("at the table at least", Result::bound, Bound::atTheTable);
    number("wishes", Result::score, Score::wishes);
    number("wishes at least", Result::bound, Bound::wishes);
  }

  private void figures() {
    time("begins", Figures::begins);
    time("on the day", Figures::onTheDay);
    figure("hands on the day", Figures::handsOnTheDay);
    figure("hands in the last hour", Figures::handsInTheLastHour);
    time("hottest", Figures::hottest);
    figure("at once", Figures::atOnce);
    figure("dial turns", Figures::dialTurns);
    figure("energy Wh", figures -> figures.energy() * WATT_HOURS);
    for (Scarce scarce : Scarce.values()) {
      figure("busy " + scarce.name().toLowerCase(Locale.ROOT) + " %",
          figures -> figures.busy().getOrDefault(scarce, 0));
    }
  }

  /** As people say it, and as a number to sort by. */
  private void time(String name, ToIntFunction<Figures> minute) {
    words(name,
        result -> result.figures() == null ? null
            : clock(calendar, minute.applyAsInt(result.figures())));
    figure(name + " minute", minute::applyAsInt);
  }

  /** {@code 18:05}; {@code day before 16:30}. */
  static String clock(Calendar calendar, int minute) {
    LocalDateTime at = calendar.at(minute);
    long days = ChronoUnit.DAYS.between(calendar.day(), at.toLocalDate());
    String time = at.toLocalTime().toString();
    return days == 0 ? time : day(days) + " " + time;
  }

  private static String day(long days) {
    String side = days < 0 ? "day before" : "day after";
    long count = Math.abs(days);
    return count == 1 ? side : count + side.replaceFirst("day", " days");
  }

  private void words(String name, Function<Result, @Nullable String> cell) {
    columns.add(new RunColumn(name, false, cell));
  }

  private void figure(String name, ToLongFunction<Figures> figure) {
    number(name, Result::figures, figure);
  }

  private <T> void number(String name, Function<Result, @Nullable T> part, ToLongFunction<T> number) {
    columns.add(new RunColumn(name, true, result -> {
      T there = part.apply(result);
      return there == null ? null : Long.toString(number.applyAsLong(there));
    }));
  }
}
