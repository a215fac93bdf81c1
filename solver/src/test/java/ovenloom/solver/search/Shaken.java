package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/**
 * Shakes a plan until it no longer looks like what a decoder makes: other cooks, other shelves, other minutes, as long as
 * it stays a plan.
 */
final class Shaken {

  private final Event event;
  private final Work work;
  private final Cards cards;
  private final Random random;
  private Plan plan;

  private Shaken(Event event, Plan plan, Random random) {
    this.event = event;
    this.random = random;
    this.plan = plan;
    work = Work.of(event);
    cards = new Cards(work);
  }

  static Plan of(Event event, Plan plan, Random random, int times) {
    Shaken shaken = new Shaken(event, plan, random);
    for (int i = 0; i < times; i++) {
      shaken.shake();
    }
    return shaken.plan;
  }

  private void shake() {
    switch (random.nextInt(5)) {
      case 0 -> run(this::withOtherCooks);
      case 1 -> run(this::onOtherShelves);
      case 2 -> stay();
      case 3 -> wash();
      default -> moved();
    }
  }

  private void offer(List<Placement> runs, List<Stay> stays, List<Wash> washes) {
    Plan other = Changed.with(runs, stays, washes, plan);
    if (Changed.keeps(cards, other, rule -> true)) {
      plan = other;
    }
  }

  private void run(UnaryOperator<Placement> change) {
    List<Placement> runs = new ArrayList<>(plan.placements());
    int one = random.nextInt(runs.size());
    Placement changed = change.apply(runs.get(one));
    if (!changed.equals(runs.get(one))) {
      runs.set(one, changed);
      offer(runs, plan.stays(), plan.washes());
    }
  }

  private Placement withOtherCooks(Placement run) {
    if (run.hands().isEmpty()) {
      return run;
    }
    List<HandsOn> hands = new ArrayList<>(run.hands());
    int one = random.nextInt(hands.size());
    HandsOn old = hands.get(one);
    Set<String> cooks = new TreeSet<>();
    while (cooks.size() < old.cooks().size()) {
      cooks.add(someCook());
    }
    hands.set(one, new HandsOn(old.act(), old.when(), List.copyOf(cooks)));
    return new Placement(run.dish(), run.step(), run.batches(), run.when(), run.baking(), run.burners(),
        run.shelves(), hands);
  }

  private String someCook() {
    return event.cooks().get(random.nextInt(event.cooks().size())).name();
  }

  private Placement onOtherShelves(Placement run) {
    List<ShelfPlace> shelves = run.shelves()
        .stream()
        .map(place -> new ShelfPlace(place.store(), someShelf(place.store())))
        .toList();
    return new Placement(run.dish(), run.step(), run.batches(), run.when(), run.baking(), run.burners(),
        shelves, run.hands());
  }

  private String someShelf(String store) {
    List<Shelf> shelves = Objects.requireNonNull(event.kitchen().store(store)).shelves();
    return shelves.get(random.nextInt(shelves.size())).name();
  }

  /** Elsewhere for a while: on other shelves, or all of it on the shelves of some store. */
  private void stay() {
    if (plan.stays().isEmpty()) {
      return;
    }
    List<Stay> stays = new ArrayList<>(plan.stays());
    int one = random.nextInt(stays.size());
    Stay old = stays.get(one);
    List<Stay.Part> parts = random.nextBoolean()
        ? old.parts().stream().map(part -> new Stay.Part(otherShelves(part.where()), part.when())).toList()
        : List.of(new Stay.Part(someStore(old), whole(old)));
    stays.set(one, new Stay(old.dish(), old.step(), old.batches(), parts, old.hands()));
    offer(plan.placements(), stays, plan.washes());
  }

  private static Stretch whole(Stay stay) {
    return new Stretch(stay.parts().getFirst().when().from(), stay.parts().getLast().when().to());
  }

  private Where someStore(Stay stay) {
    List<Store> stores = event.kitchen().stores();
    Store store = stores.get(random.nextInt(stores.size()));
    int pieces = work.fillingsOf(work.find(stay.dish(), stay.step(), stay.batches().first()).index())
        .stream()
        .mapToInt(filling -> filling.count())
        .sum();
    List<String> shelves = new ArrayList<>();
    for (int i = 0; i < Math.max(1, pieces); i++) {
      shelves.add(someShelf(store.name()));
    }
    return new Where.OnShelf(store.name(), shelves);
  }

  private Where otherShelves(Where where) {
    return where instanceof Where.OnShelf(String store, List<String> shelves)
        ? new Where.OnShelf(store, shelves.stream().map(each -> someShelf(store)).toList())
        : where;
  }

  private void wash() {
    if (plan.washes().isEmpty()) {
      return;
    }
    List<Wash> washes = new ArrayList<>(plan.washes());
    int one = random.nextInt(washes.size());
    Wash old = washes.get(one);
    Stretch when = old.when().shiftedBy(random.nextInt(-60, 60));
    washes.set(one, new Wash(old.vessel(), old.count(), when, someCook()));
    offer(plan.placements(), plan.stays(), washes);
  }

  /** Earlier or later, with what waits before and after it waiting longer or shorter. */
  private void moved() {
    List<Placement> runs = new ArrayList<>(plan.placements());
    int one = random.nextInt(runs.size());
    if (runs.get(one).baking() == null) {
      int minutes = random.nextInt(3) == 0 ? random.nextInt(-240, 240) : random.nextInt(-20, 20);
      runs.set(one, Moved.by(runs.get(one), minutes));
      Plan other = Changed.with(runs, plan.stays(), plan.washes(), plan);
      List<Stay> stays = new ArrayList<>();
      for (Stay stay : plan.stays()) {
        Stay fitted = fitted(stay, other);
        if (fitted == null) {
          return;
        }
        stays.add(fitted);
      }
      offer(runs, stays, plan.washes());
    }
  }

  private @Nullable Stay fitted(Stay stay, Plan other) {
    int from = other.placement(stay.dish(), stay.step(), stay.batches().first()).when().to();
    int to = from;
    for (int batch = stay.batches().first(); batch <= stay.batches().last(); batch++) {
      to = Math.max(to, lastTaken(work.find(stay.dish(), stay.step(), batch), other));
    }
    List<Stay.Part> parts = new ArrayList<>(stay.parts());
    Stay.Part first = parts.getFirst();
    if (from > first.when().to()) {
      return null;
    }
    parts.set(0, new Stay.Part(first.where(), new Stretch(from, first.when().to())));
    Stay.Part last = parts.getLast();
    if (to < last.when().from()) {
      return null;
    }
    parts.set(parts.size() - 1, new Stay.Part(last.where(), new Stretch(last.when().from(), to)));
    return new Stay(stay.dish(), stay.step(), stay.batches(), parts, stay.hands());
  }

  private int lastTaken(BatchStep step, Plan other) {
    if (work.goesToTheTable(step.index())) {
      return event.due(step.dish(), step.batches().first());
    }
    int last = Integer.MIN_VALUE;
    for (BatchLink link : work.outOf(step.index())) {
      BatchStep taker = work.steps().get(link.to());
      if (link.makesAStay()) {
        last = Math.max(last, other.placement(
            taker.dish().name(), taker.step().name(), taker.batches().first()).when().from());
      }
    }
    return last;
  }
}
