package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Temperature;

/** Between two blocks of an oven: turned over with food inside, or warmed and cooled in time, held or off. */
final class OvenGap {

  private static final int LONG = 30;

  private final Cp cp;
  private final OvenDial dial;
  private final OvenBlock earlier;
  private final OvenBlock later;
  private final IntVar minutes;
  private final List<OvenUse> carried = new ArrayList<>();
  private final List<Literal> carries = new ArrayList<>();
  private final List<Literal> ownStages = new ArrayList<>();
  private final Literal isCarried;
  private final IntVar pair;
  private final IntVar turned;

  OvenGap(Cp cp, OvenDial dial, OvenBlock earlier, OvenBlock later) {
    this.cp = cp;
    this.dial = dial;
    this.earlier = earlier;
    this.later = later;
    minutes = cp.number(0, cp.to() - cp.from(), "gap");
    cp.equal(minutes, Cp.minus(later.from(), earlier.to()));
    carry();
    isCarried = cp.any(carries);
    pair = cp.number(0, (long) marks().size() * marks().size() - 1, "pair of marks");
    turned = cp.number(0, 1, "turned");
    isLongEnough();
    countTurns();
  }

  /** 1 if the dial is turned to another mark by someone who has to think of it. */
  LinearArgument turned() {
    return turned;
  }

  private List<Temperature> marks() {
    return dial.marks();
  }

  private Oven oven() {
    return dial.oven();
  }

  private void carry() {
    for (int i = 0; i < dial.uses().size(); i++) {
      for (int j = 0; j < dial.uses().size(); j++) {
        OvenUse next = dial.uses().get(j);
        if (dial.uses().get(i).isFollowedBy(next)) {
          Literal carries = cp.both(earlier.holds().get(i), later.holds().get(j));
          carried.add(next);
          this.carries.add(carries);
          if (!next.isAWait()) {
            ownStages.add(carries);
          }
        }
      }
    }
  }

  private void isLongEnough() {
    for (int i = 0; i < marks().size(); i++) {
      for (int j = 0; j < marks().size(); j++) {
        Literal one = at(earlier, i);
        Literal other = at(later, j);
        cp.equal(pair, LinearExpr.constant((long) i * marks().size() + j), one, other);
        cp.model()
            .addGreaterOrEqual(minutes, change(i, j))
            .onlyEnforceIf(new Literal[]{one, other, isCarried.not()});
      }
    }
  }

  private Literal at(OvenBlock block, int mark) {
    return Objects.requireNonNull(block.at().get(marks().get(mark)));
  }

  private int change(int from, int to) {
    return oven().warmth().minutes(marks().get(from), marks().get(to));
  }

  private void countTurns() {
    for (int i = 0; i < marks().size(); i++) {
      for (int j = 0; j < marks().size(); j++) {
        if (i != j) {
          LinearExprBuilder atLeast = LinearExpr.newBuilder().add(at(earlier, i)).add(at(later, j)).add(-1);
          ownStages.forEach(own -> atLeast.addTerm(own, -1));
          cp.atMost(atLeast, turned);
        }
      }
    }
  }

  /** Watt-minutes in the gap, or what a turn with food inside costs more or less than to hold; in so many watts. */
  LinearArgument energy(int unit) {
    int heating = oven().heating().watts() / unit;
    int holding = oven().holding().watts() / unit;
    long most = (long) (heating + holding) * (cp.to() - cp.from() + 1);
    long least = carries.isEmpty() ? 0 : -(long) holding * (cp.to() - cp.from());
    IntVar energy = cp.number(least, most, "energy of a gap");
    cp.atMost(LinearExpr.term(isCarried, least), energy);
    IntVar preheat = element(this::preheat, "preheat");
    IntVar cheaper = element((i, j, gap) -> cheaper(i, j, gap, heating, holding), "cheaper");
    Literal off = waitsOff(preheat);
    cp.equal(energy, LinearExpr.constant(0), later.isThere().not());
    cp.equal(energy, cheaper, later.isThere(), isCarried.not(), off.not());
    cp.equal(energy, LinearExpr.term(preheat, heating), later.isThere(), off);
    if (!carries.isEmpty()) {
      turnOver(energy, heating, holding);
    }
    return energy;
  }

  /** Food that waits in the oven switched off does so from the end of the earlier block, and is out before the preheat. */
  private Literal waitsOff(IntVar preheat) {
    List<Literal> all = new ArrayList<>();
    for (int i = 0; i < dial.uses().size(); i++) {
      OvenUse use = dial.uses().get(i);
      Wait wait = use.bake().afterwards();
      if (wait != null && !wait.off().isEmpty() && use.stage() == use.bake().stages().size() - 1) {
        Literal off = cp.both(earlier.holds().get(i), wait.off().getFirst());
        cp.equal(earlier.to(), wait.from(), off);
        cp.atMost(wait.to(), Cp.minus(later.from(), preheat), off, later.isThere());
        all.add(off);
      }
    }
    return cp.any(all);
  }

  private void turnOver(IntVar energy, int heating, int holding) {
    int calendar = cp.to() - cp.from();
    IntVar end = cp.minute("end of what is carried");
    List<Literal> picks = new ArrayList<>();
    for (int i = 0; i < carried.size(); i++) {
      cp.atMost(carried.get(i).when().to(), end, carries.get(i));
      BoolVar last = cp.choice("last that is carried");
      cp.model().addImplication(last, carries.get(i));
      cp.equal(end, carried.get(i).when().to(), last);
      picks.add(last);
    }
    cp.oneOf(picks, isCarried);
    IntVar change = element((i, j, gap) -> Math.min(change(i, j), calendar), "change");
    IntVar turning = cp.number(0, calendar, "turning");
    IntVar rest = cp.number(0, calendar, "rest");
    cp.equal(rest, Cp.minus(end, later.from()), isCarried);
    cp.model().addMinEquality(turning, new LinearArgument[]{change, rest});
    for (int i = 0; i < marks().size(); i++) {
      for (int j = 0; j < marks().size(); j++) {
        long more = j > i ? heating - holding : -holding;
        cp.equal(energy, LinearExpr.term(turning, more), at(earlier, i), at(later, j), isCarried);
      }
    }
  }

  private interface Figure {
    long of(int earlier, int later, int gap);
  }

  /** What a figure is for the marks and minutes of this gap. */
  private IntVar element(Figure figure, String name) {
    int gaps = cp.to() - cp.from() + 1;
    int pairs = marks().size() * marks().size();
    long[] figures = new long[pairs * gaps];
    long most = 0;
    for (int i = 0; i < figures.length; i++) {
      int two = i / gaps;
      figures[i] = figure.of(two / marks().size(), two % marks().size(), i % gaps);
      most = Math.max(most, figures[i]);
    }
    IntVar chosen = cp.number(0, most, name);
    LinearExpr index = LinearExpr.newBuilder().addTerm(pair, gaps).add(minutes).build();
    cp.model().addElement(index, figures, chosen);
    return chosen;
  }

  private long preheat(int earlier, int later, int gap) {
    return Math.min(gap, oven().warmth().preheat(marks().get(earlier), marks().get(later), gap));
  }

  private long cheaper(int earlier, int later, int gap, int heating, int holding) {
    Warmth warmth = oven().warmth();
    int change = Math.min(gap, warmth.minutes(marks().get(earlier), marks().get(later)));
    long held = (later > earlier ? (long) change * heating : 0) + (long) (gap - change) * holding;
    long off = preheat(earlier, later, gap) * heating;
    return gap < LONG ? held : Math.min(held, off);
  }
}
