package ovenloom.model.menu;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Turns an event into {@link Work}. */
final class Layout {

  private record Name(String dish, String step) {}

  private final Event event;
  private final List<BatchStep> steps = new ArrayList<>();
  private final Map<Name, List<BatchStep>> batchesOf = new LinkedHashMap<>();
  private final List<BatchLink> links = new ArrayList<>();

  Layout(Event event) {
    this.event = event;
  }

  Work work() {
    for (Name name : inOrder()) {
      addStep(name);
    }
    for (BatchStep later : steps) {
      for (Link link : later.step().after()) {
        addLinks(link, later);
      }
    }
    return new Work(event, steps, links, new Pouring(steps, links).fillings());
  }

  private void addStep(Name name) {
    Dish dish = event.dish(name.dish());
    Step step = dish.step(name.step());
    List<BatchStep> all = new ArrayList<>();
    if (step.once()) {
      all.add(new BatchStep(steps.size(), dish, step, new Batches(1, dish.batches())));
    } else {
      for (int batch = 1; batch <= dish.batches(); batch++) {
        all.add(new BatchStep(steps.size() + batch - 1, dish, step, Batches.only(batch)));
      }
    }
    steps.addAll(all);
    batchesOf.put(name, all);
  }

  private void addLinks(Link link, BatchStep later) {
    for (BatchStep earlier : Objects.requireNonNull(batchesOf.get(new Name(link.dish(), link.step())))) {
      if (areLinked(earlier, later)) {
        links.add(new BatchLink(earlier.index(), later.index(), link));
      }
    }
  }

  private static boolean areLinked(BatchStep earlier, BatchStep later) {
    boolean all = earlier.step().once() || later.step().once();
    boolean oneToOne = earlier.dish().batches() == later.dish().batches();
    return all || !oneToOne || earlier.batches().equals(later.batches());
  }

  /** Names of steps, each after all it links to; as written where links leave the choice. */
  private List<Name> inOrder() {
    Map<Name, Step> open = new LinkedHashMap<>();
    for (Dish dish : event.dishes()) {
      for (Step step : dish.steps()) {
        open.put(new Name(dish.name(), step.name()), step);
      }
    }
    List<Name> done = new ArrayList<>();
    Deque<Name> ready = new ArrayDeque<>();
    while (!open.isEmpty()) {
      open.forEach((name, step) -> {
        if (step.after().stream().noneMatch(link -> open.containsKey(new Name(link.dish(), link.step())))) {
          ready.add(name);
        }
      });
      if (ready.isEmpty()) {
        throw new IllegalArgumentException("these steps wait for each other: " + open.keySet());
      }
      open.keySet().removeAll(ready);
      done.addAll(ready);
      ready.clear();
    }
    return done;
  }
}
