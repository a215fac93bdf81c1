package ovenloom.model.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file of a name holds either what it held or all of what is written, whatever happens in between. */
public final class WholeFile {

  private WholeFile() {}

  /**
   * Writes it.
   *
   * @throws IOException where it cannot be written
   */
  public static void write(String text, Path file) throws IOException {
    Path beside = file.resolveSibling("." + file.getFileName() + ".part");
    try {
      Files.writeString(beside, text);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
