package ovenloom.solver.search;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Takes;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/**
 * Cuts how long a step's food keeps, how far it may stretch and how long it may be put off, to what a plan asks for and
 * a little more.
 */
final class TighterStep {

  private final Random random;
  private final double strength;

  TighterStep(Random random, double strength) {
    this.random = random;
    this.strength = strength;
  }

  Step of(Dish dish, Step step, Plan plan) {
    Takes takes = step.takes();
    if (takes.upTo() != null && asked()) {
      int booked = runs(plan, dish.name(), step.name()).stream()
          .mapToInt(run -> run.when().minutes())
          .max()
          .orElseThrow();
      takes = new Takes(takes.written(), Math.min(takes.upTo(), more(booked)));
    }
    List<Link> after = step.after().stream().map(link -> link(dish, step, link, plan)).toList();
    return new Step(step.name(), takes, step.once(), step.serve(), step.unattended(), step.away(),
        step.together(),
        step.needs(), after, keeps(dish, step, plan), step.starts(), step.covered());
  }

  private boolean asked() {
    return random.nextDouble() < strength;
  }

  /** Ten to thirty per cent more. */
  private int more(int minutes) {
    return minutes + Math.ceilDiv(minutes * (10 + random.nextInt(21)), 100);
  }

  private static List<Placement> runs(Plan plan, String dish, String step) {
    return plan.placements()
        .stream()
        .filter(run -> run.dish().equals(dish) && run.step().equals(step))
        .toList();
  }

  private Link link(Dish dish, Step step, Link link, Plan plan) {
    Integer most = link.most();
    if (most == null || !asked()) {
      return link;
    }
    int last = runs(plan, dish.name(), step.name()).stream()
        .mapToInt(run -> run.when().from())
        .max()
        .orElseThrow();
    int first = runs(plan, link.dish(), link.step()).stream()
        .mapToInt(run -> run.when().to())
        .min()
        .orElseThrow();
    int gap = Math.max(0, last - first);
    return new Link(link.kind(), link.dish(), link.step(), link.least(),
        Math.min(most, Math.max(link.least(), more(gap))));
  }

  private @Nullable Keeps keeps(Dish dish, Step step, Plan plan) {
    Keeps keeps = step.keeps();
    if (keeps == null || !asked()) {
      return keeps;
    }
    Waited waited = Waited.of(dish, step, plan);
    Map<String, Integer> stores = new TreeMap<>();
    for (Map.Entry<String, Integer> each : keeps.stores().entrySet()) {
      Integer limit = cut(each.getValue(), waited.in(each.getKey()));
      if (limit != null) {
        stores.put(each.getKey(), limit);
      }
    }
    return new Keeps(cut(keeps.counter(), waited.in(Waited.COUNTER)),
        cut(keeps.oven(), waited.in(Waited.OVEN)),
        cut(keeps.burner(), waited.in(Waited.BURNER)), stores);
  }

  /** A place the plan leaves unused may go. */
  private @Nullable Integer cut(@Nullable Integer limit, int used) {
    if (limit == null || used <= 0) {
      return limit == null || random.nextBoolean() ? null : limit;
    }
    return Math.min(limit, more(used));
  }
}
