package ovenloom.solver.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.menu.Need;
import ovenloom.solver.place.BakeChoice;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;

/**
 * What is spent on heat at least: each pot on the weakest burner that will do; one oven warmed once, for the bake that asks for most; and
 * bakes that are never in an oven together, one after another.
 */
final class EnergyFloor {

  /** A tenth of a kilowatt hour, in watt minutes. */
  private static final long A_POINT = 6_000;

  /** Bakes, the longest first, from which it is tried to find others that are never with them. */
  private static final int TRIED = 20;

  private final Extents extents;
  private final Kitchen kitchen;

  private EnergyFloor(Extents extents) {
    this.extents = extents;
    kitchen = extents.laidOut().event().kitchen();
  }

  static long points(Extents extents) {
    EnergyFloor floor = new EnergyFloor(extents);
    return (floor.burners() + floor.warming() + floor.baking()) / A_POINT;
  }

  private long burners() {
    return BatchesOf.inVesselsOfTheirOwn(extents.runs()).stream().mapToLong(this::burners).sum();
  }

  private long burners(Run run) {
    Need.OnBurner need = run.step().burner();
    if (need == null) {
      return 0;
    }
    List<BurnerSize> pots = run.pieces().isEmpty() ? List.of(need.atLeast())
        : run.pieces()
            .stream()
            .map(piece -> piece.burner().compareTo(need.atLeast()) > 0 ? piece.burner() : need.atLeast())
            .toList();
    return extents.least(run.index()) * pots.stream().mapToLong(this::weakest).sum();
  }

  private long weakest(BurnerSize size) {
    return kitchen.burners()
        .stream()
        .filter(burner -> burner.size().compareTo(size) >= 0)
        .map(Burner::power)
        .mapToLong(power -> power.watts())
        .min()
        .orElse(0);
  }

  private long warming() {
    return extents.runs().stream().mapToLong(run -> least(run, this::warming)).max().orElse(0);
  }

  private long warming(BakeChoice way) {
    Oven oven = kitchen.ovens().get(way.oven());
    Warmth warmth = oven.warmth();
    return (long) warmth.minutes(warmth.room(), way.marks().getFirst().temperature())
        * oven.heating().watts();
  }

  private long least(Run run, ToLongFunction<BakeChoice> cost) {
    return extents.waysToBake(run.index()).stream().mapToLong(cost).min().orElse(0);
  }

  /** The stages of a bake may cool an oven, which costs nothing. */
  private long baking(Run run) {
    return least(run, way -> way.marks().size() > 1 ? 0
        : (long) way.minutes() * kitchen.ovens().get(way.oven()).holding().watts());
  }

  private long baking() {
    List<Run> bakes = BatchesOf.apart(extents.runs())
        .stream()
        .filter(run -> baking(run) > 0)
        .sorted(Comparator.comparingLong((Run run) -> -baking(run)))
        .toList();
    return bakes.stream().limit(TRIED).mapToLong(first -> after(first, bakes)).max().orElse(0);
  }

  /** Of one bake and as many others as are found of which no two are ever together. */
  private long after(Run first, List<Run> bakes) {
    List<Run> apart = new ArrayList<>(List.of(first));
    for (Run next : bakes) {
      if (apart.stream().noneMatch(other -> mayBeTogether(next, other))) {
        apart.add(next);
      }
    }
    return apart.stream().mapToLong(this::baking).sum();
  }

  private boolean mayBeTogether(Run one, Run other) {
    boolean meet = extents.earliest(one.index()) < extents.latest(other.index())
        && extents.earliest(other.index()) < extents.latest(one.index());
    return one.equals(other) || (meet && Ovens.haveAMarkInCommon(extents, one, other));
  }
}
