package ovenloom.cli.command;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The folder that a file and all it names must be in. */
final class Root {

  private Root() {}

  /** What was asked for, or else the file's own. */
  static Path of(@Nullable Path asked, Path file) {
    Path own = file.toAbsolutePath().normalize().getParent();
    return asked != null ? asked : own == null ? file.toAbsolutePath() : own;
  }
}
