package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The minutes that lie in any of some stretches: a cook's hours, say, or all the time somebody is at work.
 *
 * @param parts in order, none empty, no two of them touching
 */
public record Stretches(List<Stretch> parts) {

  /** Joins what overlaps or touches, and puts it in order. */
  public Stretches {
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next : parts.stream().sorted(Comparator.comparingInt(Stretch::from)).toList()) {
      if (next.minutes() > 0) {
        join(joined, next);
      }
    }
    parts = List.copyOf(joined);
  }

  private static void join(List<Stretch> joined, Stretch next) {
    if (joined.isEmpty() || joined.getLast().to() < next.from()) {
      joined.add(next);
    } else {
      Stretch last = joined.removeLast();
      joined.add(new Stretch(last.from(), Math.max(last.to(), next.to())));
    }
  }

  public static Stretches of(Stretch... parts) {
    return new Stretches(List.of(parts));
  }

  /** The minutes of any of them. */
  public static Stretches any(Collection<Stretches> all) {
    return new Stretches(all.stream().flatMap(each -> each.parts.stream()).toList());
  }

  /** How many minutes, each counted once. */
  public long minutes() {
    return parts.stream().mapToLong(Stretch::minutes).sum();
  }

  public boolean isEmpty() {
    return parts.isEmpty();
  }

  public boolean contains(int minute) {
    return parts.stream().anyMatch(part -> part.contains(minute));
  }

  /** Whether every minute of a stretch lies inside. */
  public boolean encloses(Stretch other) {
    return other.minutes() == 0 || parts.stream().anyMatch(part -> part.encloses(other));
  }

  /** The minutes that lie in both. */
  public Stretches shared(Stretches other) {
    List<Stretch> shared = new ArrayList<>();
    for (Stretch mine : parts) {
      for (Stretch theirs : other.parts) {
        Stretch both = mine.shared(theirs);
        if (both != null) {
          shared.add(both);
        }
      }
    }
    return new Stretches(shared);
  }

  /** The minutes that lie in this and not in the other. */
  public Stretches without(Stretches other) {
    List<Stretch> left = parts;
    for (Stretch gone : other.parts) {
      left = left.stream().flatMap(part -> without(part, gone)).toList();
    }
    return new Stretches(left);
  }

  private static Stream<Stretch> without(Stretch part, Stretch gone) {
    if (!part.overlaps(gone)) {
      return Stream.of(part);
    }
    return Stream.of(
        new Stretch(part.from(), Math.max(part.from(), gone.from())),
        new Stretch(Math.min(part.to(), gone.to()), part.to()));
  }
}
