package ovenloom.cli.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wishes;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/**
 * A plan put together by hand for a problem written out in a test: each run when the test says, in the first oven or on the
 * first burner or shelf that will do, with the first cook. Food waits on the counter where nothing else is said, and an
 * oven is on for ten minutes before a bake. Nobody audits it.
 */
public final class HandPlan {

  private final Event event;
  private final Work work;
  private final List<Placement> runs = new ArrayList<>();
  private final Map<String, List<Stay.Part>> waits = new LinkedHashMap<>();
  private final List<OvenLog> ovens = new ArrayList<>();
  private final List<Wash> washes = new ArrayList<>();
  private Score score = Score.of(0, Map.of(), Map.of(), Wishes.EVEN, 0);

  private HandPlan(Event event) {
    this.event = event;
    this.work = Work.of(event);
  }

  /** A plan for a problem in YAML. */
  public static HandPlan forProblem(String yaml) {
    return new HandPlan(read(yaml));
  }

  static Event read(String yaml) {
    try {
      Path folder = Files.createTempDirectory("ovenloom-test");
      Path file = Files.writeString(folder.resolve("problem.yaml"), yaml);
      Reading<Event> reading = ProblemFile.read(file, folder, null);
      Files.delete(file);
      Files.delete(folder);
      return switch (reading) {
        case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
        case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(MistakeText.of(mistakes));
      };
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Minutes of {@code 18:30} on the day. */
  public static int at(String time) {
    String[] parts = time.split(":", -1);
    return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
  }

  /** The first batch of a step, named {@code dish/step}, from a minute on. */
  public HandPlan run(String step, int from) {
    return run(step, from, run -> run);
  }

  public HandPlan run(String step, int from, UnaryOperator<HandRun> change) {
    String[] names = step.split("/", -1);
    runs.add(change.apply(new HandRun(event, work, names[0], names[1], from)).placement());
    return this;
  }

  /** Where the first batch of a step's food waits; the parts follow one another from the run's end. */
  public HandPlan waits(String step, Object... placesAndEnds) {
    return batchWaits(1, step, placesAndEnds);
  }

  public HandPlan batchWaits(int batch, String step, Object... placesAndEnds) {
    List<Stay.Part> parts = new ArrayList<>();
    String[] names = step.split("/", -1);
    int from = new Plan(event, List.of(), runs, List.of(), List.of(), List.of(), List.of(), score)
        .placement(names[0], names[1], batch)
        .when()
        .to();
    for (int i = 0; i < placesAndEnds.length; i += 2) {
      int to = (Integer) placesAndEnds[i + 1];
      parts.add(new Stay.Part((Where) placesAndEnds[i], new Stretch(from, to)));
      from = to;
    }
    waits.put(step + " " + batch, parts);
    return this;
  }

  HandPlan oven(OvenLog log) {
    ovens.add(log);
    return this;
  }

  public HandPlan wash(String vessel, int count, int from, String cook) {
    washes.add(new Wash(vessel, count, new Stretch(from, from + 5), cook));
    return this;
  }

  HandPlan score(Score counted) {
    score = counted;
    return this;
  }

  public Plan plan() {
    runs.sort(Comparator.comparingInt(run -> run.when().from()));
    Plan bare = new Plan(event, List.of(), runs, List.of(), List.of(), List.of(), List.of(), score);
    return new Plan(
        event, List.of(), runs, stays(bare), ovens.isEmpty() ? logs() : ovens, washes, List.of(), score);
  }

  private List<Stay> stays(Plan bare) {
    List<Stay> stays = new ArrayList<>();
    for (BatchStep step : work.steps()) {
      if (work.leavesAStay(step.index())) {
        String name = step.dish().name() + "/" + step.step().name();
        List<Stay.Part> parts = waits.get(name + " " + step.batches().first());
        Stretch wait = new Stretch(Objects.requireNonNull(run(bare, step)).when().to(), taken(bare, step));
        List<Stay.Part> counter = wait.minutes() == 0 ? List.of()
            : List.of(new Stay.Part(new Where.Counter(), wait));
        stays.add(new Stay(
            step.dish().name(), step.step().name(), step.batches(), parts == null ? counter : parts,
            List.of()));
      }
    }
    return stays;
  }

  private int taken(Plan bare, BatchStep step) {
    int due = work.goesToTheTable(step.index()) ? event.due(step.dish(), step.batches().first()) : 0;
    return work.outOf(step.index())
        .stream()
        .filter(link -> link.makesAStay())
        .mapToInt(link -> run(bare, work.steps().get(link.to())).when().from())
        .reduce(due, Math::max);
  }

  private static Placement run(Plan bare, BatchStep step) {
    return bare.placement(step.dish().name(), step.step().name(), step.batches().first());
  }

  private List<OvenLog> logs() {
    Map<String, List<OvenLog.Span>> logs = new LinkedHashMap<>();
    for (Placement run : runs) {
      var baking = run.baking();
      if (baking != null) {
        List<OvenLog.Span> spans = logs.computeIfAbsent(baking.oven(), oven -> new ArrayList<>());
        spans.add(new OvenLog.Span(OvenLog.Doing.WARMING, baking.stages().getFirst().mark(), baking.mode(),
            new Stretch(run.when().from() - 10, run.when().from())));
        baking.stages()
            .forEach(stage -> spans.add(
                new OvenLog.Span(OvenLog.Doing.AT, stage.mark(), baking.mode(), stage.when())));
      }
    }
    return logs.entrySet().stream().map(log -> new OvenLog(log.getKey(), log.getValue())).toList();
  }
}
