package ovenloom.model.life;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/**
 * The legs of steps that were followed last: most of a plan is as it was in the one before, and to follow food layer by layer takes
 * long. May be shared by threads.
 */
final class LegMemory {

  /** Steps; a step over night holds some hundred kilobytes. */
  private static final int MOST = 1_000;

  /**
   * All that the legs of a step depend on.
   *
   * @param feeders what goes into it, as it was followed
   */
  record Key(int step, double draught, Unsaid unsaid, Placement run, List<Stay.Part> parts,
      List<Same> feeders) {

    Key {
      parts = List.copyOf(parts);
      feeders = List.copyOf(feeders);
    }
  }

  /** Legs that are the same ones, not only alike: to compare them is as long as to follow them. */
  record Same(List<Leg> legs) {

    @Override
    @SuppressWarnings("ReferenceEquality")
    public boolean equals(@Nullable Object other) {
      return other instanceof Same(List<Leg> others) && others == legs;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(legs);
    }
  }

  private final Map<Key, List<Leg>> known = Collections
      .synchronizedMap(new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, List<Leg>> eldest) {
          return size() > MOST;
        }
      });

  /** The legs, followed only if they are not remembered. */
  List<Leg> get(Key key, Supplier<List<Leg>> follow) {
    List<Leg> legs = known.get(key);
    if (legs == null) {
      List<Leg> followed = follow.get();
      legs = Objects.requireNonNullElse(known.putIfAbsent(key, followed), followed);
    }
    return legs;
  }
}
