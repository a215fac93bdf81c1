package ovenloom.model.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Placement;
import ovenloom.model.safety.Perishable;
import ovenloom.model.safety.Profile;

/** No food that must be kept hot or cold is eaten on a later day than its safety profile allows. */
record DaysKept() implements KitchenRule {

  @Override
  public String id() {
    return "days kept";
  }

  @Override
  public String sentence() {
    return "No food that must be kept hot or cold is eaten on a later day than its safety profile allows.";
  }

  @Override
  public List<Break> check(Case plan) {
    Profile.Days limit = Profile.of(plan.event().rules())
        .days()
        .stream()
        .min(Comparator.comparingInt(Profile.Days::most))
        .orElse(null);
    List<Break> breaks = new ArrayList<>();
    for (BatchStep step : plan.work().steps()) {
      Placement run = plan.run(step);
      if (limit != null && run != null) {
        check(plan, step, run, limit, breaks);
      }
    }
    return breaks.stream().distinct().toList();
  }

  private void check(Case plan, BatchStep step, Placement run, Profile.Days limit, List<Break> breaks) {
    for (BatchStep eaten : eaten(plan, step)) {
      if (isPerishable(plan, step, eaten)) {
        LocalDate day = plan.event().calendar().at(plan.event().endOfService(eaten.dish())).toLocalDate();
        int first = plan.event().calendar().minuteOf(day.minusDays(limit.most() - 1L).atStartOfDay());
        int early = first - run.when().from();
        if (early > 0) {
          breaks.add(Break.of(this, List.of(plan.name(run)), new Stretch(run.when().from(), first), early,
              Break.Unit.MINUTES,
              "eaten later than on day " + limit.most() + ", the day it was made counting as one ("
                  + limit.source()
                  + ")"));
        }
      }
    }
  }

  /** The steps a step's food goes to the table from; none of those it gets to by way of a freezer, which stops the count. */
  private static Set<BatchStep> eaten(Case plan, BatchStep step) {
    if (mayFreeze(plan, step)) {
      return Set.of();
    }
    if (plan.work().goesToTheTable(step.index())) {
      return Set.of(step);
    }
    return plan.work()
        .outOf(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .flatMap(link -> eaten(plan, plan.work().steps().get(link.to())).stream())
        .collect(Collectors.toSet());
  }

  private static boolean isPerishable(Case plan, BatchStep step, BatchStep eaten) {
    if (!step.dish().food() || Perishable.isNever(eaten.dish().tags())) {
      return false;
    }
    return Perishable.isFromTheStart(eaten.dish().tags())
        || isOrWas(plan, step, each -> Perishable.isFromTheStart(each.dish().tags()))
        || (Perishable.isOnceCooked(eaten.dish().matter().kind())
            && isOrWas(plan, step, plan.cards()::heats));
  }

  /** Whether something is so of a step, or of one that its food comes from. */
  private static boolean isOrWas(Case plan, BatchStep step, Predicate<BatchStep> what) {
    return what.test(step)
        || plan.work()
            .into(step.index())
            .stream()
            .filter(BatchLink::carriesFood)
            .anyMatch(link -> isOrWas(plan, plan.work().steps().get(link.from()), what));
  }

  private static boolean mayFreeze(Case plan, BatchStep step) {
    Keeps keeps = step.step().keeps();
    Need.OnShelf shelf = step.step().shelf();
    return step.step().starts() == StartState.FROZEN
        || (keeps != null && keeps.stores().keySet().stream().anyMatch(name -> isFreezer(plan, name)))
        || (shelf != null && shelf.stores().stream().anyMatch(name -> isFreezer(plan, name)));
  }

  private static boolean isFreezer(Case plan, String name) {
    @Nullable
    Store store = plan.event().kitchen().store(name);
    return store != null && store.kind() == Store.Kind.FREEZER;
  }
}
