package ovenloom.solver.proof;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.Wish;
import ovenloom.solver.place.Extents;

/** A relaxation with what its solutions cost at least: at the table, and by the wishes. */
final class Bounds {

  private final Relaxation relaxation;
  private final LinearArgument atTheTable;
  private final LinearArgument wishes;

  Bounds(Extents extents) {
    relaxation = Relaxation.narrow(extents);
    List<Stint> stints = Stint.of(relaxation);
    Shares.add(relaxation, stints, Vessels.add(relaxation));
    Ovens.add(relaxation);
    atTheTable = TableFloor.of(relaxation);
    wishes = wishes(stints);
  }

  private LinearArgument wishes(List<Stint> stints) {
    Map<Wish, LinearArgument> points = new EnumMap<>(Wish.class);
    points.put(Wish.FRESHNESS, FreshnessFloor.of(relaxation));
    points.put(Wish.CALM, CalmFloor.of(relaxation, stints));
    points.put(Wish.SESSIONS, SessionsFloor.of(relaxation, stints));
    points.put(Wish.ENERGY, LinearExpr.constant(EnergyFloor.points(relaxation.extents())));
    LinearExprBuilder sum = LinearExpr.newBuilder();
    points.forEach((wish, each) -> sum.addTerm(each, relaxation.work().event().wishes().weight(wish)));
    return sum.build();
  }

  /** What every plan loses at the table at least. */
  long atTheTable(Solving solving) {
    relaxation.model().minimize(atTheTable);
    solving.ofCosts().solve(relaxation.model());
    return solving.bound();
  }

  /** The points that every plan has at least that loses no more than so much at the table. */
  long wishes(long most, Solving solving) {
    relaxation.model().addLessOrEqual(atTheTable, most);
    relaxation.model().minimize(wishes);
    solving.ofCosts().solve(relaxation.model());
    return solving.bound();
  }
}
