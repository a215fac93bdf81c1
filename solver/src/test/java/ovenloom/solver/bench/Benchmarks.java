package ovenloom.solver.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Measures the program sheet by sheet, tells each as it is done, and writes one table. Arguments: the folder for finished rows and for the table; {@code quick}
 * for each tenth row or {@code full} for all; then, if not all sheets are wanted, how the names of some begin.
 * {@code .ci/bench} calls it.
 */
public final class Benchmarks {

  private final Results results;
  private final boolean quick;

  private Benchmarks(Results results, boolean quick) {
    this.results = results;
    this.quick = quick;
  }

  public static void main(String[] arguments) throws Exception {
    List<String> words = List.of(arguments);
    Path folder = Path.of(words.get(0));
    Benchmarks all = new Benchmarks(Results.in(folder.resolve("results.txt")), isQuick(words.get(1)));
    List<String> wanted = words.subList(2, words.size());
    List<String> table = new ArrayList<>(List.of(Table.HEAD));
    for (Sheet sheet : Sheets.all()) {
      boolean isWanted = wanted.isEmpty() || wanted.stream().anyMatch(sheet.name()::startsWith);
      table.add(Table.line(sheet, isWanted ? all.measured(sheet) : List.of()));
      System.err.println(table.getLast());
    }
    Files.write(folder.resolve("table.md"), table);
  }

  private static boolean isQuick(String how) {
    return switch (how) {
      case "quick" -> true;
      case "full" -> false;
      default -> throw new IllegalArgumentException("\"" + how + "\" is neither quick nor full");
    };
  }

  private List<Measured> measured(Sheet sheet) throws InterruptedException, ExecutionException {
    List<Future<Measured>> running = new ArrayList<>();
    List<Measured> done = new ArrayList<>();
    try (ExecutorService desks = Executors.newFixedThreadPool(sheet.atOnce())) {
      for (Row row : sheet.rows(quick)) {
        running.add(desks.submit(() -> measured(sheet, row)));
      }
      for (Future<Measured> each : running) {
        done.add(each.get());
      }
    }
    return done;
  }

  private Measured measured(Sheet sheet, Row row) throws Exception {
    if (results.of(sheet, row) == null) {
      results.keep(sheet, row, row.measuring().call());
    }
    return Objects.requireNonNull(results.of(sheet, row));
  }
}
