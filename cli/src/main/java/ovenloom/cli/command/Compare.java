package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.command.Entrants.Entrant;
import ovenloom.cli.compare.CompareSheet;
import ovenloom.cli.compare.Comparison;
import ovenloom.cli.compare.Contender;
import ovenloom.cli.page.ComparePage;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Standing;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.search.Found;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "compare", sortOptions = false, abbreviateSynopsis = true,
    description = "Holds plans against each other, side by side: which is better, and what the change buys.")
final class Compare implements Callable<Integer> {

  private final Kit kit;

  @Parameters(arity = "1..*", paramLabel = "FILE",
      description = {"Plans of solve, problems to be planned now; or a what-if file.",
          "The others are compared with the first, or the first variation. Six at most."})
  private List<Path> files = List.of();

  @Option(names = "-o", paramLabel = "PAGE",
      description = {"Write it as a page, too, with pictures of the kitchen.",
          "One above another on one scale, and what is done otherwise. Its name ends in .html."})
  private @Nullable Path output;

  @Option(names = "--root", paramLabel = "DIR", description = {"Read files under DIR only.",
      "Without --root they must be in the folder of the file that names them."})
  private @Nullable Path root;

  @ArgGroup(validate = false, heading = "%nHow long to look, for each that is not planned yet%n")
  private SearchOptions search = new SearchOptions();

  Compare(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    Target target = output == null ? null : new Target(output);
    if (target != null && Keepsake.called(target.path()) != Keepsake.PAGE) {
      return Complaint.wrong(kit.err(), "cannot tell what to make of " + target.path(),
          "A comparison is kept as a page, whose name ends in .html.");
    }
    String obstacle = target == null ? null : target.obstacle();
    if (obstacle != null) {
      return Complaint.wrong(kit.err(), obstacle);
    }
    Entrants entrants = new Entrants(kit, root);
    int answer = entrants.read(files);
    return answer == Answer.A_PLAN ? compare(entrants, target) : answer;
  }

  private int compare(Entrants entrants, @Nullable Target target) {
    Notes.print(kit.err(), entrants.notes());
    List<Contender> all = new ArrayList<>();
    for (Entrant each : entrants.all()) {
      Outcome outcome = outcome(each);
      if (outcome instanceof Outcome.NoneFound(Found found) && found.isOurFault()) {
        return new NoneFound(kit).print(each.event(), found);
      }
      if (outcome instanceof Outcome.APlan(Plan plan) && !new Printer(kit).passes(plan, each.name())) {
        return Answer.NO;
      }
      all.add(Contender.of(each.name(), each.event(), outcome));
    }
    return print(new Comparison(entrants.title(), all), target);
  }

  private Outcome outcome(Entrant entrant) {
    Plan plan = entrant.plan();
    return plan != null ? new Outcome.APlan(plan)
        : new Planning(kit, search).of(entrant.event(), entrant.sources(), entrant.name());
  }

  private int print(Comparison comparison, @Nullable Target target) {
    if (kit.stop().getAsBoolean()) {
      kit.err().println("ovenloom: stopped; what was found until then is compared");
    }
    kit.out().print(CompareSheet.of(comparison, kit.terminal().width(), kit.terminal().colour()));
    int written = target == null ? Answer.A_PLAN : target.write(ComparePage.of(comparison), kit.err());
    return written == Answer.A_PLAN ? answer(comparison) : written;
  }

  /** One plan is enough to compare what has none with. */
  private static int answer(Comparison comparison) {
    if (!comparison.planned().isEmpty()) {
      return Answer.A_PLAN;
    }
    boolean isProven = comparison.all()
        .stream()
        .allMatch(each -> each.standing() instanceof Standing.NoPlan);
    return isProven ? Answer.NO : Answer.NONE_FOUND;
  }
}
