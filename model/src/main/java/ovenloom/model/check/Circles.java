package ovenloom.model.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
    List<Finding> found = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (Scene.Of step : steps.values()) {
      List<String> ring = told.contains(step.called()) ? List.of() : ring(step.called(), steps);
      if (!ring.isEmpty()) {
        told.addAll(ring);
        found.add(Finding.fatal(step.subject().key(key(step, ring)), new Trouble.Circle(ring)));
      }
    }
    return found;
  }

  /** The shortest way from a step back to it, each waiting for the next; empty where there is none. */
  private static List<String> ring(String start, Map<String, Scene.Of> steps) {
    Map<String, String> cameFrom = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String here = open.remove();
      for (String next : waitsFor(steps.get(here))) {
        if (next.equals(start)) {
          return way(here, cameFrom);
        }
        if (steps.containsKey(next) && cameFrom.putIfAbsent(next, here) == null) {
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

  private static List<String> waitsFor(Scene.@Nullable Of step) {
    return step == null ? List.of()
        : step.step().after().stream().map(link -> link.dish() + "/" + link.step()).toList();
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
