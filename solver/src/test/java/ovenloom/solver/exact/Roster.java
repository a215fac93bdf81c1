package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ovenloom.model.kitchen.Cook;

/** Who does what in a solved model: where one cook was chosen for all that are alike, the first of them whose hands are free. */
final class Roster {

  private final IdentityHashMap<Task, List<String>> cooks = new IdentityHashMap<>();

  /**
   * Of all tasks.
   *
   * @param alike by each cook that was chosen, all that are like it
   */
  Roster(Answers answers, List<Task> tasks, Map<Cook, List<Cook>> alike) {
    Map<Cook, Integer> free = new HashMap<>();
    List<Task> inTurn = tasks.stream()
        .sorted(Comparator.comparingInt(task -> answers.of(task.start())))
        .toList();
    for (Task task : inTurn) {
      int start = answers.of(task.start());
      List<String> names = new ArrayList<>();
      task.by().forEach((chosen, does) -> {
        if (answers.is(does)) {
          Cook cook = firstFree(alike.getOrDefault(chosen, List.of(chosen)), start, free);
          free.merge(cook, start + task.minutes(), Math::max);
          names.add(cook.name());
        }
      });
      cooks.put(task, names);
    }
  }

  /** Cooks with the same hours, breaks and skills, by the first of them. */
  static Map<Cook, List<Cook>> alike(List<Cook> cooks) {
    return cooks.stream()
        .collect(Collectors.groupingBy(cook -> List.of(cook.hours(), cook.breaks(), cook.skills()),
            LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .collect(Collectors.toMap(List::getFirst, all -> all, (one, other) -> one, LinkedHashMap::new));
  }

  List<String> cooks(Task task) {
    return cooks.getOrDefault(task, List.of());
  }

  /** One who is like nobody else was chosen by the model itself, in one breath even twice at once. */
  private static Cook firstFree(List<Cook> alike, int start, Map<Cook, Integer> free) {
    return alike.stream()
        .filter(cook -> alike.size() == 1 || free.getOrDefault(cook, Integer.MIN_VALUE) <= start)
        .findFirst()
        .orElseThrow();
  }
}
