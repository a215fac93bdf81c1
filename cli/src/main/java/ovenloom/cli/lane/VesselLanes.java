package ovenloom.cli.lane;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ovenloom.cli.lane.Box.Use;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Wash;

/** A lane for each kind of vessel: full from the run that fills it until the last of its food is out, and at the wash. */
final class VesselLanes {

  /** A vessel that batches of one run are put into together, and so fill once. */
  private record Shared(Placement run, int which) {}

  private final Plan plan;
  private final Work work;

  private VesselLanes(Plan plan) {
    this.plan = plan;
    this.work = Work.of(plan.event());
  }

  static List<Lane> of(Plan plan) {
    VesselLanes lanes = new VesselLanes(plan);
    return plan.event().kitchen().vessels().stream().map(vessel -> lanes.lane(vessel.name())).toList();
  }

  static Box box(Wash wash) {
    return new Box(Use.WASH, wash.when(), wash.vessel(), "", Batches.only(1), wash.count(), 0);
  }

  private Lane lane(String vessel) {
    Map<Object, Box> full = new LinkedHashMap<>();
    work.fillings()
        .stream()
        .filter(filling -> filling.vessel().equals(vessel))
        .forEach(filling -> full.merge(key(filling), box(filling), VesselLanes::together));
    List<Box> boxes = new ArrayList<>(full.values());
    plan.washes()
        .stream()
        .filter(wash -> wash.vessel().equals(vessel))
        .map(VesselLanes::box)
        .forEach(boxes::add);
    return new Lane(Lane.Kind.VESSEL, vessel, vessel, boxes).stacked();
  }

  private Object key(Filling filling) {
    BatchStep first = work.steps().get(filling.first());
    int which = work.fillingsOf(first.index()).indexOf(filling);
    return first.step().together().oneVessel() ? new Shared(run(first), which) : filling;
  }

  private static Box together(Box one, Box other) {
    Stretch both = new Stretch(one.when().from(), Math.max(one.when().to(), other.when().to()));
    return one.during(both);
  }

  private Box box(Filling filling) {
    Placement run = run(work.steps().get(filling.first()));
    Stretch when = new Stretch(run.when().from(), Math.max(run.when().from(), end(filling, run)));
    return new Box(Use.FULL, when, run.dish(), run.step(), run.batches(), filling.count(), 0);
  }

  private int end(Filling filling, Placement run) {
    if (filling.toTheTable()) {
      return plan.event().endOfService(work.steps().get(filling.steps().getLast()).dish());
    }
    IntStream worked = filling.steps().stream().map(this::run).mapToInt(each -> each.when().to());
    IntStream moved = filling.movers().stream().map(this::run).mapToInt(VesselLanes::moved);
    return IntStream.concat(worked, moved).reduce(run.when().to(), Math::max);
  }

  /** When a run has taken its food out of other vessels: whoever is at work as it begins does that first. */
  private static int moved(Placement run) {
    return run.hands()
        .stream()
        .filter(hands -> hands.act() != HandsOn.Act.UNLOAD && hands.when().from() == run.when().from())
        .mapToInt(hands -> hands.when().to())
        .max()
        .orElse(run.when().from());
  }

  private Placement run(int step) {
    return run(work.steps().get(step));
  }

  private Placement run(BatchStep step) {
    return plan.placement(step.dish().name(), step.step().name(), step.batches().first());
  }
}
