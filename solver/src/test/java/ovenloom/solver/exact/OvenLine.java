package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;

/** What one oven does over the day. */
record OvenLine(OvenDial dial, List<OvenGap> gaps, LinearArgument firstPreheat) {

  static OvenLine of(Cp cp, Oven oven, List<Bake> bakes) {
    OvenDial dial = new OvenDial(cp, oven, bakes);
    List<OvenGap> gaps = new ArrayList<>();
    for (int i = 1; i < dial.blocks().size(); i++) {
      gaps.add(new OvenGap(cp, dial, dial.blocks().get(i - 1), dial.blocks().get(i)));
    }
    return new OvenLine(dial, gaps, firstPreheat(cp, dial));
  }

  /** Says nothing new, but lets the solver see sooner how much an oven that is used must be on at least. */
  private static void tighten(Cp cp, OvenDial dial, IntVar preheat) {
    Warmth warmth = dial.oven().warmth();
    int least = dial.marks().stream().mapToInt(mark -> warmth.minutes(warmth.room(), mark)).min().orElse(0);
    LinearExprBuilder on = LinearExpr.newBuilder();
    dial.blocks().forEach(block -> on.add(Cp.minus(block.to(), block.from())));
    LinearExpr minutes = on.build();
    for (Bake bake : dial.uses().stream().map(OvenUse::bake).distinct().toList()) {
      cp.atMost(LinearExpr.term(bake.in(dial.oven()), least), preheat);
      cp.atMost(LinearExpr.term(bake.in(dial.oven()), Bending.least(bake.step())), minutes);
    }
  }

  /** From the temperature of the room. */
  private static LinearArgument firstPreheat(Cp cp, OvenDial dial) {
    if (dial.blocks().isEmpty()) {
      return LinearExpr.constant(0);
    }
    OvenBlock first = dial.blocks().getFirst();
    IntVar preheat = cp.number(0, cp.to() - cp.from(), "first preheat");
    cp.equal(preheat, LinearExpr.constant(0), first.isThere().not());
    first.at()
        .forEach((mark, at) -> cp.equal(preheat,
            LinearExpr.constant(dial.oven().warmth().minutes(dial.oven().warmth().room(), mark)), at));
    cp.atMost(Cp.plus(preheat, cp.from()), first.from());
    tighten(cp, dial, preheat);
    return preheat;
  }
}
