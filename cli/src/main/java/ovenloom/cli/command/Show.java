package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Glyphs;
import ovenloom.cli.sheet.Part;
import ovenloom.cli.sheet.PartSheet;
import ovenloom.cli.sheet.StripSheet;
import ovenloom.cli.sheet.View;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.plan.Plan;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "show", sortOptions = false, abbreviateSynopsis = true,
    description = "Prints a plan's run sheet again, all or a part of it, or keeps it as something else, once it has passed the audit.")
final class Show implements Callable<Integer> {

  private final Kit kit;

  @Parameters(paramLabel = "PLAN", description = "A plan that solve has written.")
  private Path file;

  @Option(names = "-o", paramLabel = "FILE", completionCandidates = Keepsake.Endings.class, description = {
      "Keep it here instead, as what the name's ending says.", "It may end in ${COMPLETION-CANDIDATES}."})
  private @Nullable Path output;

  @ArgGroup(validate = false, heading = "%nA part of it%n")
  private ViewOptions part = new ViewOptions();

  Show(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return switch (PlanFile.read(file)) {
      case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) ->
        output == null ? show(plan) : keep(plan, new Target(output));
    };
  }

  private int show(Plan plan) {
    Printer printer = new Printer(kit);
    if (part.asked().isEmpty()) {
      return printer.print(plan, file.toString());
    }
    if (part.isStrips()) {
      return printer.print(plan, file.toString(), () -> strips(plan));
    }
    return switch (part.part(plan.event(), kit.clock())) {
      case Asked.Wrong<Part>(var lines) -> Complaint.wrong(kit.err(), lines);
      case Asked.For<Part>(Part some) -> printer.print(plan, file.toString(),
          () -> PartSheet.of(plan, some, kit.terminal().width(), kit.terminal().colour()));
    };
  }

  private String strips(Plan plan) {
    Terminal terminal = kit.terminal();
    return StripSheet.of(plan, terminal.utf8() ? Glyphs.BLOCKS : Glyphs.ASCII, terminal.width(),
        terminal.colour());
  }

  private int keep(Plan plan, Target target) {
    Keepsake keepsake = Keepsake.called(target.path());
    if (keepsake == null) {
      return Complaint.wrong(kit.err(), "cannot tell what to make of " + target.path(),
          "Its name may end in " + String.join(", ", new Keepsake.Endings()) + ".");
    }
    boolean isOneCooks = part.asked().equals(List.of("--cook")) && keepsake.canBeOneCooks();
    if (!part.asked().isEmpty() && !isOneCooks) {
      return Complaint.wrong(kit.err(), target.path() + " would hold the whole plan",
          "Leave out -o, or " + String.join(" and ", part.asked()) + ".");
    }
    return switch (part.part(plan.event(), kit.clock())) {
      case Asked.Wrong<Part>(var lines) -> Complaint.wrong(kit.err(), lines);
      case Asked.For<Part>(Part some) -> keep(plan, target, keepsake, some.view());
    };
  }

  private int keep(Plan plan, Target target, Keepsake keepsake, View view) {
    String obstacle = target.obstacle();
    String cook = view instanceof View.OfCook(String name) ? name : null;
    return obstacle == null ? new Printer(kit).keep(plan, file.toString(), target, keepsake, cook)
        : Complaint.wrong(kit.err(), obstacle);
  }
}
