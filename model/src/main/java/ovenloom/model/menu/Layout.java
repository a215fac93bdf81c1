package ovenloom.model.menu;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
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
    Map<Name, Integer> open = new LinkedHashMap<>();
    Map<Name, List<Name>> later = new HashMap<>();
    for (Dish dish : event.dishes()) {
      for (Step step : dish.steps()) {
        Name name = new Name(dish.name(), step.name());
        List<Name> before = step.after().stream().map(link -> new Name(link.dish(), link.step())).toList();
        open.put(name, before.size());
        before.forEach(each -> later.computeIfAbsent(each, none -> new ArrayList<>()).add(name));
      }
    }
    Map<Name, Integer> rounds = rounds(open, later);
    if (rounds.size() < open.size()) {
      open.keySet().removeAll(rounds.keySet());
      throw new IllegalArgumentException("these steps wait for each other: " + open.keySet());
    }
    return open.keySet()
        .stream()
        .sorted(Comparator.comparing(name -> Objects.requireNonNull(rounds.get(name))))
        .toList();
  }

  /** After how many others in a row each step comes at least; nothing of those in a circle. */
  private static Map<Name, Integer> rounds(Map<Name, Integer> open, Map<Name, List<Name>> later) {
    Map<Name, Integer> left = new HashMap<>(open);
    Map<Name, Integer> rounds = new HashMap<>();
    Deque<Name> ready = new ArrayDeque<>();
    left.forEach((name, before) -> {
      if (before == 0) {
        ready.add(name);
        rounds.put(name, 0);
      }
    });
    Map<Name, Integer> known = new HashMap<>();
    while (!ready.isEmpty()) {
      Name here = ready.remove();
      int next = Objects.requireNonNull(rounds.get(here)) + 1;
      for (Name each : later.getOrDefault(here, List.of())) {
        known.merge(each, next, Math::max);
        if (left.merge(each, -1, Integer::sum) == 0) {
          rounds.put(each, Objects.requireNonNull(known.get(each)));
          ready.add(each);
        }
      }
    }
    return rounds;
  }
}
