package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.PlanFile;
import ovenloom.model.plan.Plan;

/** Where a plan is to be written. */
record PlanTarget(Path path) {

  /** Why it cannot be written there, known before the search starts; null where nothing stands in the way. */
  @Nullable
  String obstacle() {
    Path folder = path.toAbsolutePath().normalize().getParent();
    if (Files.isDirectory(path) || folder == null) {
      return "cannot write " + path + ": it is a folder";
    }
    if (!Files.isDirectory(folder)) {
      return "cannot write " + path + ": there is no folder " + folder;
    }
    boolean isOpen = Files.exists(path) ? Files.isWritable(path) : true;
    boolean isReplaced = isDevice() || Files.isWritable(folder);
    return isOpen && isReplaced ? null : "cannot write " + path + ": not allowed";
  }

  /** Whole or not at all; through a link, to what it leads to. A pipe or /dev/null is written to as it stands. */
  void write(Plan plan) throws IOException {
    if (isDevice()) {
      Files.writeString(path, PlanFile.json(plan));
    } else {
      PlanFile.write(plan, Files.exists(path) ? path.toRealPath() : path);
    }
  }

  private boolean isDevice() {
    return Files.exists(path) && !Files.isRegularFile(path);
  }
}
