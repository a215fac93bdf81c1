package ovenloom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.WholeFile;

/** Where something is to be written. */
record Target(Path path) {

  /** Why it cannot be written there, known before any work starts; null where nothing stands in the way. */
  @Nullable
  String obstacle() {
    Path folder = path.toAbsolutePath().normalize().getParent();
    if (Files.isDirectory(path) || folder == null) {
      return "cannot write " + path + ": it is a folder";
    }
    if (!Files.isDirectory(folder)) {
      return "cannot write " + path + ": there is no folder " + folder;
    }
    boolean isOpen = !Files.exists(path) || Files.isWritable(path);
    boolean isReplaced = isDevice() || Files.isWritable(folder);
    return isOpen && isReplaced ? null : "cannot write " + path + ": not allowed";
  }

  /** Whole or not at all; through a link, to what it leads to. A pipe or /dev/null is written to as it stands. */
  int write(String text, PrintWriter err) {
    try {
      if (isDevice()) {
        Files.writeString(path, text);
      } else {
        WholeFile.write(text, Files.exists(path) ? path.toRealPath() : path);
      }
      return Answer.A_PLAN;
    } catch (IOException trouble) {
      return Complaint.wrong(err, "cannot write " + path + ": " + reason(trouble));
    }
  }

  private boolean isDevice() {
    return Files.exists(path) && !Files.isRegularFile(path);
  }

  /** A file's trouble says little more than its name, which may be of no use to anybody. */
  static String reason(IOException trouble) {
    String reason = trouble instanceof FileSystemException file ? file.getReason() : trouble.getMessage();
    return reason == null ? "the system lets no file be made there" : reason;
  }
}
