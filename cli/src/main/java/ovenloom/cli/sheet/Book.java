package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/** A plan, opened where a step is looked up: which run does it, what came before, what comes after. */
final class Book {

  /** Of a step, whatever its batch. */
  private record Name(String dish, String step) {}

  private final Plan plan;
  private final Work work;
  private final Map<Name, List<BatchStep>> steps;
  private final Map<Name, List<Placement>> runs;
  private final Map<Name, List<Stay>> stays;

  private Book(Plan plan) {
    this.plan = plan;
    this.work = Work.of(plan.event());
    steps = byName(work.steps(), Book::name);
    runs = byName(plan.placements(), run -> new Name(run.dish(), run.step()));
    stays = byName(plan.stays(), stay -> new Name(stay.dish(), stay.step()));
  }

  private static <T> Map<Name, List<T>> byName(List<T> all, Function<T, Name> name) {
    return all.stream().collect(Collectors.groupingBy(name));
  }

  private static Name name(BatchStep step) {
    return new Name(step.dish().name(), step.step().name());
  }

  static Book of(Plan plan) {
    return new Book(plan);
  }

  Plan plan() {
    return plan;
  }

  Work work() {
    return work;
  }

  Event event() {
    return plan.event();
  }

  /** The steps a run does, in the order of their batches. */
  List<BatchStep> steps(Placement run) {
    return steps.getOrDefault(new Name(run.dish(), run.step()), List.of())
        .stream()
        .filter(step -> run.batches().holds(step.batches()))
        .toList();
  }

  boolean isInIce(Placement run) {
    return run.shelves()
        .stream()
        .map(place -> event().kitchen().store(place.store()))
        .anyMatch(store -> store != null && store.kind() == Store.Kind.ICE_BATH);
  }

  /** That does a step, or its first batch. */
  Placement run(BatchStep step) {
    Batches first = Batches.only(step.batches().first());
    return runs.getOrDefault(name(step), List.of())
        .stream()
        .filter(run -> run.batches().holds(first))
        .findFirst()
        .orElseThrow();
  }

  @Nullable
  Stay stay(BatchStep step) {
    return stays.getOrDefault(name(step), List.of())
        .stream()
        .filter(stay -> stay.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }

  /** The steps whose food goes into a step and was somewhere before. */
  List<BatchStep> feeding(BatchStep step) {
    List<BatchStep> all = new ArrayList<>();
    for (BatchLink link : work.into(step.index())) {
      BatchStep earlier = work.steps().get(link.from());
      if (link.makesAStay() && earlier.dish().food()) {
        all.add(earlier);
      }
    }
    return all;
  }

  /** The steps that take a step's food after it. */
  List<BatchStep> fedBy(BatchStep step) {
    return work.outOf(step.index())
        .stream()
        .filter(link -> link.makesAStay() && step.dish().food())
        .map(link -> work.steps().get(link.to()))
        .toList();
  }
}
