package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.safety.CookTo;

/** In a fridge nothing stands above food that needs less cooking, and raw food never beside what is ready to eat. */
record RawBelow() implements KitchenRule {

  private static final Temperature READY_TO_EAT = new Temperature(0);

  /** @param cookTo how hot it has to be cooked yet */
  private record Food(String who, Temperature cookTo, int level, Stretch when) {

    String words() {
      return cookTo.equals(READY_TO_EAT) ? "is ready to eat" : "must be cooked to " + cookTo;
    }
  }

  @Override
  public String id() {
    return "raw below";
  }

  @Override
  public String sentence() {
    return "In a fridge nothing stands above food that needs less cooking, and raw food never beside what is ready to eat.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Temperature> cookTo = cookTo(plan.cards());
    List<Shelved> all = Shelved.of(plan);
    for (Store store : plan.event().kitchen().stores()) {
      if (store.kind().isCold()) {
        check(store, in(store, all, cookTo), breaks);
      }
    }
    return breaks;
  }

  /** For each step: what its food needs when the step has ended. Steps come after all they link to. */
  private static List<Temperature> cookTo(Cards cards) {
    Work work = cards.work();
    List<Temperature> all = new ArrayList<>();
    for (BatchStep step : work.steps()) {
      all.add(cards.heats(step) ? READY_TO_EAT : cookTo(work, step, all));
    }
    return all;
  }

  /** What its food needs when it begins: the most of what it is made of, its own raw ingredients among it. */
  private static Temperature cookTo(Work work, BatchStep step, List<Temperature> before) {
    List<BatchLink> into = work.into(step.index()).stream().filter(BatchLink::carriesFood).toList();
    boolean ownFood = into.stream()
        .anyMatch(link -> work.steps().get(link.from()).dish().name().equals(step.dish().name()));
    CookTo own = ownFood ? null : CookTo.of(step.dish().tags());
    return into.stream()
        .map(link -> before.get(link.from()))
        .reduce(own == null ? READY_TO_EAT : own.temperature(), RawBelow::hotter);
  }

  private static Temperature hotter(Temperature one, Temperature other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static List<Food> in(Store store, List<Shelved> all, List<Temperature> cookTo) {
    List<String> levels = store.shelves().stream().map(Shelf::name).toList();
    List<Food> foods = new ArrayList<>();
    for (Shelved each : all) {
      if (each.steps().stream().anyMatch(step -> step.dish().food())) {
        Temperature most = each.steps()
            .stream()
            .map(step -> cookTo.get(step.index()))
            .reduce(READY_TO_EAT, RawBelow::hotter);
        each.places()
            .stream()
            .filter(place -> place.store().equals(store.name()))
            .map(ShelfPlace::shelf)
            .distinct()
            .filter(levels::contains)
            .forEach(shelf -> foods.add(new Food(each.who(), most, levels.indexOf(shelf), each.when())));
      }
    }
    return foods;
  }

  private void check(Store store, List<Food> foods, List<Break> breaks) {
    for (int i = 0; i < foods.size(); i++) {
      for (Food other : foods.subList(i + 1, foods.size())) {
        Food one = foods.get(i);
        boolean oneIsRawer = one.cookTo().compareTo(other.cookTo()) > 0;
        check(store, oneIsRawer ? one : other, oneIsRawer ? other : one, breaks);
      }
    }
  }

  /** Levels count from the top. */
  private void check(Store store, Food rawer, Food other, List<Break> breaks) {
    Stretch shared = rawer.when().shared(other.when());
    if (shared != null && !rawer.cookTo().equals(other.cookTo()) && rawer.level() <= other.level()) {
      String where = rawer.level() == other.level() ? "beside" : "above";
      breaks.add(Break.of(this, List.of(store.name(), rawer.who(), other.who()), shared, shared.minutes(),
          Unit.MINUTES,
          rawer.who() + " " + rawer.words() + " and stands " + where + " " + other.who() + ", which "
              + other.words()));
    }
  }
}
