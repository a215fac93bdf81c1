package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A CP-SAT model, and the few words in which the rules of a kitchen are said in it. */
final class Cp {

  private record Pair(int first, int second) {}

  private final CpModel model = new CpModel();
  private final int from;
  private final int to;
  private final Map<Pair, List<Literal>> apart = new HashMap<>();
  private int spans;

  /** Every minute of it lies in the calendar of the event. */
  Cp(int from, int to) {
    this.from = from;
    this.to = to;
  }

  CpModel model() {
    return model;
  }

  int from() {
    return from;
  }

  int to() {
    return to;
  }

  BoolVar choice(String name) {
    return model.newBoolVar(name);
  }

  IntVar minute(String name) {
    return model.newIntVar(from, to, name);
  }

  IntVar number(long least, long most, String name) {
    return model.newIntVar(least, most, name);
  }

  Span span(LinearArgument start, LinearArgument end) {
    return new Span(spans++, start, end, false);
  }

  Span maybeEmpty(LinearArgument start, LinearArgument end) {
    return new Span(spans++, start, end, true);
  }

  static LinearExpr plus(LinearArgument one, long more) {
    return LinearExpr.affine(one, 1, more);
  }

  static LinearExpr minus(LinearArgument one, LinearArgument other) {
    return LinearExpr.newBuilder().add(one).addTerm(other, -1).build();
  }

  static LinearExpr sum(Collection<? extends LinearArgument> all) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    all.forEach(sum::add);
    return sum.build();
  }

  /** True exactly where both are. */
  Literal both(Literal one, Literal other) {
    BoolVar both = choice("both");
    model.addImplication(both, one);
    model.addImplication(both, other);
    model.addBoolOr(new Literal[]{one.not(), other.not(), both});
    return both;
  }

  /** True exactly where any of them is. */
  Literal any(Collection<Literal> all) {
    if (all.isEmpty()) {
      return model.falseLiteral();
    }
    if (all.size() == 1) {
      return all.iterator().next();
    }
    BoolVar any = choice("any");
    all.forEach(each -> model.addImplication(each, any));
    List<Literal> or = new ArrayList<>(all);
    or.add(any.not());
    model.addBoolOr(or);
    return any;
  }

  /** A choice that, if made, keeps one no later than the other. */
  Literal notAfter(LinearArgument one, LinearArgument other) {
    BoolVar kept = choice("not after");
    model.addLessOrEqual(one, other).onlyEnforceIf(kept);
    return kept;
  }

  /** Choices of which each, if made, keeps two stretches from sharing a minute. */
  List<Literal> apart(Span one, Span other) {
    Pair pair = new Pair(Math.min(one.id(), other.id()), Math.max(one.id(), other.id()));
    return apart.computeIfAbsent(pair, key -> ways(one, other));
  }

  private List<Literal> ways(Span one, Span other) {
    List<Literal> ways = new ArrayList<>();
    ways.add(notAfter(one.to(), other.from()));
    ways.add(notAfter(other.to(), one.from()));
    if (one.canBeEmpty()) {
      ways.add(notAfter(one.to(), one.from()));
    }
    if (other.canBeEmpty()) {
      ways.add(notAfter(other.to(), other.from()));
    }
    return ways;
  }

  /** Where all these hold, the two share no minute. */
  void keepApart(Span one, Span other, Literal... where) {
    List<Literal> or = new ArrayList<>(apart(one, other));
    for (Literal each : where) {
      or.add(each.not());
    }
    model.addBoolOr(or);
  }

  /** At least one of the choices, wherever all the conditions hold. */
  void oneOf(Collection<Literal> choices, Literal... where) {
    List<Literal> or = new ArrayList<>(choices);
    for (Literal each : where) {
      or.add(each.not());
    }
    model.addBoolOr(or);
  }

  void equal(LinearArgument one, LinearArgument other, Literal... where) {
    where(model.addEquality(one, other), where);
  }

  void atMost(LinearArgument one, LinearArgument other, Literal... where) {
    where(model.addLessOrEqual(one, other), where);
  }

  void atMost(LinearArgument one, long most, Literal... where) {
    where(model.addLessOrEqual(one, most), where);
  }

  private static void where(Constraint constraint, Literal... where) {
    if (where.length > 0) {
      constraint.onlyEnforceIf(where);
    }
  }

  /** The later of some minutes. */
  LinearArgument latest(List<? extends LinearArgument> all, String name) {
    if (all.size() == 1) {
      return all.getFirst();
    }
    IntVar latest = minute(name);
    model.addMaxEquality(latest, all);
    return latest;
  }

  /** The least whole number that is no less than an amount over a divisor rounded down, where less is better. */
  IntVar floored(LinearArgument amount, long divisor, long most, String name) {
    IntVar points = number(0, most, name);
    LinearExpr above = LinearExpr.newBuilder().addTerm(points, divisor).addTerm(amount, -1).build();
    model.addGreaterOrEqual(above, 1 - divisor);
    return points;
  }
}
