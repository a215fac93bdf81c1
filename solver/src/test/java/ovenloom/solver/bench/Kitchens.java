package ovenloom.solver.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Extents;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.proof.WindowLoads;
import ovenloom.solver.search.BuiltAround;

/** Kitchens drawn by lot: how good the plans are, how soon there is one, and how many without one are told to have none. */
final class Kitchens {

  private static final Duration SHORT = Duration.ofSeconds(5);
  private static final Duration LONG = Duration.ofSeconds(30);

  /** Seeds of the search where it is short. */
  private static final int SEEDS = 5;

  /** Kitchens built around a plan with hardly any air: those whose seed ends in 9. */
  private static final int TIGHT = 20;
  private static final int TIGHTEST = 9;

  /** Of twenty sizes in turn, the largest are too seldom drawn. */
  private static final int SIZES = 20;
  private static final int SIZES_DRAWN = 16;
  private static final int MOST_STEPS = 120;

  /** Which of the words kept of a kitchen says what; between them, how long was searched. */
  private static final int POINTS = 0;
  private static final int BOUND = 2;

  /** Kept in the place of the best known plan: there may be none. */
  static final String NO_PLAN_KNOWN = "none";

  private Kitchens() {}

  static List<Sheet> sheets() {
    return List.of(
        sheet("kitchens to 60 steps, 5 s", () -> best(Drawn.Size.TO_60_STEPS, SHORT, SEEDS)),
        sheet("kitchens to 120 steps, 30 s", () -> best(Drawn.Size.TO_120_STEPS, LONG, 1)),
        sheet("kitchens of 250-300 steps, 30 s", () -> best(Drawn.Size.TO_300_STEPS, LONG, 1)),
        sheet("deck ovens, 250-300 steps, 30 s, against CP-SAT", Kitchens::againstTheFullModel),
        sheet("kitchens of 600 steps, seconds to the first plan", Kitchens::banquets),
        sheet("tight, to 120 steps, seconds to the first plan", Kitchens::tight),
        sheet("just impossible, refuted", Kitchens::impossible));
  }

  /** One at a time: the search itself takes both processors. */
  private static Sheet sheet(String name, Supplier<List<Row>> rows) {
    return new Sheet(name, 1, rows);
  }

  private static List<Row> best(Drawn.Size size, Duration time, int seeds) {
    References known = References.in(References.BEST_KNOWN);
    return Drawn.all(size)
        .stream()
        .filter(kitchen -> !known.of(kitchen.digest()).contains(NO_PLAN_KNOWN))
        .flatMap(
            kitchen -> LongStream.rangeClosed(1, seeds).mapToObj(seed -> best(kitchen, time, seed, known)))
        .toList();
  }

  private static Row best(Drawn kitchen, Duration time, long seed, References known) {
    return new Row(kitchen.digest() + " seed " + seed, () -> Planning.best(kitchen.event(), time, seed,
        kept(known, kitchen, POINTS), kept(known, kitchen, BOUND)));
  }

  private static double kept(References known, Drawn kitchen, int word) {
    List<String> words = known.of(kitchen.digest());
    return words.size() <= word || words.get(word).equals(NO_PLAN_KNOWN) ? Double.NaN
        : Double.parseDouble(words.get(word));
  }

  private static List<Row> againstTheFullModel() {
    References known = References.in(References.FULL_MODEL);
    return Drawn.forTheFullModel().stream().map(kitchen -> best(kitchen, LONG, 1, known)).toList();
  }

  private static List<Row> banquets() {
    return Drawn.all(Drawn.Size.OF_600_STEPS)
        .stream()
        .map(kitchen -> new Row(kitchen.digest(), () -> Planning.first(kitchen.event(), LONG, 1)))
        .toList();
  }

  private static List<Row> tight() {
    return LongStream.iterate(0, kitchen -> kitchen + 1)
        .filter(kitchen -> kitchen % SIZES < SIZES_DRAWN)
        .limit(TIGHT)
        .map(kitchen -> 10 * kitchen + TIGHTEST)
        .mapToObj(seed -> new Row("seed " + seed, () -> Planning.first(tight(seed), LONG, 1)))
        .toList();
  }

  private static Event tight(long seed) throws IOException {
    return inAFolder(folder -> BuiltAround.of(seed, MOST_STEPS, folder).event());
  }

  private static List<Row> impossible() {
    return Impossible.kept()
        .stream()
        .map(each -> new Row("seed " + each.seed(), () -> refuted(each)))
        .toList();
  }

  /** Told to be impossible, or nothing. */
  private static Measured refuted(Impossible kitchen) throws IOException {
    Event event = kitchen.event();
    long began = System.nanoTime();
    Extents extents = Extents.of(event);
    boolean isRefuted = WindowLoads.of(extents).isPresent() || clashes(new Proof(extents));
    return new Measured(isRefuted ? 1 : Measured.NOTHING, 1, Double.NaN, Planning.since(began));
  }

  private static boolean clashes(Proof proof) {
    proof.run();
    return proof.clash() != null;
  }

  interface InAFolder<T> {
    T of(Path folder) throws IOException;
  }

  static <T> T inAFolder(InAFolder<T> work) throws IOException {
    Path folder = Files.createTempDirectory("bench");
    try {
      return work.of(folder);
    } finally {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }
}
