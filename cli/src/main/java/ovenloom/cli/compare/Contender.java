package ovenloom.cli.compare;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.WhyNot;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Standing;
import ovenloom.solver.batch.Outcome;

/** One of those that are compared, and what came of planning it. */
public record Contender(String name, Event event, Outcome outcome, @Nullable Planned planned) {

  /** A plan that has passed the audit, with its figures. */
  public record Planned(String name, Plan plan, Figures figures) {}

  /** With the figures of its plan, where it has one. */
  public static Contender of(String name, Event event, Outcome outcome) {
    Planned planned = outcome instanceof Outcome.APlan(Plan plan) ? new Planned(name, plan, Figures.of(plan))
        : null;
    return new Contender(name, event, outcome, planned);
  }

  /** What can be held against another. */
  public Standing standing() {
    return switch (outcome) {
      case Outcome.APlan(Plan plan) -> new Standing.Fits(plan.score(), plan.bound(), event.wishes());
      case Outcome.TooMuch tooMuch -> new Standing.NoPlan();
      case Outcome.Clashing clashing -> new Standing.NoPlan();
      case Outcome.NoneFound none -> new Standing.NoneFound();
    };
  }

  /** Why it has no plan, line by line; nothing where it has one. */
  public List<String> why() {
    return planned != null ? List.of() : WhyNot.of(event, outcome, Integer.MAX_VALUE).lines().toList();
  }

  /** Whether as many portions of the same dishes are made. */
  boolean servesTheSame(Contender other) {
    return portions().equals(other.portions());
  }

  private Map<String, Integer> portions() {
    return event.dishes().stream().collect(Collectors.toMap(Dish::name, dish -> dish.servings().portions()));
  }

  Clock clock() {
    return new Clock(event.calendar());
  }
}
