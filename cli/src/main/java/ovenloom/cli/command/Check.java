package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.BreakList;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.file.FileKind;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Axis;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "check", sortOptions = false, abbreviateSynopsis = true,
    description = "Says what is wrong with a problem or a what-if file, or holds a plan for it against every rule.")
final class Check implements Callable<Integer> {

  private final Kit kit;

  @Mixin
  private ProblemOptions problem;

  @Parameters(index = "1", arity = "0..1", paramLabel = "PLAN",
      description = "A plan made from it, to be audited.")
  private @Nullable Path file;

  Check(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return file == null && FileKind.of(problem.file()) == FileKind.WHAT_IF ? whatIf() : problem();
  }

  private int whatIf() {
    return switch (WhatIfFile.read(problem.file(), problem.root())) {
      case Reading.Mistaken<WhatIf>(var mistakes) -> Complaint.about(kit.err(), problem.file(), mistakes);
      case Reading.Understood<WhatIf>(WhatIf variations, var sources, var notes) -> understood(variations);
    };
  }

  private int understood(WhatIf variations) {
    StringBuilder text = new StringBuilder(problem.file() + " is understood: " + variations.name() + "\n"
        + variations.size() + (variations.size() == 1 ? " variation" : " variations") + " along:\n");
    for (Axis axis : variations.axes()) {
      text.append("  ")
          .append(axis.name())
          .append(": ")
          .append(String.join(", ", axis.choices()))
          .append('\n');
    }
    kit.out().print(Harmless.text(text.toString()));
    return Answer.A_PLAN;
  }

  private int problem() {
    return switch (problem.read()) {
      case Reading.Mistaken<Event>(var mistakes) ->
        Complaint.about(kit.err(), problem.file(), FileKind.PROBLEM, mistakes);
      case Reading.Understood<Event>(Event event, var sources, var notes) ->
        file == null ? understood(event, notes) : check(event, sources, notes, file);
    };
  }

  private int understood(Event event, List<Mistake> notes) {
    kit.out().print(new Understanding(event).text(problem.file().toString(), kit.terminal().width()));
    Notes.print(kit.out(), notes);
    return Answer.A_PLAN;
  }

  private int check(Event event, List<Plan.Source> sources, List<Mistake> notes, Path planFile) {
    return switch (PlanFile.read(planFile)) {
      case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), planFile, mistakes);
      case Reading.Understood<Plan>(Plan plan, var ownSources, var none) -> plan.event().equals(event)
          ? audit(event, notes, plan, planFile)
          : foreign(event, sources, plan, planFile);
    };
  }

  private int audit(Event event, List<Mistake> notes, Plan plan, Path planFile) {
    Notes.print(kit.err(), notes);
    List<Break> breaks = Audit.of(event, plan);
    if (breaks.isEmpty()) {
      kit.out().println(Harmless.text(planFile + " keeps all " + Audit.RULES.size() + " rules."));
      return Answer.A_PLAN;
    }
    kit.out().println(Harmless.text(planFile + " is no plan: " + BreakList.count(breaks)));
    kit.out().print(BreakList.of(event, breaks, kit.terminal().width()));
    return Answer.NO;
  }

  private int foreign(Event event, List<Plan.Source> sources, Plan plan, Path planFile) {
    String[] lines = {planFile + " was made from another event than " + problem.file(),
        new Difference(event, sources, plan).inWords(), "Solve it again, or give the file it was made from."};
    return Complaint.wrong(kit.err(), lines);
  }
}
