package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.measure.Stretch;

/** Something of which there is only so much: who has how much of it, and where that is more than there is. */
final class Counted {

  /**
   * A stretch in which too much is taken.
   *
   * @param by the most that is missing in it
   * @param who takes of it
   */
  record Shortfall(Stretch when, long by, List<String> who) {}

  /** @param who absent for what others have already */
  private record Taken(long amount, @Nullable String who) {}

  private final long limit;
  private final Moments<Taken> taken = new Moments<>();

  Counted(long limit) {
    this.limit = limit;
  }

  void take(Stretch when, long amount, String who) {
    taken.add(when, new Taken(amount, who));
  }

  /** What others have of it. */
  void takeFrom(Availability open) {
    open.taken().forEach(others -> taken.add(others.when(), new Taken(others.count(), null)));
  }

  /** In order; those that touch are one. */
  List<Shortfall> shortfalls() {
    List<Shortfall> shortfalls = new ArrayList<>();
    for (Moments.Still<Taken> still : taken.stills()) {
      long by = still.there().stream().mapToLong(Taken::amount).sum() - limit;
      List<String> who = still.there()
          .stream()
          .map(Taken::who)
          .filter(name -> name != null)
          .distinct()
          .toList();
      if (by > 0 && !who.isEmpty()) {
        join(shortfalls, new Shortfall(still.when(), by, who));
      }
    }
    return shortfalls;
  }

  private static void join(List<Shortfall> shortfalls, Shortfall next) {
    Shortfall last = shortfalls.isEmpty() ? null : shortfalls.getLast();
    if (last == null || !last.when().abuts(next.when())) {
      shortfalls.add(next);
      return;
    }
    Set<String> who = new LinkedHashSet<>(last.who());
    who.addAll(next.who());
    Stretch both = new Stretch(last.when().from(), next.when().to());
    shortfalls.set(shortfalls.size() - 1,
        new Shortfall(both, Math.max(last.by(), next.by()), List.copyOf(who)));
  }
}
