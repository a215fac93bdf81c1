package ovenloom.solver.exact;

import com.google.ortools.Loader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** CP-SAT's own code, which unpacks itself into the folder for temporary files and would stay there. */
final class NativeLibrary {

  private static final String FOLDER = "ortools-java";
  private static boolean loaded;

  private NativeLibrary() {}

  /** Loads it once, and takes what it unpacked away when the tests are over. */
  static synchronized void load() {
    if (loaded) {
      return;
    }
    List<Path> before = unpacked();
    Loader.loadNativeLibraries();
    List<Path> ours = unpacked().stream().filter(folder -> !before.contains(folder)).toList();
    Runtime.getRuntime().addShutdownHook(new Thread(() -> ours.forEach(NativeLibrary::delete)));
    loaded = true;
  }

  private static List<Path> unpacked() {
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    try (Stream<Path> all = Files.list(temporary)) {
      return all.filter(each -> each.getFileName().toString().startsWith(FOLDER)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
