package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.WhyNot;
import ovenloom.model.file.FileKind;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.batch.Attempt;
import ovenloom.solver.batch.Digest;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.batch.Results;
import ovenloom.solver.batch.Run;
import ovenloom.solver.batch.Runner;
import ovenloom.solver.search.Budget;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "batch", sortOptions = false, abbreviateSynopsis = true,
    description = "Plans every variation of a what-if file, and goes on where it was stopped.")
final class Batch implements Callable<Integer> {

  private static final int A_LINE = 120;

  private final Kit kit;

  @Mixin
  private WhatIfOptions whatIf;

  @Option(names = "-o", paramLabel = "DIR", required = true,
      description = {"Keep the results in this folder.",
          "results.jsonl has a line for each run as soon as it is done; runs.csv and runs.html tell of all in the end. Started again with the same folder, what is there is not done again."})
  private Path folder = Path.of("");

  private static final class EachRun {

    @Option(names = "--tries", paramLabel = "N", converter = AtLeastOne.class,
        description = {"Try N schedules. Default: 1000, unless --for is given.",
            "With tries alone, a result is the same on any machine and whenever it is done."})
    private @Nullable Long tries;

    @Option(names = "--for", paramLabel = "TIME", converter = TimeOption.class,
        description = {"Look for so long: 2s, 1min.", "With both, what ends first."})
    private @Nullable Duration time;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
        description = {"Begin with the random number N.", "Each run is one search. Default: 1."})
    private long seed;

    @Option(names = "--warm", description = {"Begin from the plan of the event as it is.",
        "It is planned first; nothing hangs on the order in which runs are done."})
    private boolean warm;
  }

  @ArgGroup(validate = false, heading = "%nEach run%n")
  private EachRun each = new EachRun();

  private static final class Working {

    @Option(names = "--plans", description = {"Keep each plan, in DIR/plans.",
        "It is called by what its result has as \"run\". Plans of runs that were done without it are not there."})
    private boolean plans;

    @Option(names = "--cores", paramLabel = "N", converter = Threads.class,
        description = {"Do N runs side by side.", "Default: as many as there are cores."})
    private @Nullable Integer cores;
  }

  @ArgGroup(validate = false, heading = "%nThe batch%n")
  private Working working = new Working();

  Batch(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return switch (whatIf.read()) {
      case Reading.Mistaken<WhatIf>(var mistakes) ->
        Complaint.about(kit.err(), whatIf.file(), FileKind.WHAT_IF, mistakes);
      case Reading.Understood<WhatIf>(WhatIf variations, var sources, var notes) -> batch(variations);
    };
  }

  private int batch(WhatIf variations) {
    try {
      PlanFolder plans = working.plans ? new PlanFolder(folder.resolve("plans")) : null;
      Files.createDirectories(plans == null ? folder : plans.path());
      try (Results results = Results.in(folder.resolve("results.jsonl"))) {
        return batch(variations, results, plans);
      }
    } catch (Results.NotOurs other) {
      return Complaint.wrong(kit.err(), String.valueOf(other.getMessage()),
          "Take another folder for this batch.");
    } catch (IOException trouble) {
      return Complaint.wrong(kit.err(), "cannot go on: " + Target.reason(trouble),
          "What is in " + folder + " is whole. The same command goes on from there.");
    }
  }

  private int batch(WhatIf variations, Results results, @Nullable PlanFolder plans) throws IOException {
    BatchLine progress = new BatchLine(kit);
    Runner runner = new Runner(results, cores(),
        new Attempt(Batch::why, plans == null ? (run, plan) -> {} : plans, kit.stop()), progress, kit.stop());
    kit.stop().listen();
    try {
      Plan from = each.warm ? base(variations) : null;
      String event = Digest.of(variations.written());
      runner.run(variations.size(), index -> Run.of(event, variations.variation(index),
          () -> variations.event(index), budget(), from, Version.number()));
    } finally {
      kit.stop().stopListening();
      progress.clear();
    }
    new BatchSummary(kit, folder, variations, plans).write(results, runner.asked());
    return Answer.A_PLAN;
  }

  /** The plan of the event as it is; absent where there is none to begin from. */
  private @Nullable Plan base(WhatIf variations) {
    return switch (variations.base()) {
      case Reading.Understood<Event>(Event event, var sources, var notes) when Outcome.planned(event, sources,
          budget(), null, kit.stop()) instanceof Outcome.APlan(Plan plan) ->
        plan;
      default -> null;
    };
  }

  private Budget budget() {
    boolean hasAnEnd = each.tries != null || each.time != null;
    return new Budget(each.time, hasAnEnd ? each.tries : Long.valueOf(1_000), each.seed, 1);
  }

  private int cores() {
    return working.cores != null ? working.cores : Runtime.getRuntime().availableProcessors();
  }

  private static String why(Event event, Outcome outcome) {
    return WhyNot.of(event, outcome, A_LINE);
  }
}
