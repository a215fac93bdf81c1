package ovenloom.model.file;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which steps each dish has, known before any of them is read, since a step may wait for a later one. */
final class StepNames {

  /** A step by its names. */
  record Ref(String dish, String step) {}

  private final Map<String, Set<String>> steps = new LinkedHashMap<>();
  private final Map<String, Ref> written = new LinkedHashMap<>();

  /** Whether the dish had no step of this name. */
  boolean add(String dish, String step) {
    written.putIfAbsent(dish + "/" + step, new Ref(dish, step));
    return steps.computeIfAbsent(dish, d -> new LinkedHashSet<>()).add(step);
  }

  Set<String> of(String dish) {
    return steps.getOrDefault(dish, Set.of());
  }

  /** Steps as they are called from within a dish: its own by their name, all by dish and name. */
  Set<String> known(String from) {
    Set<String> all = new LinkedHashSet<>(of(from));
    all.addAll(written.keySet());
    return all;
  }

  /** Steps of other dishes only, by dish and name. */
  Set<String> others(String from) {
    Set<String> all = new LinkedHashSet<>(written.keySet());
    of(from).forEach(step -> all.remove(from + "/" + step));
    return all;
  }

  @Nullable
  Ref ref(String from, String name) {
    return of(from).contains(name) ? new Ref(from, name) : written.get(name);
  }
}
