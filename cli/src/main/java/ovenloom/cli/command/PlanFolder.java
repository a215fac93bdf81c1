package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.WholeFile;
import ovenloom.model.plan.Plan;
import ovenloom.solver.batch.Attempt;

/** Where the plans of a batch are kept, each called by its run. */
record PlanFolder(Path path) implements Attempt.Keeping {

  @Override
  public void keep(String run, Plan plan) throws IOException {
    WholeFile.write(PlanFile.json(plan), file(run));
  }

  /** Of how many of these runs a plan is here. */
  long count(List<String> runs) {
    return runs.stream().filter(run -> Files.exists(file(run))).count();
  }

  private Path file(String run) {
    return path.resolve(run + ".json");
  }
}
