package ovenloom.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Plan;

/** The files that may be read: those under one folder, links followed, and none larger than a menu needs. */
final class Folder {

  private final Path root;
  private final Limits limits;
  private final Map<Path, String> digests = new LinkedHashMap<>();

  /** By the way to each from another. */
  private final Map<Path, Opened.Open> before = new HashMap<>();

  /**
   * The files under a folder.
   *
   * @param limits of each
   * @throws IOException where there is no such folder
   */
  Folder(Path root, Limits limits) throws IOException {
    this.root = root.toRealPath();
    this.limits = limits;
  }

  /** What came of opening a file. */
  sealed interface Opened {
    record Open(Sheet sheet) implements Opened {}

    record Shut(Fault fault) implements Opened {}
  }

  /** Opens a file that is named beside another; one that was read is not read again, so that it is the same all the time. */
  Opened beside(Sheet sheet, String written) {
    Path folder = sheet.path().getParent();
    try {
      Path file = folder == null ? Path.of(written) : folder.resolve(written);
      Opened opened = before.get(file);
      if (opened == null) {
        opened = open(file, written, null);
      }
      if (opened instanceof Opened.Open open) {
        before.put(file, open);
      }
      return opened;
    } catch (InvalidPathException e) {
      return new Opened.Shut(new Fault.NoSuchFile(written, Fault.Obstacle.MISSING));
    }
  }

  /**
   * Opens a file.
   *
   * @param called its name in messages; null: as seen from the folder. Only files without one are judged by their path
   *     before anything is touched, so that nobody can ask what lies outside
   */
  Opened open(Path file, String written, @Nullable String called) {
    try {
      if (called == null && !file.normalize().startsWith(root)) {
        return shut(written, Fault.Obstacle.OUTSIDE);
      }
      Path real = file.toRealPath();
      if (!real.startsWith(root)) {
        return shut(written, Fault.Obstacle.OUTSIDE);
      }
      if (!Files.isRegularFile(real)) {
        return shut(written, Fault.Obstacle.UNREADABLE);
      }
      if (Files.size(real) > limits.bytes()) {
        return new Opened.Shut(new Fault.TooMuch("bytes", limits.bytes()));
      }
      return digests.size() >= limits.files() && !digests.containsKey(real)
          ? new Opened.Shut(new Fault.TooMuch("files", limits.files()))
          : read(real, called == null ? relative(real) : called);
    } catch (CharacterCodingException e) {
      return shut(written, Fault.Obstacle.NOT_TEXT);
    } catch (IOException e) {
      return shut(written, Files.exists(file) ? Fault.Obstacle.UNREADABLE : Fault.Obstacle.MISSING);
    }
  }

  /** Those of these files that were opened, with a digest of their bytes. */
  List<Plan.Source> sources(Set<Path> some) {
    return digests.entrySet()
        .stream()
        .filter(each -> some.contains(each.getKey()))
        .map(each -> new Plan.Source(relative(each.getKey()), each.getValue()))
        .toList();
  }

  private Opened read(Path real, String called) throws IOException {
    byte[] bytes = Files.readAllBytes(real);
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    digests.put(real, sha256(bytes));
    return new Opened.Open(new Sheet(called, real, text.startsWith("\ufeff") ? text.substring(1) : text));
  }

  private static Opened shut(String written, Fault.Obstacle trouble) {
    return new Opened.Shut(new Fault.NoSuchFile(written, trouble));
  }

  private String relative(Path real) {
    return root.relativize(real).toString().replace('\\', '/');
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java has SHA-256", e);
    }
  }
}
