package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** Runs of one step that the same hands begin and end in the same minutes, in one place: one thing to do. */
record Armful(Book book, List<Placement> runs) {

  Armful {
    runs = List.copyOf(runs);
  }

  /** All runs of a plan, those that belong together in one. */
  static List<Armful> of(Book book) {
    List<Placement> open = book.plan().placements();
    List<Armful> all = new ArrayList<>();
    while (!open.isEmpty()) {
      Placement first = open.getFirst();
      Waiting waits = new Waiting(book, List.of(first));
      Map<Boolean, List<Placement>> alike = open.stream()
          .collect(Collectors.partitioningBy(run -> areAlike(first, run)
              && (!run.shelves().isEmpty() || waits.isLike(new Waiting(book, List.of(run))))));
      all.add(new Armful(book, alike.getOrDefault(true, List.of())));
      open = alike.getOrDefault(false, List.of());
    }
    return all;
  }

  private static boolean areAlike(Placement first, Placement other) {
    return first.dish().equals(other.dish()) && first.step().equals(other.step())
        && first.when().equals(other.when()) && atFirst(first).equals(atFirst(other))
        && first.burners().size() == other.burners().size()
        && areAlike(first.baking(), other.baking()) && store(first).equals(store(other));
  }

  private static boolean areAlike(@Nullable Baking first,
      @Nullable Baking other) {
    if (first == null || other == null) {
      return Objects.equals(first, other);
    }
    return first.oven().equals(other.oven()) && first.mode().equals(other.mode())
        && first.stages().equals(other.stages());
  }

  /** Who turns or stirs it later, and who takes it out, is told then. */
  private static List<HandsOn> atFirst(Placement run) {
    return run.hands()
        .stream()
        .filter(each -> each.when().from() == run.when().from() && each.act() != HandsOn.Act.UNLOAD)
        .toList();
  }

  private static String store(Placement run) {
    return run.shelves().isEmpty() ? "" : run.shelves().getFirst().store();
  }

  Placement run() {
    return runs.getFirst();
  }

  int at() {
    return run().when().from();
  }

  BatchStep step() {
    return book.steps(run()).getFirst();
  }

  List<BatchStep> steps() {
    return runs.stream().flatMap(run -> book.steps(run).stream()).toList();
  }

  /** Where all of it goes. */
  Spot spot() {
    Spot first = Journey.spot(step(), run());
    return runs.stream().skip(1).map(run -> Journey.spot(step(), run)).reduce(first, Spot::and);
  }

  /** What its food is in, each vessel once, however many batches share it. */
  List<Filling> fillings() {
    boolean inOne = step().step().together().oneVessel();
    return runs.stream()
        .flatMap(run -> inOne ? book.steps(run).stream().limit(1) : book.steps(run).stream())
        .flatMap(each -> book.work().fillingsOf(each.index()).stream())
        .distinct()
        .toList();
  }

  /** Vessels that its food is poured into. */
  List<Filling> filled() {
    List<Integer> steps = indices();
    return fillings().stream()
        .filter(filling -> steps.contains(filling.first()))
        .toList();
  }

  /** Vessels of its own dish that its food is poured out of. */
  List<Filling> emptied() {
    List<Integer> steps = indices();
    return book.work()
        .fillings()
        .stream()
        .filter(filling -> steps.stream().anyMatch(filling.movers()::contains))
        .filter(filling -> dish(filling).equals(run().dish()))
        .toList();
  }

  private List<Integer> indices() {
    return steps().stream().map(BatchStep::index).toList();
  }

  private String dish(Filling filling) {
    return book.work().steps().get(filling.first()).dish().name();
  }
}
