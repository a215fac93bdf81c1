package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Starts;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.TemperatureUnit;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** Each bake in one oven, in one mode, each of its stages at one mark of its window. */
final class Bakes {

  private static final int SLIP = 3;
  private static final double FAN_KELVINS = 20;
  private static final double FAN_KELVINS_IN_F = 25 / 1.8;

  private final Cp cp;
  private final Steps steps;
  private final Bending bending;
  private final List<Bake> all = new ArrayList<>();

  Bakes(Cp cp, Steps steps, Waits waits, Bending bending) {
    this.cp = cp;
    this.steps = steps;
    this.bending = bending;
    for (BatchStep step : steps.all()) {
      Need.Bake need = step.step().bake();
      if (need != null) {
        all.add(bake(step, need, waits.of(step.index())));
      }
    }
  }

  List<Bake> all() {
    return all;
  }

  private Bake bake(BatchStep step, Need.Bake need, @Nullable Wait wait) {
    List<Bake.Way> ways = new ArrayList<>();
    for (Oven oven : steps.event().kitchen().ovens()) {
      for (String mode : oven.modes()) {
        add(oven, mode, step, List.of(), 0, ways);
      }
    }
    cp.model().addExactlyOne(ways.stream().<Literal>map(Bake.Way::taken).toList());
    LinearExprBuilder minutes = LinearExpr.newBuilder();
    ways.forEach(way -> minutes.addTerm(way.taken(), way.minutes()));
    cp.model().addEquality(Cp.minus(steps.end(step.index()), steps.start(step.index())), minutes.build());
    LinearArgument out = out(step, wait);
    Span inside = cp.span(steps.start(step.index()), out);
    return new Bake(cp, step, need, ways, stages(step, need), out, inside, wait);
  }

  /** All choices of marks that begin with these. */
  private void add(Oven oven, String mode, BatchStep step, List<Setting> marks, long tenths,
      List<Bake.Way> ways) {
    Need.Bake need = Objects.requireNonNull(step.step().bake());
    if (marks.size() == need.stages().size()) {
      bending.starts(step).forEach(start -> add(oven, mode, step, marks, start, tenths, ways));
      return;
    }
    Need.Stage stage = need.stages().get(marks.size());
    Double shift = shift(oven, stage.mode(), mode);
    if (shift == null) {
      return;
    }
    Temperature from = stage.from().temperature().plusKelvins(shift);
    Temperature to = stage.to().temperature().plusKelvins(shift);
    Temperature best = oven.dial().nearest(stage.written().temperature().plusKelvins(shift)).temperature();
    for (Setting mark : oven.dial().within(from, to)) {
      List<Setting> more = new ArrayList<>(marks);
      more.add(mark);
      long off = Math.round(Math.abs(mark.temperature().kelvinsAbove(best)) * 10);
      add(oven, mode, step, more, tenths + off, ways);
    }
  }

  private void add(Oven oven, String mode, BatchStep step, List<Setting> marks, Starts.Start start,
      long tenths,
      List<Bake.Way> ways) {
    int minutes = bending.minutes().needed(step, oven, mode, marks, start.celsius());
    if (minutes != BakeMinutes.NEVER) {
      ways.add(new Bake.Way(oven, mode, marks, start, tenths, minutes,
          cp.choice("bake in " + oven.name() + " " + mode + " " + marks + " " + start.state())));
    }
  }

  /** Kelvins from what is written for one mode to what it is in another; null where nobody can say. */
  private static @Nullable Double shift(Oven oven, String written, String mode) {
    double fan = oven.dial().unit() == TemperatureUnit.FAHRENHEIT ? FAN_KELVINS_IN_F : FAN_KELVINS;
    if (written.equals(mode)) {
      return 0.0;
    }
    if (written.equals(Oven.STILL) && mode.equals(Oven.FAN)) {
      return -fan;
    }
    return written.equals(Oven.FAN) && mode.equals(Oven.STILL) ? fan : null;
  }

  private List<Span> stages(BatchStep step, Need.Bake need) {
    List<Span> stages = new ArrayList<>();
    LinearArgument from = steps.start(step.index());
    for (Need.Stage stage : need.stages().subList(0, need.stages().size() - 1)) {
      int minutes = stage.minutes() == null ? 0 : stage.minutes();
      IntVar to = cp.minute("turn");
      cp.model().addLinearConstraint(Cp.minus(to, from), Math.max(1, minutes - SLIP), minutes + SLIP);
      stages.add(cp.span(from, to));
      from = to;
    }
    cp.atMost(Cp.plus(from, 1), steps.end(step.index()));
    stages.add(cp.span(from, steps.end(step.index())));
    return stages;
  }

  private LinearArgument out(BatchStep step, @Nullable Wait wait) {
    LinearArgument end = steps.end(step.index());
    if (wait == null || wait.oven().isEmpty()) {
      return end;
    }
    IntVar out = cp.minute("out");
    Literal stays = cp.any(wait.oven());
    cp.equal(out, end, stays.not());
    cp.equal(out, wait.to(), stays);
    return out;
  }
}
