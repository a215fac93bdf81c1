package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.BoundText;
import ovenloom.cli.sheet.ClaimsText;
import ovenloom.cli.sheet.ClashText;
import ovenloom.model.file.FileKind;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.proof.Claim;
import ovenloom.solver.proof.Clash;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "solve", sortOptions = false, abbreviateSynopsis = true,
    description = "Finds a plan and prints its run sheet.")
final class Solve implements Callable<Integer> {

  private final Kit kit;

  @Mixin
  private ProblemOptions problem;

  @ArgGroup(validate = false, heading = "%nHow long to look%n")
  private SearchOptions search = new SearchOptions();

  private static final class Keeping {

    @Option(names = "-o", paramLabel = "PLAN", description = {"Write the plan here, as JSON.",
        "It holds the whole event; show prints it again, check holds it against the rules."})
    private @Nullable Path output;
  }

  @ArgGroup(validate = false, heading = "%nWhat to keep%n")
  private Keeping keeping = new Keeping();

  Solve(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    Target target = keeping.output == null ? null : new Target(keeping.output);
    String obstacle = target == null ? null : target.obstacle();
    if (obstacle != null) {
      return Complaint.wrong(kit.err(), obstacle);
    }
    return switch (problem.read()) {
      case Reading.Mistaken<Event>(var mistakes) ->
        Complaint.about(kit.err(), problem.file(), FileKind.PROBLEM, mistakes);
      case Reading.Understood<Event>(Event event, var sources, var notes) ->
        solve(event, sources, notes, target);
    };
  }

  private int solve(
      Event event, List<Plan.Source> sources, List<Mistake> notes, @Nullable Target target) {
    Notes.print(kit.err(), notes);
    return switch (new Planning(kit, search).of(event, sources, "")) {
      case Outcome.APlan(Plan plan) -> print(plan, target);
      case Outcome.TooMuch(Clash tooMuch) -> noPlan(ClashText.of(event, tooMuch, kit.terminal().width()));
      case Outcome.Clashing(List<Claim> claims) -> noPlan(ClaimsText.of(claims, kit.terminal().width()));
      case Outcome.NoneFound none -> new NoneFound(kit).print(event, none.found());
    };
  }

  private int print(Plan plan, @Nullable Target target) {
    int answer = new Printer(kit).print(plan, "what was found");
    if (answer == Answer.A_PLAN) {
      kit.out().print(BoundText.of(plan, kit.terminal().width()));
    }
    return answer == Answer.A_PLAN && target != null ? target.write(PlanFile.json(plan), kit.err())
        : answer;
  }

  private int noPlan(String why) {
    kit.err().println("ovenloom: there is no plan");
    kit.err().print(why);
    return Answer.NO;
  }
}
