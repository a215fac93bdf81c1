package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Temperature;

/**
 * Ovens that one vessel fills: one bake after the other, and between two as long as the oven takes to come to the next mark. Nobody
 * opens a door over another's bake, and nothing can be done in one breath.
 */
final class OneByOne {

  private final Cp cp;
  private final Steps steps;
  private final Map<Oven, List<OvenUse>> uses = new LinkedHashMap<>();

  /** By pairs of bakes, whether the one with the lower number is first. */
  private final Map<List<Integer>, BoolVar> isFirst = new LinkedHashMap<>();

  OneByOne(Cp cp, Steps steps, List<Bake> bakes) {
    this.cp = cp;
    this.steps = steps;
    bakes.forEach(this::refuseWhatIsNotSaidHere);
    for (Oven oven : steps.event().kitchen().ovens()) {
      List<OvenUse> here = OvenUse.all(cp, oven, bakes);
      uses.put(oven, here);
      oneAtATime(oven, here);
      here.forEach(use -> warmsUp(oven, use));
      for (int i = 0; i < here.size(); i++) {
        for (int j = i + 1; j < here.size(); j++) {
          comesToTheNextMark(oven, here.get(i), here.get(j));
        }
      }
    }
  }

  Map<Oven, List<OvenUse>> uses() {
    return uses;
  }

  private void refuseWhatIsNotSaidHere(Bake bake) {
    boolean isPlain = bake.stages().size() == 1 && bake.need().doorShut() == 0
        && (bake.afterwards() == null || bake.afterwards().oven().isEmpty());
    List<Vessel> pieces = Pieces.of(steps, bake.step().index());
    if (!isPlain || pieces.size() != 1) {
      throw new UnsupportedOperationException(
          "stages, doors shut, waits in the oven, or vessels side by side");
    }
  }

  private void oneAtATime(Oven oven, List<OvenUse> here) {
    List<IntervalVar> inside = new ArrayList<>();
    for (OvenUse use : here) {
      refuseTwoAtOnce(oven, use, here);
      Literal isIn = use.bake().in(oven);
      IntVar minutes = cp.number(1, cp.to() - cp.from(), "minutes inside");
      cp.equal(minutes, Cp.minus(use.when().to(), use.when().from()));
      inside
          .add(cp.model().newOptionalIntervalVar(use.when().from(), minutes, use.when().to(), isIn, "bake"));
    }
    cp.model().addNoOverlap(inside);
  }

  /** Else to have one at a time would forbid what the kitchen allows. */
  private void refuseTwoAtOnce(Oven oven, OvenUse use, List<OvenUse> others) {
    Rack rack = oven.racks().getFirst();
    Fit fit = new Fit(rack.width(), rack.depth(), steps.event().kitchen().gap());
    boolean fits = others.stream().anyMatch(other -> fit.holds(List.of(size(use), size(other))));
    if (fits || oven.racks().size() > 1) {
      throw new UnsupportedOperationException(use.bake().step() + " does not fill " + oven.name());
    }
  }

  private Size size(OvenUse use) {
    return Objects.requireNonNull(Pieces.of(steps, use.bake().step().index()).getFirst().size());
  }

  /** From the temperature of the room. */
  private void warmsUp(Oven oven, OvenUse use) {
    use.at().forEach((mark, at) -> {
      int preheat = oven.warmth().minutes(oven.warmth().room(), mark);
      cp.atMost(LinearExpr.constant(cp.from() + preheat), use.when().from(), at);
    });
  }

  private void comesToTheNextMark(Oven oven, OvenUse one, OvenUse other) {
    one.at().forEach((mark, at) -> other.at().forEach((another, there) -> {
      if (!mark.equals(another)) {
        Literal first = isFirst(one, other);
        between(oven, one, mark, other, another, at, there, first);
        between(oven, other, another, one, mark, at, there, first.not());
      }
    }));
  }

  private void between(Oven oven, OvenUse one, Temperature mark, OvenUse next, Temperature another,
      Literal... where) {
    int change = oven.warmth().minutes(mark, another);
    cp.atMost(Cp.plus(one.when().to(), change), next.when().from(), where);
  }

  private Literal isFirst(OvenUse one, OvenUse other) {
    return isFirst.computeIfAbsent(
        List.of(one.bake().step().index(), other.bake().step().index()),
        pair -> cp.choice(one.bake().step() + " before " + other.bake().step()));
  }
}
