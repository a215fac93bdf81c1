package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Weights;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Step;
import ovenloom.model.safety.Perishable;
import ovenloom.model.safety.Profile;

/**
 * How warm food is decides how long it bakes, and how long it may be left out: where and for how long it waits picks a cell of a table
 * that the model's laws of heat fill.
 */
final class Heat {

  private static final double MILLIGRAMS_A_KILOGRAM = 1e6;

  private final Cp cp;
  private final Steps steps;
  private final Waits waits;
  private final List<Bake> bakes;
  private final Bending bending;
  private final Journeys journeys;
  private final Danger danger;
  private final List<LinearArgument> overcooked = new ArrayList<>();
  private final Map<String, LinearExprBuilder> leftOut = new TreeMap<>();

  Heat(Cp cp, Steps steps, Waits waits, List<Bake> bakes, Bending bending) {
    this.cp = cp;
    this.steps = steps;
    this.waits = waits;
    this.bakes = bakes;
    this.bending = bending;
    journeys = new Journeys(steps, waits, bending);
    danger = new Danger(Profile.of(steps.event().rules()), steps.event().kitchen());
    steps.event().dishes().forEach(this::refuseWhatIsNeverHot);
    for (BatchStep step : steps.all()) {
      Journey journey = journeys.to(step);
      if (journey != null) {
        refuseWhatIsNotSaidHere(step.dish());
        add(journey);
      }
    }
    if (danger.mostLeftOut() < Integer.MAX_VALUE) {
      leftOut.values().forEach(minutes -> cp.atMost(minutes.build(), danger.mostLeftOut()));
    }
  }

  /** Points for all that is baked longer than it needs. */
  LinearArgument overcooked() {
    return Cp.sum(overcooked);
  }

  private void add(Journey journey) {
    BatchStep to = journey.to();
    boolean isPerishable = isPerishable(to.dish());
    boolean isFromTheStart = isPerishable && Perishable.isFromTheStart(to.dish().tags());
    Bake bake = bakes.stream().filter(each -> each.step().equals(to)).findFirst().orElse(null);
    Wait wait = waits.of(to.index());
    boolean isLast = to.dish()
        .steps()
        .stream()
        .filter(Step::cooks)
        .toList()
        .getLast()
        .equals(to.step());
    Afterwards afterwards = isPerishable && isLast
        ? new Afterwards(steps, Objects.requireNonNull(wait, "no wait"), danger)
        : null;
    if (bake != null && afterwards != null && journey.varies() && afterwards.mayBeKeptHot()) {
      throw new UnsupportedOperationException("food that comes cold or warm and is kept hot, of " + to);
    }
    HeatTable table = new HeatTable(journey, bake == null ? List.of() : bake.ways(), bending,
        isPerishable ? danger : null, isFromTheStart, afterwards);
    LinearExpr cell = journey.grid()
        .cell(journey.isFromTheHeat() ? journey.before() : LinearExpr.constant(0),
            journey.cold(), journey.after());
    if (isPerishable) {
      before(journey, isFromTheStart, element(cell, table.out(), "left out"));
    }
    then(table, bake, cell, afterwards);
  }

  private void then(HeatTable table, @Nullable Bake bake, LinearExpr cell, @Nullable Afterwards afterwards) {
    int ways = bake == null ? 1 : bake.ways().size();
    LinearExprBuilder way = LinearExpr.newBuilder().addTerm(element(cell, table.rows(), "row"), ways);
    for (int i = 0; i < ways && bake != null; i++) {
      way.addTerm(bake.ways().get(i).taken(), i);
    }
    List<HeatTable.Fate> fates = table.fates().stream().flatMap(List::stream).toList();
    LinearExpr fate = way.build();
    overcooked.add(element(fate, fates.stream().mapToLong(HeatTable.Fate::points).toArray(), "overcooked"));
    if (afterwards != null) {
      IntVar then = element(fate, fates.stream().mapToLong(HeatTable.Fate::then).toArray(), "then");
      long[] all = table.thens().stream().flatMapToLong(Arrays::stream).toArray();
      int length = all.length / table.thens().size();
      LinearExpr figure = LinearExpr.newBuilder().addTerm(then, length).add(afterwards.chosen()).build();
      ofItsDish(afterwards.step().dish())
          .add(element(figure, all, "left out in the end"));
    }
  }

  /** What is left out before it comes to the heat. */
  private void before(Journey journey, boolean isFromTheStart, LinearArgument inTheCell) {
    LinearExprBuilder all = ofItsDish(journey.to().dish()).add(inTheCell);
    if (isFromTheStart && !journey.isFromTheHeat() && !journey.known().isEmpty()) {
      LinearArgument end = steps.end(journey.known().getLast().index());
      all.add(Cp.minus(end, steps.start(journey.known().getFirst().index())))
          .add(journey.before());
    }
  }

  private LinearExprBuilder ofItsDish(Dish dish) {
    return leftOut.computeIfAbsent(dish.name(), name -> LinearExpr.newBuilder());
  }

  /** A figure of a table, of which none below 0 may be chosen. */
  private IntVar element(LinearArgument index, long[] figures, String name) {
    IntVar figure = cp.number(0, Math.max(0, LongStream.of(figures).max().orElse(0)), name);
    cp.model().addElement(index, figures, figure);
    return figure;
  }

  /** Whether it must be kept hot or cold, at the latest once it is cooked. */
  private static boolean isPerishable(Dish dish) {
    return !Perishable.isNever(dish.tags()) && (Perishable.isFromTheStart(dish.tags())
        || Perishable.isOnceCooked(dish.matter().kind()));
  }

  private void refuseWhatIsNeverHot(Dish dish) {
    if (dish.food() && isPerishable(dish) && dish.steps().stream().noneMatch(Step::cooks)) {
      throw new UnsupportedOperationException(
          "perishable food that no oven or burner makes hot, " + dish.name());
    }
  }

  private void refuseWhatIsNotSaidHere(Dish dish) {
    refuseAWarmLoad();
    if (!isPerishable(dish)) {
      return;
    }
    boolean isStaged = dish.steps()
        .stream()
        .anyMatch(step -> step.bake() != null && step.bake().stages().size() > 1);
    boolean isWarmedByWork = steps.event().kitchen().room().inCelsius() < 5
        || steps.event().kitchen().room().inCelsius() > 55;
    if (isStaged || isWarmedByWork || dish.tags().contains("whole roast")
        || danger.shortestByTheClock() < cp.to() - cp.from()) {
      throw new UnsupportedOperationException(
          "stages, roasts, such rooms, or the clock as the only control of " + dish.name());
    }
    boolean isTooWarm = steps.event()
        .kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind().isCold())
        .anyMatch(store -> danger.profile()
            .cold()
            .stream()
            .anyMatch(limit -> store.holds().compareTo(limit.temperature()) > 0));
    if (isTooWarm) {
      throw new UnsupportedOperationException("a fridge that is too warm");
    }
  }

  /** Refuses a kitchen in which a fridge might be given more warm food than it takes: no rule here says how much that is. */
  void refuseAWarmLoad() {
    if (steps.event().kitchen().stores().stream().anyMatch(this::mayBeTooMuchAtOnce)) {
      throw new UnsupportedOperationException("so much warm food for a fridge");
    }
  }

  /** If all that may ever be put in were put in at once. */
  private boolean mayBeTooMuchAtOnce(Store store) {
    if (store.warmLoad() == null) {
      return false;
    }
    Weights weights = new Weights(bending.cards());
    double all = 0;
    for (BatchStep step : steps.all()) {
      boolean keeps = step.step().keeps() != null && step.step().keeps().stores().containsKey(store.name());
      boolean runs = step.step().shelf() != null && step.step().shelf().stores().contains(store.name());
      all += (keeps ? weights.kilograms(step) : 0) + (runs ? weights.kilograms(step) : 0);
    }
    return all > store.warmLoad().milligrams() / MILLIGRAMS_A_KILOGRAM;
  }
}
