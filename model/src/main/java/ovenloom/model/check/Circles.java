package ovenloom.model.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import ovenloom.model.menu.Link;

/** No step waits for itself, directly or in a round. */
final class Circles implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of();
  }

  @Override
  public List<Finding> findings(Scene scene) {
    Map<String, Scene.Of> steps = new LinkedHashMap<>();
    scene.steps().forEach(step -> steps.put(step.called(), step));
    Map<String, List<String>> waits = waits(steps);
    List<Finding> found = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (String step : waits.keySet()) {
      List<String> ring = told.contains(step) ? List.of() : ring(step, waits);
      if (!ring.isEmpty()) {
        told.addAll(ring);
        Scene.Of first = Objects.requireNonNull(steps.get(step));
        found.add(Finding.fatal(first.subject().key(key(first, ring)), new Trouble.Circle(ring)));
      }
    }
    return found;
  }

  /** What each step waits for, without those that come to an end; where there is no ring nothing is left. */
  private static Map<String, List<String>> waits(Map<String, Scene.Of> steps) {
    Map<String, List<String>> left = new LinkedHashMap<>();
    Map<String, List<String>> waiting = new HashMap<>();
    Map<String, Integer> open = new HashMap<>();
    steps.forEach((name, step) -> {
      List<String> before = waitsFor(step).stream().filter(steps::containsKey).toList();
      left.put(name, before);
      open.put(name, before.size());
      before.forEach(each -> waiting.computeIfAbsent(each, none -> new ArrayList<>()).add(name));
    });
    Deque<String> ready = new ArrayDeque<>(
        open.keySet().stream().filter(name -> open.getOrDefault(name, 0) == 0).toList());
    while (!ready.isEmpty()) {
      String done = ready.remove();
      left.remove(done);
      for (String next : waiting.getOrDefault(done, List.of())) {
        if (open.merge(next, -1, Integer::sum) == 0) {
          ready.add(next);
        }
      }
    }
    return left;
  }

  /** The shortest way from a step back to it, each waiting for the next; empty where there is none. */
  private static List<String> ring(String start, Map<String, List<String>> waits) {
    Map<String, String> cameFrom = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String here = open.remove();
      for (String next : waits.getOrDefault(here, List.of())) {
        if (next.equals(start)) {
          return way(here, cameFrom);
        }
        if (waits.containsKey(next) && cameFrom.putIfAbsent(next, here) == null) {
          open.add(next);
        }
      }
    }
    return List.of();
  }

  private static List<String> way(String end, Map<String, String> cameFrom) {
    List<String> ring = new ArrayList<>();
    for (String at = end; at != null; at = cameFrom.get(at)) {
      ring.addFirst(at);
    }
    return ring;
  }

  private static List<String> waitsFor(Scene.Of step) {
    return step.step().after().stream().map(link -> link.dish() + "/" + link.step()).toList();
  }

  /** The key of the link that closes the ring. */
  private static String key(Scene.Of step, List<String> ring) {
    String next = ring.size() == 1 ? ring.getFirst() : ring.get(1);
    for (Link link : step.step().after()) {
      if (next.equals(link.dish() + "/" + link.step())) {
        return switch (link.kind()) {
          case ORDER_ONLY -> step.dish().food() ? "order only" : "after";
          case ALONGSIDE -> "alongside";
          case FOOD -> link.dish().equals(step.dish().name()) ? "after" : "uses";
        };
      }
    }
    return "after";
  }
}
