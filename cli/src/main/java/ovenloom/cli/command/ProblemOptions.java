package ovenloom.cli.command;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which problem, and for how many. */
final class ProblemOptions {

  private static final class More {

    @Option(names = "--guests", paramLabel = "N", converter = AtLeastOne.class,
        description = {"Cook for N guests.",
            "Instead of what the file says; batches and minutes that scale follow."})
    private @Nullable Long guests;

    @Option(names = "--root", paramLabel = "DIR", description = {"Read files under DIR only.",
        "A problem may name files for its kitchen and dishes. Without --root they must be in the problem's folder."})
    private @Nullable Path root;
  }

  @Parameters(index = "0", paramLabel = "FILE", description = "The problem, in YAML or JSON.")
  private Path file;

  @ArgGroup(validate = false, heading = "%nWhat to cook%n")
  private More more = new More();

  Path file() {
    return file;
  }

  Path root() {
    return Root.of(more.root, file);
  }

  Reading<Event> read() {
    return ProblemFile.read(file, root(),
        more.guests == null ? null : more.guests.intValue());
  }
}
