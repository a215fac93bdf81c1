package ovenloom.cli.sheet;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ovenloom.model.life.Served;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** Dishes of which nobody says how warm they are at the table, and why. */
record NotPredicted(Book book, List<Served> served) {

  NotPredicted(Plan plan, List<Served> served) {
    this(Book.of(plan), served);
  }

  /** By the dish, in the order of the menu. */
  Map<String, String> reasons() {
    Set<String> predicted = served.stream().map(each -> each.dish().name()).collect(Collectors.toSet());
    Map<String, String> reasons = new LinkedHashMap<>();
    for (Dish dish : book.event().dishes()) {
      if (dish.food() && !predicted.contains(dish.name())) {
        reasons.put(dish.name(), reason(dish));
      }
    }
    return reasons;
  }

  private String reason(Dish dish) {
    List<BatchStep> steps = book.work()
        .steps()
        .stream()
        .filter(step -> step.dish().name().equals(dish.name()))
        .toList();
    return "goes into " + Words.and(List.copyOf(takers(dish, steps))) + ".";
  }

  private Set<String> takers(Dish dish, List<BatchStep> steps) {
    return steps.stream()
        .flatMap(step -> book.fedBy(step).stream())
        .map(taker -> taker.dish().name())
        .filter(name -> !name.equals(dish.name()))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
