package ovenloom.model.audit.score;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Coolness;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.life.Warmness;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Link;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * By how much dishes cool below what they are to be, in minutes nobody needed and nothing kept them hot; and by how much cool ones are
 * too warm.
 */
final class AtTheTable {

  private final Ledger plan;
  private final Dish dish;
  private final int batch;

  private AtTheTable(Ledger plan, Dish dish, int batch) {
    this.plan = plan;
    this.dish = dish;
    this.batch = batch;
  }

  /** By the name of every hot or warm dish, and of cool and cold ones that are too warm: portions times tenths of a kelvin. */
  static Map<String, Long> of(Ledger plan) {
    Map<String, Long> lost = new TreeMap<>();
    Warmness warmness = new Warmness(plan.work());
    for (Dish dish : plan.event().dishes()) {
      if (Warmness.isWarm(dish) && isEaten(plan, dish)) {
        long tenths = 0;
        for (int batch = 1; batch <= dish.batches(); batch++) {
          tenths += new AtTheTable(plan, dish, batch).tenthsShort(warmness);
        }
        lost.put(dish.name(), tenths * dish.portionsInABatch());
      }
    }
    double[] begins = new double[plan.work().steps().size()];
    MeanWarmth mean = new MeanWarmth(plan.cards());
    PlanTimes times = new PlanTimes(plan);
    mean.follow(times, begins);
    lost.putAll(new Coolness(plan.cards(), mean).of(times, begins));
    return lost;
  }

  /** Whether some of it goes to the table, and not all of it into other dishes. */
  private static boolean isEaten(Ledger plan, Dish dish) {
    return plan.work()
        .steps()
        .stream()
        .anyMatch(step -> step.dish().name().equals(dish.name()) && plan.work().goesToTheTable(step.index()));
  }

  private long tenthsShort(Warmness warmness) {
    BatchStep last = lastHeat();
    Placement run = last == null ? null : plan.run(last);
    return last == null || run == null ? 0 : warmness.tenthsShort(last.index(), minutes(last, run));
  }

  private long minutes(BatchStep last, Placement run) {
    int served = served();
    long minutes = (long) served - run.when().to();
    BatchStep step = last;
    while (step != null) {
      BatchStep next = next(step);
      Placement after = next == null ? null : plan.run(next);
      minutes -= keptHot(step, after == null ? served : after.when().from());
      minutes -= next == null ? 0 : next.minutes();
      step = next;
    }
    return minutes;
  }

  /** Of the batch's steps on an oven or burner the one that ends last. */
  private @Nullable BatchStep lastHeat() {
    BatchStep last = null;
    int end = Integer.MIN_VALUE;
    for (BatchStep step : plan.work().steps()) {
      Placement run = plan.run(step);
      if (isOurs(step) && step.step().cooks() && run != null && run.when().to() >= end) {
        last = step;
        end = run.when().to();
      }
    }
    return last;
  }

  /** When the batch is served, or due where nobody serves it. */
  private int served() {
    return plan.work()
        .steps()
        .stream()
        .filter(step -> isOurs(step) && step.step().serve())
        .map(plan::run)
        .filter(run -> run != null)
        .mapToInt(run -> run.when().from())
        .min()
        .orElse(plan.event().due(dish, batch));
  }

  /** The next step on the batch's way to its serving or the table. */
  private @Nullable BatchStep next(BatchStep step) {
    for (BatchLink link : plan.work().outOf(step.index())) {
      BatchStep to = plan.work().steps().get(link.to());
      if (link.link().kind() == Link.Kind.FOOD && isOurs(to)) {
        return to.step().serve() ? null : to;
      }
    }
    return null;
  }

  private boolean isOurs(BatchStep step) {
    return step.dish().name().equals(dish.name()) && step.batches().holds(batch);
  }

  private long keptHot(BatchStep step, int until) {
    Placement run = plan.run(step);
    Stay stay = plan.stay(step);
    if (run == null || stay == null || until <= run.when().to()) {
      return 0;
    }
    Stretch wait = new Stretch(run.when().to(), until);
    long minutes = 0;
    for (Stay.Part part : stay.parts()) {
      Stretch shared = part.when().shared(wait);
      minutes += shared != null && isHot(part.where()) ? shared.minutes() : 0;
    }
    return minutes;
  }

  private boolean isHot(Where where) {
    return switch (where) {
      case Where.Counter() -> false;
      case Where.OnShelf shelf -> {
        Store store = plan.event().kitchen().store(shelf.store());
        yield store != null && !store.kind().isCold();
      }
      case Where.InOven oven -> true;
      case Where.OnBurner burner -> true;
    };
  }
}
