package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** On one rack or shelf, no vessels at once that do not fit: every smallest set of those is forbidden. */
final class Crowding {

  private final Cp cp;
  private final Fit fit;
  private final List<Standing> all;

  private Crowding(Cp cp, Fit fit, List<Standing> all) {
    this.cp = cp;
    this.fit = fit;
    this.all = all;
  }

  static void forbid(Cp cp, Fit fit, List<Standing> all) {
    List<Standing> sized = all.stream().filter(each -> each.size() != null).toList();
    new Crowding(cp, fit, sized).forbid(List.of(), 0);
  }

  /** Those that begin with a set that fits. */
  private void forbid(List<Standing> set, int next) {
    for (int i = next; i < all.size(); i++) {
      List<Standing> more = new ArrayList<>(set);
      more.add(all.get(i));
      if (holds(more)) {
        if (more.size() == Fit.MOST) {
          throw new UnsupportedOperationException("more than eight on a rack or shelf");
        }
        forbid(more, i + 1);
      } else if (isSmallest(more)) {
        forbid(more);
      }
    }
  }

  private boolean holds(List<Standing> set) {
    return fit.holds(set.stream().map(each -> Objects.requireNonNull(each.size())).toList());
  }

  private boolean isSmallest(List<Standing> set) {
    for (int i = 0; i < set.size(); i++) {
      List<Standing> fewer = new ArrayList<>(set);
      fewer.remove(i);
      if (!holds(fewer)) {
        return false;
      }
    }
    return true;
  }

  /** Stretches share a minute all together where every two of them do. */
  private void forbid(List<Standing> set) {
    List<Literal> or = new ArrayList<>();
    for (int i = 0; i < set.size(); i++) {
      or.add(set.get(i).here().not());
      for (int j = 0; j < i; j++) {
        if (set.get(i).when().id() != set.get(j).when().id()) {
          or.addAll(cp.apart(set.get(i).when(), set.get(j).when()));
        }
      }
    }
    cp.model().addBoolOr(or);
  }
}
