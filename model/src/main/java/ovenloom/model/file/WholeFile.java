package ovenloom.model.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file of a name holds either what it held or all of what is written, whatever happens in between. */
public final class WholeFile {

  private WholeFile() {}

  /** Writes all of it to another place first. */
  @FunctionalInterface
  public interface Writing {
    void to(Path file) throws IOException;
  }

  /**
   * Writes it.
   *
   * @throws IOException where it cannot be written
   */
  public static void write(String text, Path file) throws IOException {
    write(beside -> Files.writeString(beside, text), file);
  }

  /**
   * Writes it bit by bit.
   *
   * @throws IOException where it cannot be written
   */
  public static void write(Writing writing, Path file) throws IOException {
    Path beside = file.resolveSibling("." + file.getFileName() + ".part");
    try {
      writing.to(beside);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
