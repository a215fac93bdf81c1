package ovenloom.solver.exact;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ovenloom.model.plan.Score;

/**
 * What was proven of a small kitchen, to be kept in a file: a proof takes longer than the search it is held against.
 *
 * @param kitchen its seed
 * @param text the hash of its problem file, so that nobody takes the proof of one supper for another's
 * @param isPossible whether there is a plan
 * @param atTheTable what the best plan loses at the table, 0 where there is none
 * @param wishes its points, 0 where there is none
 */
record Proof(long kitchen, int text, boolean isPossible, long atTheTable, long wishes) {

  /** Of the kitchens of SmallKitchensTest. */
  static final String SMALL = "proofs.txt";

  /** Of the kitchens of HeatKitchensTest. */
  static final String HEAT = "heat-proofs.txt";

  private static final Path SOURCE = Path.of("src/test/resources/ovenloom/solver/exact");

  static Proof of(long kitchen, String text, Answer answer) {
    return switch (answer) {
      case Answer.NoPlan() -> new Proof(kitchen, text.hashCode(), false, 0, 0);
      case Answer.Best(var plan) -> new Proof(
          kitchen, text.hashCode(), true, plan.score().atTheTableInAll(), plan.score().wishes());
    };
  }

  /** Whether a plan with this score is better than can be. */
  boolean isBeatenBy(Score found) {
    return !isPossible || found.atTheTableInAll() < atTheTable
        || (found.atTheTableInAll() == atTheTable && found.wishes() < wishes);
  }

  /** How many points a plan with this score, as good at the table as can be, is above the best; -1 where it is worse at the table. */
  long pointsAbove(Score found) {
    return found.atTheTableInAll() == atTheTable ? found.wishes() - wishes : -1;
  }

  /** Those kept in a file, by kitchen. */
  static Map<Long, Proof> kept(String file) {
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(
        Objects.requireNonNull(Proof.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
      return lines.lines()
          .filter(line -> !line.startsWith("#"))
          .map(Proof::read)
          .collect(Collectors.toMap(Proof::kitchen, Function.identity(), (one, other) -> one, TreeMap::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Keeps these in a file, and nothing else; a test has proven them. */
  static void keep(String file, Class<?> test, Collection<Proof> proofs) throws IOException {
    String head = """
        # The best there is in the small kitchens of %1$s, proven by CP-SAT (OR-Tools).
        # Made by: mvn -pl solver -am test -Dtest=%1$s -Dsurefire.failIfNoSpecifiedTests=false \
        -Dovenloom.proofs=write
        # kitchen, hash of its problem file, whether there is a plan, lost at the table, points of all wishes
        """.formatted(test.getSimpleName());
    Files.writeString(SOURCE.resolve(file),
        Stream.concat(Stream.of(head.strip()), proofs.stream().map(Proof::line))
            .collect(Collectors.joining("\n", "", "\n")));
  }

  private static Proof read(String line) {
    String[] words = line.split(" ", -1);
    return new Proof(
        Long.parseLong(words[0]),
        Integer.parseInt(words[1]),
        Boolean.parseBoolean(words[2]),
        Long.parseLong(words[3]),
        Long.parseLong(words[4]));
  }

  private String line() {
    return "%d %d %b %d %d".formatted(kitchen, text, isPossible, atTheTable, wishes);
  }
}
