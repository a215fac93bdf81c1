package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Course;

/** The points of the wishes that ask what cooks, dials and burners do minute by minute, where less is better. */
record Bustle(Cp cp, Steps steps, List<OvenLine> ovens, Stove stove, Crew crew) {

  private static final int MOST = 1_000_000;

  /** A point for each minute of hands in the hour before a course, two for one with no hand free in two hours, one for 20 minutes. */
  LinearArgument calm() {
    LinearExprBuilder calm = LinearExpr.newBuilder();
    for (int minute = cp.from(); minute < cp.to(); minute++) {
      if (before(60).contains(minute)) {
        for (Cook cook : steps.event().cooks()) {
          calm.add(crew.busy(cook, minute));
        }
      }
      if (before(120).contains(minute)) {
        calm.addTerm(noHandIsFree(minute), 2);
      }
    }
    return calm.add(cp.floored(crew.minutes(), 20, MOST, "work on the day")).build();
  }

  private Stretches before(int minutes) {
    List<Stretch> before = new ArrayList<>();
    for (Course course : steps.event().courses()) {
      if (steps.event().dishes().stream().anyMatch(dish -> dish.course().equals(course.name()))) {
        before.add(new Stretch(course.at() - minutes, course.at()));
      }
    }
    return new Stretches(before);
  }

  private LinearArgument noHandIsFree(int minute) {
    LinearExprBuilder busy = LinearExpr.newBuilder();
    int there = 0;
    for (Cook cook : steps.event().cooks()) {
      if (new Stretches(cook.hours()).without(new Stretches(cook.breaks())).contains(minute)) {
        busy.add(crew.busy(cook, minute));
        there++;
      }
    }
    if (there == 0) {
      return LinearExpr.constant(0);
    }
    IntVar none = cp.number(0, 1, "no hand is free");
    cp.atMost(busy.add(1 - there), none);
    return none;
  }

  /** Five points for each turn that someone has to think of. */
  LinearArgument dial() {
    LinearExprBuilder turns = LinearExpr.newBuilder();
    ovens.forEach(oven -> oven.gaps().forEach(gap -> turns.addTerm(gap.turned(), 5)));
    return turns.build();
  }

  /** A point for a tenth of a kilowatt-hour. */
  LinearArgument energy() {
    int unit = 100;
    LinearExprBuilder energy = LinearExpr.newBuilder();
    for (OvenLine line : ovens) {
      Oven oven = line.dial().oven();
      line.dial()
          .blocks()
          .forEach(
              block -> energy.addTerm(Cp.minus(block.to(), block.from()), oven.holding().watts() / unit));
      line.gaps().forEach(gap -> energy.add(gap.energy(unit)));
      energy.addTerm(line.firstPreheat(), oven.heating().watts() / unit);
    }
    List<Integer> powers = steps.event()
        .kitchen()
        .burners()
        .stream()
        .map(Burner::power)
        .map(power -> power.watts())
        .distinct()
        .toList();
    if (powers.size() > 1) {
      throw new UnsupportedOperationException("burners of different power");
    }
    stove.minutes().forEach(minutes -> energy.addTerm(minutes, powers.getFirst() / unit));
    return cp.floored(energy.build(), 6000 / unit, MOST, "energy");
  }
}
