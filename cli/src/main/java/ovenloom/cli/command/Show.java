package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "show", abbreviateSynopsis = true,
    description = "Prints a plan's run sheet again, once it has passed the audit.")
final class Show implements Callable<Integer> {

  private final Kit kit;

  @Parameters(paramLabel = "PLAN", description = "A plan that solve has written.")
  private Path file;

  Show(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return switch (PlanFile.read(file)) {
      case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) ->
        new Printer(kit).print(plan, file.toString());
    };
  }
}
