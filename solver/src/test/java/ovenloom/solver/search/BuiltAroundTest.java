package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.model.check.Checks;
import ovenloom.model.check.Finding;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;
import ovenloom.solver.proof.WindowLoads;

/** Kitchens in which a plan is known to exist, as roomy or as tight as may be: how many of them the search can plan. */
class BuiltAroundTest {

  private static final int KITCHENS = 200;
  private static final int AT_ONCE = 2;
  static final int MOST_STEPS = 60;
  private static final Budget TRIES = new Budget(null, 20_000L, 1, 1);
  private static final int PLANNED_OF_A_HUNDRED = 97;

  @TempDir
  private static Path folder;

  private static List<BuiltAround> kitchens = List.of();

  @BeforeAll
  static void build() throws InterruptedException, ExecutionException {
    List<Long> seeds = LongStream.range(0, KITCHENS).boxed().toList();
    kitchens = each(seeds, seed -> BuiltAround.of(seed, MOST_STEPS, folder));
  }

  @Test
  void a_plan_is_known_for_each_of_them_and_no_check_or_proof_refuses_it() throws Exception {
    List<String> refused = each(kitchens, kitchen -> wrongWith(kitchen)).stream()
        .flatMap(List::stream)
        .toList();

    assertThat(refused).isEmpty();
    assertThat(kitchens).allSatisfy(kitchen -> assertThat(steps(kitchen.event())).isBetween(10, MOST_STEPS));
  }

  @Test
  void twenty_thousand_tries_find_a_plan_in_97_of_a_hundred() throws Exception {
    List<Boolean> planned = each(kitchens, kitchen -> firstPlan(kitchen.event()).isAPlan());

    List<Long> without = kitchens.stream()
        .map(BuiltAround::seed)
        .filter(seed -> !planned.get(seed.intValue()))
        .toList();
    assertThat(100 * (KITCHENS - without.size()) / KITCHENS)
        .as("planned of a hundred; no plan for seeds %s", without)
        .isGreaterThanOrEqualTo(PLANNED_OF_A_HUNDRED);
  }

  private static List<String> wrongWith(BuiltAround kitchen) {
    List<String> wrong = new ArrayList<>();
    Audit.of(kitchen.event(), kitchen.known()).forEach(each -> wrong.add(kitchen.seed() + ": " + each));
    Checks.of(kitchen.event())
        .stream()
        .filter(Finding::fatal)
        .forEach(each -> wrong.add(kitchen.seed() + ": " + each));
    WindowLoads.of(kitchen.event()).ifPresent(clash -> wrong.add(kitchen.seed() + ": " + clash));
    outside(kitchen).forEach(run -> wrong.add(kitchen.seed() + ": outside its extent, " + run));
    return wrong;
  }

  /** Runs of the known plan that are not where every plan's must be. */
  private static List<Placement> outside(BuiltAround kitchen) {
    Extents extents = Extents.of(kitchen.event());
    List<Placement> outside = new ArrayList<>();
    for (Run run : extents.runs()) {
      Placement placed = kitchen.known()
          .placement(run.dish().name(), run.step().name(), run.batches().first());
      if (placed.when().from() < extents.earliest(run.index())
          || placed.when().to() > extents.latest(run.index())) {
        outside.add(placed);
      }
    }
    return outside;
  }

  private static int steps(Event event) {
    return Work.of(event).steps().size();
  }

  /** Whether one is found hangs on the tries alone; only how soon this stops afterwards hangs on the machine. */
  private static Found firstPlan(Event event) {
    AtomicBoolean found = new AtomicBoolean();
    return Search.find(
        event, List.of(), TRIES, (best, tries, left) -> found.set(best.breaks() == 0), found::get);
  }

  private interface Job<A, B> {
    B of(A thing) throws Exception;
  }

  private static <A, B> List<B> each(List<A> things, Job<A, B> job)
      throws InterruptedException, ExecutionException {
    try (ExecutorService desks = Executors.newFixedThreadPool(AT_ONCE)) {
      List<Callable<B>> jobs = new ArrayList<>();
      things.forEach(thing -> jobs.add(() -> job.of(thing)));
      List<B> done = new ArrayList<>();
      for (Future<B> each : desks.invokeAll(jobs)) {
        done.add(each.get());
      }
      return done;
    }
  }
}
