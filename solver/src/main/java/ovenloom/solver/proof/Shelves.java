package ovenloom.solver.proof;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.solver.place.Piece;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Wait;
import ovenloom.solver.timeline.Footprints;
import ovenloom.solver.timeline.RackFit;

/**
 * What stands in a cold or hot place covers no more than its shelves, and of an only shelf what does not fit beside each other is there one after
 * the other: steps that name one place, and food that waits on the counter or in one cold place, and nowhere else. Food that more than one
 * step takes is left out.
 */
final class Shelves {

  /** Of more foods on one shelf only the area is looked at. */
  private static final int MOST_ON_ONE = 60;

  private final Relaxation relaxation;
  private final CpModel model;
  private final Event event;
  private final Map<Integer, List<Food>> inStores = new TreeMap<>();

  /** What stands there, and when. */
  private record Food(List<Piece> pieces, IntervalVar when) {}

  private Shelves(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    event = relaxation.laidOut().event();
  }

  static void add(Relaxation relaxation) {
    Shelves shelves = new Shelves(relaxation);
    BatchesOf.inVesselsOfTheirOwn(relaxation.runs()).forEach(shelves::during);
    relaxation.laidOut().waits().forEach(shelves::after);
    shelves.inStores.forEach(shelves::share);
  }

  private void during(Run run) {
    var shelf = run.step().shelf();
    if (shelf != null && shelf.stores().size() == 1) {
      Store store = event.kitchen().store(shelf.stores().getFirst());
      int number = event.kitchen().stores().indexOf(store);
      put(run, number, run.pieces(), interval(relaxation.start(run.index()), relaxation.end(run.index())));
    }
  }

  private void put(Run run, int store, List<Piece> pieces, IntervalVar when) {
    if (relaxation.keeps(claim(run, store))) {
      inStores.computeIfAbsent(store, none -> new ArrayList<>()).add(new Food(pieces, when));
    }
  }

  private Claim claim(Run run, int store) {
    return Claim.takes(Relaxation.step(run), "room in the " + event.kitchen().stores().get(store).name());
  }

  private IntervalVar interval(LinearArgument from, LinearArgument to) {
    return model.newIntervalVar(from, minutes("there"), to, "on a shelf");
  }

  private IntVar minutes(String name) {
    return model.newIntVar(0, event.to() - event.from(), name);
  }

  private void after(Wait wait) {
    Run run = relaxation.runs().get(wait.run());
    List<Integer> stores = relaxation.extents().stores(wait);
    boolean isItsOwn = !run.step().together().oneVessel() && wait.takers().size() == 1;
    boolean isInOnePlace = stores.size() == 1 && !relaxation.extents().mayStayOnTheHeat(wait)
        && event.kitchen().stores().get(stores.getFirst()).kind().isCold();
    if (isItsOwn && isInOnePlace && relaxation.keeps(Claim.keeps(Relaxation.step(run)))) {
      put(run, stores.getFirst(), wait.pieces(), awayFromTheCounter(run, wait, stores.getFirst()));
    }
  }

  /** The counter beyond its free minutes and the cold, each against its limit, are no more than one together. */
  private IntervalVar awayFromTheCounter(Run run, Wait wait, int store) {
    Wait.Taker taker = wait.takers().getFirst();
    LinearArgument from = relaxation.end(run.index());
    LinearArgument to = taker.run() == Wait.TABLE ? LinearExpr.constant(taker.due())
        : relaxation.start(taker.run());
    int limit = wait.keeps().stores().getOrDefault(event.kitchen().stores().get(store).name(), 0);
    int counter = wait.onTheCounter(taker);
    BoolVar isAway = model.newBoolVar("is put away");
    IntVar aside = model.newIntVar(event.from(), event.to(), "aside");
    IntVar back = model.newIntVar(event.from(), event.to(), "back");
    IntVar away = minutes("away");
    model.addLessOrEqual(from, aside).onlyEnforceIf(isAway);
    model.addLessOrEqual(back, to).onlyEnforceIf(isAway);
    model.addLessOrEqual(away, limit);
    model.addEquality(away, 0).onlyEnforceIf(isAway.not());
    LinearExpr standing = LinearExpr.newBuilder().add(to).addTerm(from, -1).addTerm(away, -1).build();
    model.addLessOrEqual(standing, Keeps.FREE_ON_THE_COUNTER + counter);
    model.addLessOrEqual(
        LinearExpr.newBuilder().addTerm(standing, limit).addTerm(away, counter).build(),
        (long) limit * (counter + Keeps.FREE_ON_THE_COUNTER));
    return model.newOptionalIntervalVar(aside, away, back, isAway, "on a shelf");
  }

  private void share(int number, List<Food> foods) {
    List<Shelf> shelves = event.kitchen().stores().get(number).shelves();
    var room = model
        .addCumulative(shelves.stream().mapToLong(each -> Areas.of(each.width(), each.depth())).sum());
    foods.forEach(food -> room.addDemand(food.when(), area(food)));
    if (shelves.size() == 1 && foods.size() <= MOST_ON_ONE) {
      apart(shelves.getFirst(), foods);
    }
  }

  private long area(Food food) {
    Footprints footprints = relaxation.laidOut().footprints();
    return shapes(food).mapToLong(
        shape -> (footprints.longSide(shape) / 1000L) * (footprints.shortSide(shape) / 1000L)).sum();
  }

  private static IntStream shapes(Food... foods) {
    return Stream.of(foods)
        .flatMap(food -> food.pieces().stream())
        .mapToInt(Piece::shape)
        .filter(shape -> shape != Piece.NO_ROOM);
  }

  private void apart(Shelf shelf, List<Food> foods) {
    RackFit fit = new RackFit(relaxation.laidOut().footprints(), (int) shelf.width().micrometres(),
        (int) shelf.depth().micrometres(), (int) event.kitchen().gap().micrometres());
    for (int i = 0; i < foods.size(); i++) {
      for (Food other : foods.subList(i + 1, foods.size())) {
        int[] both = shapes(foods.get(i), other).toArray();
        if (both.length <= RackFit.EXACT && !fit.fits(both, both.length)) {
          model.addNoOverlap(List.of(foods.get(i).when(), other.when()));
        }
      }
    }
  }
}
