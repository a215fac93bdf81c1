package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import ovenloom.model.measure.Stretch;

/** What is in one place over time. Looked at only where something changes, not minute by minute. */
final class Moments<T> {

  /** A stretch in which nothing changes, and all that is there in it, in the order in which it was added. */
  record Still<T>(Stretch when, List<T> there) {}

  private record Entry<T>(Stretch when, T what) {}

  private final List<Entry<T>> entries = new ArrayList<>();

  void add(Stretch when, T what) {
    entries.add(new Entry<>(when, what));
  }

  /** In order; those without anything there are left out. */
  List<Still<T>> stills() {
    SortedSet<Integer> changes = new TreeSet<>();
    for (Entry<T> entry : entries) {
      changes.add(entry.when().from());
      changes.add(entry.when().to());
    }
    List<Still<T>> stills = new ArrayList<>();
    Integer before = null;
    for (Integer change : changes) {
      if (before != null) {
        addTo(stills, new Stretch(before, change));
      }
      before = change;
    }
    return stills;
  }

  private void addTo(List<Still<T>> stills, Stretch when) {
    List<T> there = entries.stream()
        .filter(entry -> entry.when().contains(when.from()))
        .map(Entry::what)
        .toList();
    if (!there.isEmpty()) {
      stills.add(new Still<>(when, there));
    }
  }
}
