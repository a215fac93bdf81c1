package ovenloom.solver.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What was found out once and is kept: lines of words, the first of which is the {@link Digest} of an instance. */
final class References {

  /** Of kitchens; of those of which CP-SAT was told all rules; and of those that were made impossible. */
  static final String BEST_KNOWN = "best-known.txt";
  static final String FULL_MODEL = "full-model.txt";
  static final String IMPOSSIBLE = "just-impossible.txt";

  private final Path file;
  private final Map<String, List<String>> lines = new TreeMap<>();

  private References(Path file) {
    this.file = file;
  }

  /** Those of a file among the test's resources, seen from the folder of this module. */
  static References in(String name) {
    Path file = Path.of("src", "test", "resources", "ovenloom", "solver", "bench", name);
    References references = new References(file);
    try (Stream<String> all = Files.lines(file)) {
      all.filter(line -> !line.startsWith("#"))
          .map(line -> List.of(line.split(" ", -1)))
          .forEach(words -> references.lines.put(words.getFirst(), words.subList(1, words.size())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return references;
  }

  /** The words kept for an instance; none if nothing is known of it. */
  List<String> of(String digest) {
    return lines.getOrDefault(digest, List.of());
  }

  /** The words kept for all instances, in the order of their digests. */
  Stream<List<String>> all() {
    return lines.values().stream();
  }

  void keep(String digest, List<String> words) throws IOException {
    lines.put(digest, words);
    Files.writeString(file, digest + " " + String.join(" ", words) + "\n", StandardOpenOption.APPEND);
  }
}
