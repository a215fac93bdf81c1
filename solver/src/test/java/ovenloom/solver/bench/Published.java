package ovenloom.solver.bench;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where published problems and their best known values lie, if they lie here at all. */
public final class Published {

  private static final Path BENCHMARKS = Path.of("..", "..", "shared", "benchmarks");

  private Published() {}

  /** Whether they lie here; if not, says so on standard error. */
  public static boolean isHere() {
    boolean isHere = Files.isDirectory(BENCHMARKS);
    if (!isHere) {
      System.err.println("skipped: there is no " + BENCHMARKS.toAbsolutePath().normalize());
    }
    return isHere;
  }

  /** The lines of a file; the test that asks is skipped where there is none. */
  public static List<String> lines(String file) {
    Path path = BENCHMARKS.resolve(file);
    assumeTrue(Files.exists(path), "skipped: there is no " + path);
    return linesOutsideATest(file);
  }

  /** The lines of a file that has to be there. */
  public static List<String> linesOutsideATest(String file) {
    Path path = BENCHMARKS.resolve(file);
    try {
      return Files.readAllLines(path, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path, e);
    }
  }

  /** The rows of a table below its heading, split at commas, empty fields kept. */
  public static List<String[]> rows(String file) {
    return lines(file).stream().skip(1).map(line -> line.split(",", -1)).toList();
  }
}
