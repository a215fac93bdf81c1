package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Keeps what was found wrong, in the order of the files, each once. */
final class Mistakes {

  private final Map<Place, Set<Fault>> found = new TreeMap<>();
  private int count;

  void add(Place place, Fault fault) {
    count += found.computeIfAbsent(place, where -> new LinkedHashSet<>()).add(fault) ? 1 : 0;
  }

  boolean none() {
    return found.isEmpty();
  }

  int count() {
    return count;
  }

  List<Mistake> all() {
    List<Mistake> all = new ArrayList<>();
    found.forEach((place, faults) -> faults.forEach(fault -> all.add(new Mistake(place, fault))));
    return all;
  }
}
