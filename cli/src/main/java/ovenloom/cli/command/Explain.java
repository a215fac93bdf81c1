package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.WhyNotSheet;
import ovenloom.cli.sheet.WhySheet;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.measure.Parsed;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.why.Holding;
import ovenloom.model.why.Trial;
import ovenloom.model.why.Trials;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "explain", sortOptions = false, abbreviateSynopsis = true,
    description = "Says what holds each step of a plan where it is, and what it would cost elsewhere.")
final class Explain implements Callable<Integer> {

  private final Kit kit;

  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan that solve has written.")
  private Path file;

  @Parameters(index = "1", arity = "0..1", paramLabel = "WHAT", description = {
      "A dish, a step, or a question like \"roast at 16:00\".",
      "Without it: what the score is made of, and all steps.",
      "Steps are called \"roast\", \"roast of Leg of lamb\" or \"roast of Leg of lamb (batch 2)\";",
      "times \"16:00\", of the same day, or \"day before 16:00\"."})
  private @Nullable String what;

  Explain(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return switch (PlanFile.read(file)) {
      case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) -> explain(plan);
    };
  }

  private int explain(Plan plan) {
    if (what == null) {
      return print(plan, plan.placements(), false);
    }
    Called called = new Called(plan);
    List<Placement> runs = called.runs(what);
    Question question = Question.of(what);
    if (!runs.isEmpty()) {
      return print(plan, runs, true);
    }
    return question == null ? unknown(called, what) : answer(called, question);
  }

  private int print(Plan plan, List<Placement> runs, boolean closely) {
    return new Printer(kit).print(plan, file.toString(), () -> {
      Trials trials = new Trials(plan);
      WhySheet sheet = new WhySheet(plan, kit.terminal().width(), kit.terminal().colour());
      return closely ? sheet.closely(runs.stream().map(run -> Holding.chain(trials, run)).toList())
          : sheet.all(runs.stream().map(run -> Holding.of(trials, run)).toList());
    });
  }

  private int answer(Called called, Question question) {
    List<Placement> runs = called.runs(question.name());
    if (runs.isEmpty()) {
      return unknown(called, question.name());
    }
    if (runs.size() > 1) {
      return Complaint.wrong(kit.err(), "\"" + question.name() + "\" is done more than once",
          "Say which: " + String.join(", ", runs.stream().map(called::full).toList()));
    }
    Placement run = runs.getFirst();
    return switch (question.minute(called.plan().event(), run)) {
      case Parsed.Bad<Integer> bad ->
        Complaint.wrong(kit.err(), "\"" + question.time() + "\" is no time",
            "Say \"" + question.name() + " at 16:00\", or \"" + question.name() + " at day before 16:00\".");
      case Parsed.Good<Integer>(Integer minute) -> answer(called.plan(), run, minute);
    };
  }

  private int answer(Plan plan, Placement run, int minute) {
    Trial trial = new Trials(plan).later(run, minute - run.when().from());
    int printed = new Printer(kit).print(plan, file.toString(),
        () -> WhyNotSheet.of(plan, run, trial, kit.terminal().width()));
    return printed == Answer.A_PLAN && !trial.keepsAllRules() ? Answer.NO : printed;
  }

  private int unknown(Called called, String name) {
    String nearest = called.nearest(name);
    List<String> dishes = called.plan()
        .placements()
        .stream()
        .map(Placement::dish)
        .distinct()
        .sorted()
        .toList();
    return Complaint.wrong(kit.err(), "there is no dish and no step \"" + name + "\" in " + file,
        nearest == null ? "Its dishes: " + String.join(", ", dishes) : "Did you mean \"" + nearest + "\"?");
  }
}
