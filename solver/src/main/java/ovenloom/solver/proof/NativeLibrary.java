package ovenloom.solver.proof;

import com.sun.jna.Platform;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * CP-SAT's own code. OR-Tools unpacks it into the folder for temporary files, 70 MB at each start, and leaves it there; here it is taken
 * away again.
 */
public final class NativeLibrary {

  private static final String DOOR = "jniortools";

  /** Tried once, by whoever asks first. */
  private static final class Once {
    static final boolean LOADED = isThere();
  }

  private NativeLibrary() {}

  /** Loads it at the first call, a third of a second; false where this machine has none. */
  public static boolean isLoaded() {
    return Once.LOADED;
  }

  private static boolean isThere() {
    String packed = "ortools-" + Platform.RESOURCE_PREFIX + "/";
    URL jar = NativeLibrary.class.getClassLoader().getResource(packed);
    if (jar == null) {
      return false;
    }
    try {
      Path folder = Files.createTempDirectory("ovenloom");
      try {
        return isLoaded(unpacked(jar.toURI(), folder));
      } finally {
        delete(folder);
      }
    } catch (IOException | URISyntaxException noRoom) {
      return false;
    }
  }

  private static List<Path> unpacked(URI packed, Path folder) throws IOException {
    List<Path> unpacked = new ArrayList<>();
    try (FileSystem jar = FileSystems.newFileSystem(packed, Map.of());
        Stream<Path> libraries = Files.list(jar.provider().getPath(packed))) {
      for (Path library : libraries.toList()) {
        unpacked.add(Files.copy(library, folder.resolve(library.getFileName().toString())));
      }
    }
    return unpacked;
  }

  /** Where its door does not find what it needs beside it, that is loaded first. */
  private static boolean isLoaded(List<Path> libraries) {
    List<Path> others = new ArrayList<>(libraries);
    Path door = others.stream().filter(each -> each.toString().contains(DOOR)).findFirst().orElseThrow();
    others.remove(door);
    boolean isOpen = loads(door);
    while (!isOpen && others.removeIf(NativeLibrary::loads)) {
      isOpen = loads(door);
    }
    return isOpen;
  }

  private static boolean loads(Path library) {
    try {
      System.load(library.toString());
      return true;
    } catch (UnsatisfiedLinkError needsAnother) {
      return false;
    }
  }

  /** At once where a library in use may be deleted, else as the program ends. */
  private static void delete(Path folder) {
    try {
      deleteAll(folder);
    } catch (UncheckedIOException inUse) {
      Runtime.getRuntime().addShutdownHook(new Thread(() -> deleteAll(folder)));
    }
  }

  private static void deleteAll(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
