package ovenloom.model.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.variation.Axis;

/** Which two axes to look at together. */
final class Pairs {

  /** A map of more is not looked at, and neither are more maps. */
  static final int CELLS = 600;
  static final int MAPS = 15;

  private static final String GUESTS = "guests";

  private Pairs() {}

  /** Each two axes, but for those too long; first how many guests there are with what can be chosen from most. */
  static List<Fit> of(List<Axis> axes) {
    List<Axis> inOrder = inOrder(axes);
    List<Fit> all = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      for (Axis other : inOrder.subList(i + 1, inOrder.size())) {
        if ((long) inOrder.get(i).choices().size() * other.choices().size() <= CELLS && all.size() < MAPS) {
          all.add(fit(inOrder.get(i), other));
        }
      }
    }
    return all;
  }

  private static List<Axis> inOrder(List<Axis> axes) {
    List<Axis> inOrder = new ArrayList<>(axes);
    inOrder.sort(Comparator.comparingInt(axis -> -axis.choices().size()));
    inOrder.stream()
        .filter(Axis::isNumbers)
        .max(Comparator.comparing(axis -> axis.name().equals(GUESTS)))
        .ifPresent(counted -> {
          inOrder.remove(counted);
          inOrder.addFirst(counted);
        });
    return inOrder;
  }

  /** A phone is high rather than wide. */
  private static Fit fit(Axis one, Axis other) {
    return one.choices().size() > other.choices().size() ? new Fit(one, other) : new Fit(other, one);
  }
}
