package ovenloom.solver.bench;

import java.time.Duration;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongPredicate;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import ovenloom.solver.place.InnerDecoder;
import ovenloom.solver.place.InnerProblem;

/** Published problems, put to the timelines the product books on. Where they do not lie here, there are no rows. */
final class Academic {

  private static final double NANOS = 1e9;
  private static final Duration A_MINUTE = Duration.ofMinutes(1);

  /** Searches of one problem, where it has a minute, on a processor each. */
  private static final int SIDE_BY_SIDE = 2;

  /** Plans kept either way, for few schedules and for many. */
  private static final int A_SMALL_CROWD = 50;
  private static final int A_LARGE_CROWD = 200;
  private static final long MANY = 20_000;

  private Academic() {}

  /** A line of a list of problems: its file, what no plan is shorter than, and the best that is known. */
  private record Problem(String file, int bound, int best) {}

  static List<Sheet> sheets() {
    return List.of(
        schedules("PSPLIB j30, 5,000 schedules", () -> psplib("j30"), 5_000),
        schedules("PSPLIB j30, 50,000 schedules", () -> psplib("j30"), 50_000),
        schedules("PSPLIB j60, 5,000 schedules", () -> psplib("j60"), 5_000),
        schedules("PSPLIB j60, 50,000 schedules", () -> psplib("j60"), 50_000),
        aMinute("rcpsp-hard30, 60 s", () -> subset("rcpsp-hard30", 1, 3), PsplibFile::read),
        aMinute("rcpsp-max30, 60 s", () -> subset("rcpsp-max30", 1, 2), ProGenMaxFile::read));
  }

  private static List<Problem> psplib(String set) {
    return Published.rows("rcpsp/bestknown-" + set + ".csv")
        .stream()
        .map(row -> problem("rcpsp/" + set + "/" + row[0] + ".sm", row[1], row[3]))
        .toList();
  }

  private static List<Problem> subset(String name, int bound, int best) {
    return Published.rows("subsets/" + name + ".csv")
        .stream()
        .map(row -> problem(row[0], row[bound], row[best]))
        .toList();
  }

  private static Problem problem(String file, String bound, String best) {
    return new Problem(file, Integer.parseInt(bound), Integer.parseInt(best));
  }

  private static Sheet schedules(String name, Supplier<List<Problem>> problems, long most) {
    int crowd = most < MANY ? A_SMALL_CROWD : A_LARGE_CROWD;
    return sheet(name, 2, problems, problem -> measured(problem, PsplibFile::read,
        inner -> search(problem, inner, crowd, 0, schedules -> schedules < most)));
  }

  private static Sheet aMinute(
      String name, Supplier<List<Problem>> problems, Function<List<String>, InnerProblem> reader) {
    return sheet(name, 1, problems, problem -> measured(problem, reader, inner -> {
      long end = System.nanoTime() + A_MINUTE.toNanos();
      return IntStream.range(0, SIDE_BY_SIDE)
          .parallel()
          .map(seed -> search(problem, inner, A_LARGE_CROWD, seed, schedules -> System.nanoTime() < end))
          .filter(length -> length != InnerDecoder.NO_PLAN)
          .min()
          .orElse(InnerDecoder.NO_PLAN);
    }));
  }

  private static Sheet sheet(
      String name, int atOnce, Supplier<List<Problem>> problems, Function<Problem, Measured> measuring) {
    return new Sheet(name, atOnce, () -> Published.isHere() ? problems.get()
        .stream()
        .map(each -> new Row(each.file(), () -> measuring.apply(each)))
        .toList() : List.of());
  }

  private static int search(Problem problem, InnerProblem inner, int crowd, int seed, LongPredicate goesOn) {
    return InnerSearch.find(inner, crowd, problem.bound(), problem.file().hashCode() + seed, goesOn);
  }

  private static Measured measured(
      Problem problem, Function<List<String>, InnerProblem> reader, ToIntFunction<InnerProblem> length) {
    InnerProblem inner = reader.apply(Published.linesOutsideATest(problem.file()));
    long began = System.nanoTime();
    int ours = length.applyAsInt(inner);
    return new Measured(
        ours == InnerDecoder.NO_PLAN ? Measured.NOTHING : ours,
        problem.best(),
        problem.bound(),
        (System.nanoTime() - began) / NANOS);
  }
}
