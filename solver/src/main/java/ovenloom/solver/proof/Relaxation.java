package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.util.Domain;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.Tie;
import ovenloom.solver.place.Wait;

/**
 * An event as CP-SAT sees it, each batch by itself: when each step runs, by its minutes, its links, the table, how long food keeps and
 * who is there. What is hard to say is left out or made easier, never harder, so that every plan is one of its solutions.
 */
final class Relaxation {

  private final Extents extents;
  private final Predicate<Claim> kept;
  private final boolean isNarrow;
  private final CpModel model;
  private final Set<Claim> claims = new LinkedHashSet<>();
  private final IntVar[] starts;
  private final LinearArgument[] ends;

  /** @param kept which claims are to be met; others are given up */
  Relaxation(Extents extents, Predicate<Claim> kept) {
    this(extents, kept, false);
  }

  /** With all claims, where each run lies between the minutes between which it lies in every plan: so CP-SAT need not find these. */
  static Relaxation narrow(Extents extents) {
    return new Relaxation(extents, claim -> true, extents.isPossible());
  }

  private Relaxation(Extents extents, Predicate<Claim> kept, boolean isNarrow) {
    if (!NativeLibrary.isLoaded()) {
      throw new IllegalStateException("nothing can be proven here without CP-SAT");
    }
    this.extents = extents;
    this.kept = kept;
    this.isNarrow = isNarrow;
    model = new CpModel();
    int steps = runs().size();
    starts = new IntVar[steps];
    ends = new LinearArgument[steps];
    runs().forEach(this::add);
    laidOut().ties().forEach(this::link);
    laidOut().waits().forEach(this::keptForTheTable);
    inOrder();
  }

  CpModel model() {
    return model;
  }

  Extents extents() {
    return extents;
  }

  Runs laidOut() {
    return extents.laidOut();
  }

  Work work() {
    return laidOut().work();
  }

  List<Run> runs() {
    return extents.runs();
  }

  /** All claims that were met with, given up or not. */
  Set<Claim> claims() {
    return claims;
  }

  /** Whether a claim is to be met. */
  boolean keeps(Claim claim) {
    claims.add(claim);
    return kept.test(claim);
  }

  IntVar start(int run) {
    return starts[run];
  }

  LinearArgument end(int run) {
    return ends[run];
  }

  /** The first minute in which it may begin: were it alone, if some claims may be given up. */
  int from(Run run) {
    if (isNarrow) {
      return extents.earliest(run.index());
    }
    int from = Math.max(laidOut().event().from(), run.notBefore());
    return run.step().serve() ? Math.max(from, run.due()) : from;
  }

  /** The minute by which it must have ended, likewise. */
  int to(Run run) {
    if (isNarrow) {
      return extents.latest(run.index());
    }
    return run.step().serve() ? run.endOfService() : run.due();
  }

  static BatchStep step(Run run) {
    return run.units().getFirst();
  }

  private void add(Run run) {
    int i = run.index();
    int least = extents.least(i);
    int from = from(run);
    int last = Math.max(from, to(run) - least);
    starts[i] = model.newIntVarFromDomain(starts(run, from, last), "start of " + run);
    if (least == extents.most(i)) {
      ends[i] = LinearExpr.affine(starts[i], 1, least);
    } else {
      IntVar end = model.newIntVar(from + least, Math.max(from + least, to(run)), "end of " + run);
      model.addLinearConstraint(between(starts[i], end), least, extents.most(i));
      ends[i] = end;
    }
    model.addLessOrEqual(ends[i], to(run));
  }

  private Domain starts(Run run, int from, int last) {
    long[] attended = keeps(Claim.attended(step(run)))
        ? IntStream.rangeClosed(from, last)
            .filter(minute -> extents.mayBegin(run, minute))
            .asLongStream()
            .toArray()
        : new long[0];
    if (attended.length == 0 && keeps(Claim.attended(step(run)))) {
      model.addBoolOr(List.of());
    }
    return attended.length == 0 ? new Domain(from, last) : Domain.fromValues(attended);
  }

  private void link(Tie tie) {
    int earlier = tie.earlier();
    int later = tie.later();
    switch (tie.link().kind()) {
      case ORDER_ONLY -> follows(tie);
      case FOOD -> {
        follows(tie);
        BatchStep step = step(runs().get(earlier));
        if (work().leavesAStay(step.index()) && keeps(Claim.keeps(step))) {
          model.addLessOrEqual(between(ends[earlier], starts[later]), extents.longestGap(tie));
        }
      }
      case ALONGSIDE -> {
        model.addLessOrEqual(starts[earlier], starts[later]);
        model.addLessOrEqual(starts[later], ends[earlier]);
      }
    }
  }

  private void follows(Tie tie) {
    model.addGreaterOrEqual(between(ends[tie.earlier()], starts[tie.later()]), tie.link().least());
  }

  private void keptForTheTable(Wait wait) {
    for (Wait.Taker taker : wait.takers()) {
      if (taker.run() == Wait.TABLE && keeps(Claim.keeps(step(runs().get(wait.run()))))) {
        model.addGreaterOrEqual(ends[wait.run()], taker.due() - extents.longestWait(wait.run()));
      }
    }
  }

  private void inOrder() {
    for (List<Run> batches : BatchesOf.steps(runs())) {
      for (int i = 1; i < batches.size(); i++) {
        model.addLessOrEqual(ends[batches.get(i - 1).index()], ends[batches.get(i).index()]);
      }
    }
  }

  /** The minutes from one moment to another. */
  static LinearExpr between(LinearArgument one, LinearArgument other) {
    return LinearExpr.newBuilder().add(other).addTerm(one, -1).build();
  }
}
