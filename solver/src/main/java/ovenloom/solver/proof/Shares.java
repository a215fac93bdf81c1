package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntervalVar;
import java.util.List;
import java.util.function.ToLongFunction;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Run;

/** At no minute is more taken of hands, burners, machines and racks than there is. */
final class Shares {

  private final Relaxation relaxation;
  private final CpModel model;
  private final Event event;
  private final Stretch calendar;
  private final IntervalVar[] whole;

  private Shares(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    event = relaxation.laidOut().event();
    calendar = new Stretch(event.from(), event.to());
    whole = relaxation.runs().stream().map(this::interval).toArray(IntervalVar[]::new);
  }

  /** @param washes that there are at least */
  static void add(Relaxation relaxation, List<Stint> stints, List<IntervalVar> washes) {
    Shares shares = new Shares(relaxation);
    shares.hands(stints, washes);
    List.of(BurnerSize.values()).forEach(shares::burners);
    shares.event.kitchen().appliances().forEach(shares::appliance);
  }

  private IntervalVar interval(Run run) {
    int i = run.index();
    int least = relaxation.extents().least(i);
    return least == relaxation.extents().most(i)
        ? model.newFixedSizeIntervalVar(relaxation.start(i), least, "run of " + run)
        : model.newIntervalVar(relaxation.start(i),
            model.newIntVar(least, relaxation.extents().most(i), "minutes of " + run), relaxation.end(i),
            "run of " + run);
  }

  /** Something that is shared, filled up where there is less of it than at other times. */
  static CumulativeConstraint shared(CpModel model, Capacity capacity) {
    CumulativeConstraint shared = model.addCumulative(capacity.most());
    for (Capacity.Lack lack : capacity.lacks()) {
      shared.addDemand(model.newFixedInterval(lack.when().from(), lack.when().minutes(), "less"),
          lack.amount());
    }
    return shared;
  }

  private void hands(List<Stint> stints, List<IntervalVar> washes) {
    CumulativeConstraint all = hands(stints, event.cooks(), "hands", stint -> stint.hands().cooks());
    washes.forEach(wash -> all.addDemand(wash, 1));
    for (String skill : Supplies.skills(event)) {
      List<Cook> able = event.cooks().stream().filter(cook -> cook.skills().contains(skill)).toList();
      hands(stints.stream().filter(stint -> stint.wants(skill)).toList(), able, "hands for " + skill,
          stint -> 1);
    }
  }

  private CumulativeConstraint hands(List<Stint> stints, List<Cook> cooks, String what,
      ToLongFunction<Stint> taken) {
    CumulativeConstraint hands = shared(model, Capacity.of(
        calendar,
        minute -> cooks.stream().filter(cook -> Capacity.isAtWork(cook, minute)).count(),
        cooks.stream().flatMapToInt(Capacity::turns)));
    for (Stint stint : stints) {
      if (stint.minutes() > 0 && relaxation.keeps(Claim.takes(Relaxation.step(stint.run()), what))) {
        hands.addDemand(model.newFixedSizeIntervalVar(stint.from(), stint.minutes(), "hands"),
            taken.applyAsLong(stint));
      }
    }
    return hands;
  }

  private void burners(BurnerSize size) {
    List<Burner> burners = event.kitchen()
        .burners()
        .stream()
        .filter(each -> each.size().compareTo(size) >= 0)
        .toList();
    String what = Supplies.name(size);
    CumulativeConstraint stove = shared(model, Capacity.of(
        calendar,
        minute -> burners.stream().mapToLong(each -> Capacity.open(each.open(), 1, minute)).sum(),
        burners.stream().flatMapToInt(each -> Capacity.turns(each.open()))));
    for (Run run : BatchesOf.inVesselsOfTheirOwn(relaxation.runs())) {
      take(stove, run, pots(run, size), what);
    }
  }

  /** How many of its pots need a burner of at least that size. */
  private static long pots(Run run, BurnerSize size) {
    var need = run.step().burner();
    if (need == null) {
      return 0;
    }
    boolean isAsked = need.atLeast().compareTo(size) >= 0;
    return run.pieces().isEmpty() ? (isAsked ? 1 : 0)
        : run.pieces().stream().filter(piece -> isAsked || piece.burner().compareTo(size) >= 0).count();
  }

  private void appliance(Appliance appliance) {
    CumulativeConstraint places = shared(model, Capacity.of(
        calendar,
        minute -> Capacity.open(appliance.open(), appliance.capacity(), minute),
        Capacity.turns(appliance.open())));
    for (Run run : BatchesOf.apart(relaxation.runs())) {
      take(places, run, Supplies.isAt(run, appliance) ? 1 : 0, "the " + appliance.name());
    }
  }

  private void take(CumulativeConstraint shared, Run run, long amount, String what) {
    if (amount > 0 && relaxation.keeps(Claim.takes(Relaxation.step(run), what))) {
      shared.addDemand(whole[run.index()], amount);
    }
  }
}
