package ovenloom.solver.search;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Score;

/**
 * Measures the search beside a plain loop over the same decoder, on one thread each, one after the other, and prints rows
 * of a table. Arguments: seconds for each, then problem files. {@code .ci/performance} calls it.
 */
public final class SearchSpeed {

  private static final double NANOS = 1e9;

  private SearchSpeed() {}

  /** When the first plan was there, how many schedules there were, and how good the best was. */
  private record Measured(double firstPlan, long schedules, Score best) {}

  public static void main(String[] arguments) throws IOException {
    Duration time = Duration.ofSeconds(Long.parseLong(arguments[0]));
    for (String file : List.of(arguments).subList(1, arguments.length)) {
      Path path = Path.of(file);
      Event event = read(path);
      search(event, Duration.ofSeconds(3));
      row(path, event, "Timefold", time, search(event, time));
      row(path, event, "bare loop", time, loop(event, time));
    }
  }

  private static Event read(Path file) throws IOException {
    return switch (ProblemFile.read(file, Path.of("").toAbsolutePath(), null)) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new IllegalArgumentException(mistakes.toString());
    };
  }

  private static Measured search(Event event, Duration time) {
    long began = System.nanoTime();
    double[] first = {Double.NaN};
    Found found = Search.find(event, List.of(), new Budget(time, null, 1, 1), (best, schedules, left) -> {
      if (Double.isNaN(first[0]) && best.breaks() == 0) {
        first[0] = since(began);
      }
    }, () -> false);
    return new Measured(first[0], found.schedules(), found.plan().score());
  }

  private static Measured loop(Event event, Duration time) {
    long began = System.nanoTime();
    double first = Double.NaN;
    BareLoop loop = new BareLoop(event, 1);
    while (since(began) < time.toSeconds()) {
      loop.step();
      first = Double.isNaN(first) && loop.best().breaks() == 0 ? since(began) : first;
    }
    return new Measured(first, loop.decoded(), loop.best());
  }

  private static double since(long began) {
    return (System.nanoTime() - began) / NANOS;
  }

  private static void row(Path file, Event event, String how, Duration time, Measured measured) {
    System.out.printf(
        Locale.ENGLISH,
        "| %s, %d steps | %s | %,d | %.1f s | %,d / %,d / %,d |%n",
        file.getFileName(),
        Work.of(event).steps().size(),
        how,
        measured.schedules() / time.toSeconds(),
        measured.firstPlan(),
        measured.best().breaks(),
        measured.best().atTheTableInAll(),
        measured.best().wishes());
  }
}
