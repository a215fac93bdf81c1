package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Work;

/** When each step runs: by its links, by the table, and batch after batch. */
final class Steps {

  private final Cp cp;
  private final Work work;
  private final List<IntVar> starts = new ArrayList<>();
  private final List<Span> runs = new ArrayList<>();
  private final int[] soonest;
  private final int[] latestEnd;

  Steps(Cp cp, Work work) {
    this.cp = cp;
    this.work = work;
    soonest = new int[work.steps().size()];
    latestEnd = new int[work.steps().size()];
    work.steps().forEach(this::soonest);
    work.steps().reversed().forEach(this::latest);
    work.steps().forEach(this::add);
    work.links().forEach(this::link);
    work.steps().forEach(this::inOrder);
  }

  Work work() {
    return work;
  }

  Event event() {
    return work.event();
  }

  List<BatchStep> all() {
    return work.steps();
  }

  IntVar start(int step) {
    return starts.get(step);
  }

  LinearArgument end(int step) {
    return runs.get(step).to();
  }

  Span run(int step) {
    return runs.get(step);
  }

  int soonest(int step) {
    return soonest[step];
  }

  int latestEnd(int step) {
    return latestEnd[step];
  }

  int due(BatchStep step) {
    return event().due(step.dish(), step.batches().first());
  }

  /** How many vessels a step's food is in. */
  int pieces(int step) {
    return work.fillingsOf(step).stream().mapToInt(Filling::count).sum();
  }

  private void soonest(BatchStep step) {
    int soonest = step.step().serve() ? Math.max(cp.from(), due(step)) : cp.from();
    for (BatchLink link : work.into(step.index())) {
      BatchStep earlier = work.steps().get(link.from());
      soonest = Math.max(soonest,
          this.soonest[earlier.index()] + Bending.least(earlier) + link.link().least());
    }
    this.soonest[step.index()] = soonest;
  }

  private void latest(BatchStep step) {
    int latest = step.step().serve() ? event().endOfService(step.dish()) : due(step);
    for (BatchLink link : work.outOf(step.index())) {
      BatchStep later = work.steps().get(link.to());
      latest = Math.min(latest, latestEnd[later.index()] - Bending.least(later) - link.link().least());
    }
    latestEnd[step.index()] = latest;
  }

  private void add(BatchStep step) {
    int i = step.index();
    int least = Math.max(cp.from(), soonest[i]);
    int most = latestEnd[i] - Bending.least(step);
    IntVar start = most < least ? never() : cp.number(least, most, "start of " + step);
    starts.add(start);
    if (step.step().bake() == null && step.minutes() == step.mostMinutes()) {
      runs.add(cp.span(start, Cp.plus(start, step.minutes())));
      return;
    }
    IntVar end = cp.minute("end of " + step);
    if (step.step().bake() == null) {
      cp.model().addLinearConstraint(Cp.minus(end, start), step.minutes(), step.mostMinutes());
    }
    cp.atMost(end, latestEnd[i]);
    runs.add(cp.span(start, end));
  }

  private IntVar never() {
    cp.model().addBoolOr(List.of());
    return cp.minute("never");
  }

  private void link(BatchLink link) {
    if (link.link().kind() == Link.Kind.ALONGSIDE) {
      throw new UnsupportedOperationException("alongside");
    }
    LinearArgument gap = Cp.minus(start(link.to()), end(link.from()));
    Integer most = link.link().most();
    cp.model()
        .addLinearConstraint(gap, link.link().least(), most == null ? cp.to() - cp.from() : most);
  }

  private void inOrder(BatchStep step) {
    for (BatchStep other : all()) {
      boolean isNext = other.dish().equals(step.dish()) && other.step().equals(step.step())
          && other.batches().first() == step.batches().first() + 1;
      if (isNext) {
        cp.atMost(end(step.index()), end(other.index()));
      }
    }
  }
}
