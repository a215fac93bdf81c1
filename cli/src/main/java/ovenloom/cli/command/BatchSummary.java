package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import ovenloom.model.file.WhatIf;
import ovenloom.solver.batch.Results;

/** What is written once a batch has ended, or was stopped: of all results there are. */
record BatchSummary(Kit kit, Path folder) {

  int write(WhatIf variations, Results results) throws IOException {
    kit.out().printf("%d of %d runs%n", results.count(), variations.size());
    return Answer.A_PLAN;
  }
}
