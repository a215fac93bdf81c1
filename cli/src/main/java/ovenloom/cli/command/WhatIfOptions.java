package ovenloom.cli.command;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which variations. */
final class WhatIfOptions {

  @Parameters(index = "0", paramLabel = "WHATIF", description = "A what-if file, in YAML or JSON.")
  private Path file;

  @Option(names = "--root", paramLabel = "DIR", description = {"Read files under DIR only.",
      "Without --root they must be in the folder of the what-if file."})
  private @Nullable Path root;

  Path file() {
    return file;
  }

  Reading<WhatIf> read() {
    return WhatIfFile.read(file, Root.of(root, file));
  }
}
