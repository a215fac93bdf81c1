package ovenloom.solver.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** What was measured so far, a line a row in a file: a second start goes on where the first was broken off. */
final class Results {

  private final Path file;
  private final Map<String, Measured> known = new ConcurrentHashMap<>();

  private Results(Path file) {
    this.file = file;
  }

  /** Those in the file, if there is one. A line that was cut short is left out. */
  static Results in(Path file) throws IOException {
    Results results = new Results(file);
    Files.createDirectories(file.toAbsolutePath().getParent());
    if (Files.exists(file)) {
      for (String line : Files.readString(file).split("(?<=\n)", -1)) {
        int end = line.indexOf('\t');
        if (end > 0 && line.endsWith("\n")) {
          results.known.put(line.substring(0, end), Measured.read(line.substring(end + 1).strip()));
        }
      }
    }
    return results;
  }

  @Nullable
  Measured of(Sheet sheet, Row row) {
    return known.get(key(sheet, row));
  }

  synchronized void keep(Sheet sheet, Row row, Measured measured) {
    known.put(key(sheet, row), measured);
    try {
      Files.writeString(file, key(sheet, row) + "\t" + measured.written() + "\n", StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String key(Sheet sheet, Row row) {
    return sheet.name() + ": " + row.name();
  }
}
