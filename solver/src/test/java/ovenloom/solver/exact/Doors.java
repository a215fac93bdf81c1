package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.menu.Need;

/** The door is opened over a bake by others twice at most, and not at all while it must stay shut. */
final class Doors {

  private static final int MOST = 2;

  private final Cp cp;
  private final Steps steps;
  private final Crew crew;
  private final List<Task> openings;

  Doors(Cp cp, Steps steps, List<Bake> bakes, List<Task> tasks, Crew crew) {
    this.cp = cp;
    this.steps = steps;
    this.crew = crew;
    openings = tasks.stream().filter(task -> task.bake() != null).toList();
    bakes.forEach(this::isShutLongEnough);
    bakes.forEach(this::isOpenedTwiceAtMost);
  }

  private LinearArgument from(Bake bake) {
    return Cp.plus(steps.start(bake.step().index()), bake.need().load());
  }

  private LinearArgument to(Bake bake) {
    return Cp.plus(steps.end(bake.step().index()), -bake.need().unload());
  }

  private Span opening(Task task) {
    return cp.span(task.start(), Cp.plus(task.start(), task.minutes()));
  }

  private void isShutLongEnough(Bake bake) {
    int minutes = bake.need().doorShut();
    if (minutes == 0) {
      return;
    }
    int most = bake.ways().stream().mapToInt(Bake.Way::minutes).min().orElseThrow() - bake.need().load()
        - bake.need().unload();
    if (minutes >= most && minutes != Need.Bake.TO_THE_END) {
      throw new UnsupportedOperationException("a door shut as long as the bake may last");
    }
    LinearArgument to = minutes >= most ? to(bake) : Cp.plus(from(bake), minutes);
    Span shut = cp.maybeEmpty(from(bake), to);
    for (Task task : openings) {
      Bake other = Objects.requireNonNull(task.bake());
      if (other.equals(bake)) {
        if (!task.isAtTheDoor()) {
          cp.keepApart(shut, opening(task));
        }
        continue;
      }
      for (Oven oven : steps.event().kitchen().ovens()) {
        cp.keepApart(shut, opening(task), bake.in(oven), other.in(oven));
      }
    }
  }

  private void isOpenedTwiceAtMost(Bake bake) {
    Span inside = cp.maybeEmpty(from(bake), to(bake));
    List<Task> others = openings.stream().filter(task -> !bake.equals(task.bake())).toList();
    if (others.size() <= MOST) {
      return;
    }
    LinearExprBuilder seen = LinearExpr.newBuilder();
    for (int i = 0; i < others.size(); i++) {
      Task task = others.get(i);
      BoolVar counts = cp.choice("is opened over it");
      List<Literal> or = new ArrayList<>(cp.apart(inside, opening(task)));
      or.add(counts);
      for (int j = 0; j < i; j++) {
        or.add(crew.inOneBreath(others.get(j), task));
      }
      for (Oven oven : steps.event().kitchen().ovens()) {
        cp.oneOf(or, bake.in(oven), Objects.requireNonNull(task.bake()).in(oven));
      }
      seen.add(counts);
    }
    cp.atMost(LinearExpr.newBuilder().add(seen).build(), MOST);
  }
}
