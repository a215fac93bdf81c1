package ovenloom.solver.proof;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.BakeChoice;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;

/**
 * Each bake is in one oven that has a mark for it, for as long as it takes there; what is inside covers no more than the area of its
 * racks, and what has no mark in common is never inside at once.
 */
final class Ovens {

  private static final String RACKS = "the oven racks";

  /** Beyond as many pairs of bakes their marks are left out. */
  private static final int MOST_PAIRS = 3_000;

  /**
   * A bake that may be in an oven.
   *
   * @param ways to bake it there
   */
  private record Inside(Run run, List<BakeChoice> ways, BoolVar isThere) {}

  /** Whether two bakes may be in an oven together, as far as its dial goes. */
  static boolean haveAMarkInCommon(Extents extents, Run one, Run other) {
    return goTogether(extents.waysToBake(one.index()), extents.waysToBake(other.index()));
  }

  private static boolean goTogether(List<BakeChoice> some, List<BakeChoice> others) {
    return some.stream().anyMatch(way -> others.stream().anyMatch(other -> goTogether(way, other)));
  }

  private static boolean goTogether(BakeChoice one, BakeChoice other) {
    boolean inStages = one.marks().size() > 1 || other.marks().size() > 1;
    return inStages ? one.oven() == other.oven() : one.goesWith(other);
  }

  private final Relaxation relaxation;
  private final CpModel model;
  private final Event event;
  private final List<List<Inside>> inside = new ArrayList<>();

  private Ovens(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    event = relaxation.laidOut().event();
    event.kitchen().ovens().forEach(oven -> inside.add(new ArrayList<>()));
  }

  static void add(Relaxation relaxation) {
    Ovens ovens = new Ovens(relaxation);
    relaxation.runs()
        .stream()
        .filter(run -> run.step().bake() != null)
        .filter(run -> relaxation.keeps(Claim.takes(Relaxation.step(run), RACKS)))
        .forEach(ovens::inOneOfThem);
    ovens.racks();
    ovens.marks();
  }

  private void inOneOfThem(Run run) {
    Map<Integer, List<BakeChoice>> ways = new TreeMap<>();
    relaxation.extents()
        .waysToBake(run.index())
        .forEach(way -> ways.computeIfAbsent(way.oven(), none -> new ArrayList<>()).add(way));
    List<Literal> choices = new ArrayList<>();
    LinearExpr minutes = Relaxation.between(relaxation.start(run.index()), relaxation.end(run.index()));
    ways.forEach((oven, here) -> {
      BoolVar isThere = model.newBoolVar(run + " in oven " + oven);
      int least = here.stream().mapToInt(BakeChoice::minutes).min().orElseThrow();
      model.addGreaterOrEqual(minutes, least).onlyEnforceIf(isThere);
      choices.add(isThere);
      inside.get(oven).add(new Inside(run, here, isThere));
    });
    if (!choices.isEmpty()) {
      model.addExactlyOne(choices);
    }
  }

  private void racks() {
    Areas areas = new Areas(relaxation.work());
    for (int number = 0; number < inside.size(); number++) {
      Oven oven = event.kitchen().ovens().get(number);
      long there = oven.racks().stream().mapToLong(Ovens::area).sum();
      CumulativeConstraint racks = Shares.shared(model, Capacity.of(
          new Stretch(event.from(), event.to()),
          minute -> there * Capacity.open(oven.open(), 1, minute),
          Capacity.turns(oven.open())));
      List<Run> apart = BatchesOf.inVesselsOfTheirOwn(inside.get(number).stream().map(Inside::run).toList());
      for (Inside bake : inside.get(number)) {
        if (apart.contains(bake.run())) {
          racks.addDemand(interval(bake), areas.of(bake.run()));
        }
      }
    }
  }

  private static long area(Rack rack) {
    return Areas.of(rack.width(), rack.depth());
  }

  private IntervalVar interval(Inside bake) {
    int i = bake.run().index();
    IntVar minutes = model.newIntVar(relaxation.extents().least(i), relaxation.extents().most(i), "minutes");
    return model.newOptionalIntervalVar(
        relaxation.start(i), minutes, relaxation.end(i), bake.isThere(), "bake");
  }

  private void marks() {
    for (List<Inside> oven : inside) {
      if (oven.size() * (oven.size() - 1) / 2 <= MOST_PAIRS) {
        for (int i = 0; i < oven.size(); i++) {
          for (Inside other : oven.subList(i + 1, oven.size())) {
            apart(oven.get(i), other);
          }
        }
      }
    }
  }

  private void apart(Inside one, Inside other) {
    if (goTogether(one.ways(), other.ways())) {
      return;
    }
    model.addBoolOr(List.of(
        one.isThere().not(), other.isThere().not(), before(one.run(), other.run()),
        before(other.run(), one.run())));
  }

  private Literal before(Run one, Run other) {
    BoolVar before = model.newBoolVar(one + " before " + other);
    model.addLessOrEqual(relaxation.end(one.index()), relaxation.start(other.index())).onlyEnforceIf(before);
    return before;
  }
}
