package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.check.Checks;
import ovenloom.model.check.Finding;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.proof.WindowLoads;

/** Kitchens in which a plan is known to exist, as roomy or as tight as may be: how many of them the search can plan. */
class BuiltAroundTest {

  private static final int KITCHENS = 300;
  private static final int AT_ONCE = 2;
  static final int MOST_STEPS = 60;
  private static final Budget TRIES = new Budget(null, 20_000L, 1, 1);
  private static final int PLANNED_OF_A_HUNDRED = 97;

  /** A search that has a plan sooner goes on so long, and until somebody looks. */
  private static final long A_FEW_TRIES = 300;

  /** Of the time that a proof takes at most. */
  private static final double A_PART = 0.03;

  @TempDir
  private static Path folder;

  private static List<BuiltAround> kitchens = List.of();
  private static List<Found> found = List.of();

  @BeforeAll
  static void build() throws InterruptedException, ExecutionException {
    List<Long> seeds = LongStream.range(0, KITCHENS).boxed().toList();
    kitchens = each(seeds, seed -> BuiltAround.of(seed, MOST_STEPS, folder));
    found = each(kitchens, kitchen -> planned(kitchen.event()));
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
  void twenty_thousand_tries_find_a_plan_in_97_of_a_hundred() {
    List<Long> without = kitchens.stream()
        .map(BuiltAround::seed)
        .filter(seed -> !found.get(seed.intValue()).isAPlan())
        .toList();

    assertThat(100 * (KITCHENS - without.size()) / KITCHENS)
        .as("planned of a hundred; no plan for seeds %s", without)
        .isGreaterThanOrEqualTo(PLANNED_OF_A_HUNDRED);
  }

  @Test
  void none_is_called_impossible_and_no_plan_known_or_found_is_better_than_its_bound() throws Exception {
    List<String> wrong = each(kitchens, BuiltAroundTest::provenWrong).stream()
        .flatMap(List::stream)
        .toList();

    assertThat(wrong).isEmpty();
  }

  private static List<String> provenWrong(BuiltAround kitchen) {
    Proof proof = new Proof(Extents.of(kitchen.event()));
    proof.refute();
    if (proof.clash() != null) {
      return List.of(kitchen.seed() + ": called impossible, " + proof.clash());
    }
    proof.findBound(A_PART);
    Bound bound = Objects.requireNonNull(proof.bound());
    Found best = found.get((int) kitchen.seed());
    return Stream.concat(Stream.of(kitchen.known()), best.isAPlan() ? Stream.of(best.plan()) : Stream.empty())
        .map(plan -> Reckoning.of(kitchen.event(), plan))
        .filter(score -> isBetter(score, bound))
        .map(score -> "%d: %s, bound %s".formatted(kitchen.seed(), score, bound))
        .toList();
  }

  static boolean isBetter(Score score, Bound bound) {
    return score.atTheTableInAll() < bound.atTheTable()
        || (bound.isReachedAtTheTable(score) && score.wishes() < bound.wishes());
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
  private static Found planned(Event event) {
    AtomicBoolean enough = new AtomicBoolean();
    return Search.find(event, List.of(), TRIES,
        (best, tries, left) -> enough.set(best.breaks() == 0 && tries >= A_FEW_TRIES), enough::get);
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
