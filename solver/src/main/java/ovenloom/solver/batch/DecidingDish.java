package ovenloom.solver.batch;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.proof.Claim;
import ovenloom.solver.proof.Clash;
import ovenloom.solver.search.Found;

/** The dish that decides how an event ends. */
final class DecidingDish {

  private DecidingDish() {}

  /**
   * Of a plan the dish that loses most at the table, or else costs the cooks most in the last hour; without a plan, the one that stands first
   * in its way.
   */
  static @Nullable String of(Event event, Outcome outcome) {
    return switch (outcome) {
      case Outcome.APlan(Plan plan) -> dish(plan);
      case Outcome.TooMuch(Clash clash) -> first(clash.steps());
      case Outcome.Clashing(List<Claim> claims) -> first(claims.stream().map(Claim::step).toList());
      case Outcome.NoneFound(Found found) -> first(event, found);
    };
  }

  private static @Nullable String dish(Plan plan) {
    String lost = most(plan.score().atTheTable());
    return lost != null ? lost : most(Figures.lastHourByDish(plan));
  }

  private static @Nullable String most(Map<String, Long> byDish) {
    return byDish.entrySet()
        .stream()
        .filter(each -> each.getValue() > 0)
        .max(Comparator.comparingLong(Map.Entry::getValue))
        .map(Map.Entry::getKey)
        .orElse(null);
  }

  private static @Nullable String first(List<BatchStep> steps) {
    return steps.isEmpty() ? null : steps.getFirst().dish().name();
  }

  private static @Nullable String first(Event event, Found found) {
    return found.breaks()
        .stream()
        .sorted(Comparator.comparingLong(Break::off).reversed())
        .flatMap(each -> each.who().stream())
        .map(who -> dish(event, who))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** The longest name with which it begins: rice pudding is no rice. */
  private static @Nullable String dish(Event event, String who) {
    return event.dishes()
        .stream()
        .map(Dish::name)
        .filter(who::startsWith)
        .max(Comparator.comparingInt(String::length))
        .orElse(null);
  }
}
