package ovenloom.model.audit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/** Everything that takes no minutes and yet does not happen by itself, by the moment at which it happens. */
final class Moves {

  private final Case plan;
  private final SortedMap<Integer, Set<String>> moves = new TreeMap<>();

  private Moves(Case plan) {
    this.plan = plan;
  }

  /** What happens, in words, at each moment at which anything does. */
  static SortedMap<Integer, Set<String>> of(Case plan) {
    Moves moves = new Moves(plan);
    plan.work().steps().stream().filter(step -> step.dish().food()).forEach(moves::of);
    plan.plan().ovens().forEach(moves::of);
    return moves.moves;
  }

  private void of(BatchStep step) {
    Placement run = plan.run(step);
    if (run == null) {
      return;
    }
    List<BatchLink> feeders = plan.work().into(step.index()).stream().filter(BatchLink::carriesFood).toList();
    boolean isSomewhere = step.step().hasAPlace() || !plan.work().fillingsOf(step.index()).isEmpty();
    if (feeders.isEmpty() && isSomewhere) {
      add(run.when().from(), plan.name(run) + " is begun");
    }
    for (BatchLink link : feeders) {
      taken(plan.work().steps().get(link.from()), step, run);
    }
    waits(step, run);
    if (plan.work().goesToTheTable(step.index()) && !step.step().serve()) {
      int due = plan.event().due(step.dish(), step.batches().first());
      move(due, step, lastBefore(step, run, due), Spot.TABLE);
    }
  }

  private void taken(BatchStep from, BatchStep step, Placement run) {
    Placement earlier = plan.run(from);
    if (earlier != null) {
      int now = run.when().from();
      move(now, from, lastBefore(from, earlier, now), Spot.of(plan, run, step));
    }
  }

  private void waits(BatchStep step, Placement run) {
    Spot now = Spot.of(plan, run, step);
    for (Stay.Part part : parts(step)) {
      Spot next = Spot.of(plan, run, step, part);
      move(part.when().from(), step, now, next);
      now = next;
    }
  }

  /** Where its food is just before a moment: where it waits, or still where its step had it. */
  private Spot lastBefore(BatchStep step, Placement run, int moment) {
    Spot last = Spot.of(plan, run, step);
    for (Stay.Part part : parts(step)) {
      if (part.when().from() < moment) {
        last = Spot.of(plan, run, step, part);
      }
    }
    return last;
  }

  private List<Stay.Part> parts(BatchStep step) {
    Stay stay = plan.stay(step);
    List<Stay.Part> parts = stay == null ? List.of() : stay.parts();
    return parts.stream().filter(part -> part.when().minutes() > 0).toList();
  }

  private void move(int moment, BatchStep food, Spot from, Spot to) {
    if (!from.isWhere(to)) {
      add(moment, "food of " + food + " goes from " + from + " to " + to);
    }
  }

  private void of(OvenLog log) {
    OvenLog.@Nullable Span last = null;
    for (OvenLog.Span span : log.spans()) {
      boolean wasOn = last != null && last.when().to() == span.when().from();
      if (last != null && !wasOn) {
        add(last.when().to(), log.oven() + " is switched off");
      }
      if (last == null || !wasOn) {
        add(span.when().from(), log.oven() + " is switched on");
      } else if (!last.mark().temperature().equals(span.mark().temperature())) {
        add(span.when().from(), log.oven() + " is turned to " + span.mark());
      }
      last = span;
    }
    if (last != null) {
      add(last.when().to(), log.oven() + " is switched off");
    }
  }

  private void add(int moment, String what) {
    moves.computeIfAbsent(moment, at -> new LinkedHashSet<>()).add(what);
  }
}
