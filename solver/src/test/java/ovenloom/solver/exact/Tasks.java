package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn.Act;

/** All that takes hands, and who of the cooks does it. */
final class Tasks {

  private static final int SLIP = 3;

  private final Cp cp;
  private final Steps steps;
  private final Collection<Cook> cooks;
  private final List<Task> all = new ArrayList<>();

  /**
   * Of all steps, bakes and washes.
   *
   * @param cooks all there are, or one for all that are alike
   */
  Tasks(Cp cp, Steps steps, List<Bake> bakes, List<WashUp> washes, Collection<Cook> cooks) {
    this.cp = cp;
    this.steps = steps;
    this.cooks = cooks;
    for (BatchStep step : steps.all()) {
      Bake bake = bakes.stream().filter(each -> each.step().equals(step)).findFirst().orElse(null);
      if (bake != null) {
        door(Act.LOAD, bake, steps.start(step.index()), bake.need().load());
      }
      step.step().hands().forEach(hands -> work(step, bake, hands));
      if (bake != null) {
        door(Act.UNLOAD, bake, Cp.plus(bake.out(), -bake.need().unload()), bake.need().unload());
      }
    }
    washes.forEach(this::wash);
  }

  List<Task> all() {
    return all;
  }

  private void door(Act act, Bake bake, LinearArgument start, int minutes) {
    int i = bake.step().index();
    boolean isSoon = act == Act.LOAD || bake.afterwards() == null || bake.afterwards().oven().isEmpty();
    int latest = isSoon ? steps.latestEnd(i) : cp.to();
    Stretch window = new Stretch(steps.soonest(i), Math.max(steps.soonest(i), latest));
    add(act, bake.step(), bake, start, minutes, 1, null, null, window);
  }

  private void wash(WashUp wash) {
    add(Act.WORK, null, null, wash.start(), wash.minutes(), 1, null, wash.isDone(),
        new Stretch(cp.from(), cp.to()));
  }

  private void work(BatchStep step, @Nullable Bake bake, Need.Hands hands) {
    int i = step.index();
    Stretch window = new Stretch(steps.soonest(i), Math.max(steps.soonest(i), steps.latestEnd(i)));
    boolean isFixed = step.minutes() == step.mostMinutes();
    LinearArgument start = switch (hands.moment()) {
      case Need.Moment.Throughout() -> steps.start(i);
      case Need.Moment.First first -> steps.start(i);
      case Need.Moment.Last(int minutes) -> Cp.plus(steps.end(i), -minutes);
      case Need.Moment.At at -> bake == null ? around(step, at) : around(bake, at);
    };
    int minutes = switch (hands.moment()) {
      case Need.Moment.Throughout() -> step.minutes();
      case Need.Moment.First(int first) -> first;
      case Need.Moment.Last(int last) -> last;
      case Need.Moment.At at -> at.minutes();
    };
    boolean stretches = hands.moment() instanceof Need.Moment.Throughout
        || hands.moment() instanceof Need.Moment.At;
    if (stretches && !isFixed) {
      throw new UnsupportedOperationException("hands that move with the minutes of " + step);
    }
    add(Act.WORK, step, bake, start, minutes, hands.cooks(), hands.skill(), null, window);
  }

  private LinearArgument around(BatchStep step, Need.Moment.At at) {
    if (at.sharp()) {
      return Cp.plus(steps.start(step.index()), at.after());
    }
    int least = Math.max(0, at.after() - SLIP);
    int most = Math.min(step.minutes() - at.minutes(), at.after() + SLIP);
    IntVar start = cp.minute("moment");
    cp.model().addLinearConstraint(Cp.minus(start, steps.start(step.index())), least, most);
    return start;
  }

  /** In a bake that takes more or fewer minutes, as much later or sooner; half a minute rounds up. */
  private LinearArgument around(Bake bake, Need.Moment.At at) {
    BatchStep step = bake.step();
    int slip = at.sharp() ? 0 : SLIP;
    IntVar start = cp.minute("moment");
    LinearArgument after = Cp.minus(start, steps.start(step.index()));
    for (Bake.Way way : bake.ways()) {
      int scaled = (2 * at.after() * way.minutes() + step.minutes()) / (2 * step.minutes());
      int least = Math.max(0, scaled - slip);
      int most = Math.min(way.minutes() - at.minutes(), scaled + slip);
      cp.model().addLinearConstraint(after, least, most).onlyEnforceIf(way.taken());
    }
    return start;
  }

  private void add(Act act, @Nullable BatchStep step, @Nullable Bake bake, LinearArgument start, int minutes,
      int hands, @Nullable String skill, @Nullable Literal isDone, Stretch window) {
    Map<Cook, Literal> by = new LinkedHashMap<>();
    List<Literal> skilled = new ArrayList<>();
    for (Cook cook : cooks) {
      BoolVar does = cp.choice(cook.name() + " does it");
      by.put(cook, does);
      if (skill == null || cook.skills().contains(skill)) {
        skilled.add(does);
      }
    }
    cp.equal(Cp.sum(by.values()), isDone == null ? LinearExpr.constant(hands) : isDone);
    if (skill != null) {
      cp.oneOf(skilled);
    }
    all.add(new Task(act, step, bake, start, minutes, hands, isDone, by, window));
  }
}
