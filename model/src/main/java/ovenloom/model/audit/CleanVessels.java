package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Wash;

/** There is a clean vessel for whatever is put into one. */
record CleanVessels() implements KitchenRule {

  @Override
  public String id() {
    return "clean vessels";
  }

  @Override
  public String sentence() {
    return "There is a clean vessel for whatever is put into one.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Filled> fillings = Filled.of(plan);
    Set<String> names = new TreeSet<>();
    fillings.forEach(filled -> names.add(filled.vessel()));
    plan.plan().washes().forEach(wash -> names.add(wash.vessel()));
    for (String name : names) {
      Vessel vessel = plan.event().kitchen().vessel(name);
      if (vessel == null) {
        breaks.add(Break.of(this, List.of(name), null, 1, Unit.PIECES, "there is no " + name + " here"));
      } else {
        check(vessel, fillings.stream().filter(each -> each.vessel().equals(name)).toList(),
            washes(plan, name), breaks);
      }
    }
    return breaks;
  }

  private static List<Wash> washes(Case plan, String vessel) {
    return plan.plan()
        .washes()
        .stream()
        .filter(wash -> wash.vessel().equals(vessel))
        .sorted(Comparator.comparingInt(wash -> wash.when().from()))
        .toList();
  }

  /** From when it is filled until it has been washed a piece is one of those that are not to be had. */
  private void check(Vessel vessel, List<Filled> fillings, List<Wash> washes, List<Break> breaks) {
    Counted pool = new Counted(vessel.count());
    pool.takeFrom(vessel.open());
    int end = end(fillings, washes);
    for (Filled filled : fillings) {
      pool.take(new Stretch(filled.when().from(), end), filled.count(), filled.who());
    }
    int washed = 0;
    for (Wash wash : washes) {
      int pieces = checkWash(vessel, wash, dirty(fillings, wash.when().from()) - washed, breaks);
      pool.take(new Stretch(wash.when().to(), end), -pieces, vessel.name());
      washed += pieces;
    }
    pool.shortfalls().forEach(each -> breaks.add(tooFew(vessel, fillings, each)));
  }

  private static int end(List<Filled> fillings, List<Wash> washes) {
    return Stream.concat(fillings.stream().map(Filled::when), washes.stream().map(Wash::when))
        .mapToInt(Stretch::to)
        .max()
        .orElse(0);
  }

  private static int dirty(List<Filled> fillings, int minute) {
    return fillings.stream()
        .filter(filled -> filled.when().to() <= minute)
        .mapToInt(Filled::count)
        .sum();
  }

  /** How many pieces it does make clean: none that are not dirty. */
  private int checkWash(Vessel vessel, Wash wash, int dirty, List<Break> breaks) {
    int off = wash.count() < 1 ? 1 - wash.count() : wash.count() - dirty;
    if (off > 0) {
      breaks.add(Break.of(this, List.of(vessel.name()), wash.when(), off, Unit.PIECES,
          "washes " + wash.count() + " where " + dirty + " are dirty"));
    }
    int slip = Math.abs(wash.when().minutes() - vessel.wash());
    if (slip > 0) {
      breaks.add(Break.of(this, List.of(vessel.name()), wash.when(), slip, Unit.MINUTES,
          "the wash takes " + vessel.wash() + " min and is given " + wash.when().minutes()));
    }
    return Math.max(0, Math.min(wash.count(), dirty));
  }

  private Break tooFew(Vessel vessel, List<Filled> fillings, Counted.Shortfall each) {
    List<String> who = new ArrayList<>(List.of(vessel.name()));
    fillings.stream()
        .filter(filled -> filled.when().overlaps(each.when()))
        .map(Filled::who)
        .distinct()
        .forEach(who::add);
    return Break.of(this, who, each.when(), each.by(), Unit.PIECES,
        vessel.count() + " there are, and " + each.by() + " more would have to be clean");
  }
}
