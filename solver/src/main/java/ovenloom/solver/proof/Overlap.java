package ovenloom.solver.proof;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;

/** How many minutes of a stint lie in a stretch at least: first none, then one more for each minute it begins later, as many as may be, one less for each, none. */
final class Overlap {

  private final CpModel model;
  private final Stint stint;
  private final Stretch stretch;
  private final int most;
  private final int rises;
  private final int falls;
  private final IntVar minutes;
  private final List<Literal> cases = new ArrayList<>();

  private Overlap(CpModel model, Stint stint, Stretch stretch) {
    this.model = model;
    this.stint = stint;
    this.stretch = stretch;
    most = Math.min(stint.minutes(), stretch.minutes());
    rises = Math.min(stretch.from(), stretch.to() - stint.minutes());
    falls = Math.max(stretch.from(), stretch.to() - stint.minutes());
    minutes = model.newIntVar(0, most, "minutes of " + stint.run());
  }

  static LinearArgument of(CpModel model, Stint stint, Stretch stretch) {
    int last = Math.max(stint.first(), stint.last());
    boolean isNone = last + stint.minutes() <= stretch.from() || stint.first() >= stretch.to();
    Overlap overlap = new Overlap(model, stint, stretch);
    if (isNone || (stint.first() >= overlap.rises && last <= overlap.falls)) {
      return LinearExpr.constant(isNone ? 0 : overlap.most);
    }
    overlap.add();
    return overlap.minutes;
  }

  private void add() {
    beginsBetween(Integer.MIN_VALUE, stretch.from() - stint.minutes());
    atLeast(beginsBetween(stretch.from() - stint.minutes() + 1, rises - 1),
        LinearExpr.affine(stint.from(), 1, stint.minutes() - stretch.from()));
    atLeast(beginsBetween(rises, falls), LinearExpr.constant(most));
    atLeast(beginsBetween(falls + 1, stretch.to() - 1), LinearExpr.affine(stint.from(), -1, stretch.to()));
    beginsBetween(stretch.to(), Integer.MAX_VALUE);
    model.addExactlyOne(cases);
  }

  private List<Literal> beginsBetween(int from, int to) {
    int first = Math.max(from, stint.first());
    int last = Math.min(to, Math.max(stint.first(), stint.last()));
    if (first > last) {
      return List.of();
    }
    BoolVar isSo = model.newBoolVar("begins between");
    model.addLinearConstraint(stint.from(), first, last).onlyEnforceIf(isSo);
    cases.add(isSo);
    return List.of(isSo);
  }

  private void atLeast(List<Literal> when, LinearArgument least) {
    when.forEach(isSo -> model.addGreaterOrEqual(minutes, least).onlyEnforceIf(isSo));
  }
}
