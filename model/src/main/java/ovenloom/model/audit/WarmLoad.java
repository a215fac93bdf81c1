package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Life;
import ovenloom.model.life.Weights;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;

/** Within any hour no more warm food is put into a fridge than it can take. */
record WarmLoad() implements KitchenRule {

  /** Food that is more than this above the air of its shelf is warm, K. */
  private static final double WARM = 10;

  /** Within so many minutes of each other it counts together. */
  private static final int TOGETHER = 60;

  private static final double MILLIGRAMS_A_KILOGRAM = 1e6;
  private static final double GRAMS_A_KILOGRAM = 1000;

  /** Less than this is a matter of rounding, K and kg. */
  private static final double NOTHING = 1e-6;

  @Override
  public String id() {
    return "warm load";
  }

  @Override
  public String sentence() {
    return "Within any hour no more warm food is put into a fridge than it can take.";
  }

  /** Food as it goes in. */
  private record In(BatchStep step, int minute, double kilograms) {}

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Store store : plan.event().kitchen().stores()) {
      Mass most = store.warmLoad();
      if (most != null) {
        check(plan, store, most, breaks);
      }
    }
    return breaks;
  }

  /** Of hours that share food, only the first that holds too much. */
  private void check(Case plan, Store store, Mass most, List<Break> breaks) {
    List<In> all = putIn(plan, store);
    int told = Integer.MIN_VALUE;
    for (In first : all) {
      List<In> hour = all.stream()
          .filter(each -> each.minute >= first.minute && each.minute < first.minute + TOGETHER)
          .toList();
      double sum = hour.stream().mapToDouble(In::kilograms).sum();
      double off = sum - most.milligrams() / MILLIGRAMS_A_KILOGRAM;
      if (off > NOTHING && first.minute >= told) {
        told = first.minute + TOGETHER;
        breaks.add(broken(plan, store, hour, sum, most, Math.max(1, Math.round(off * GRAMS_A_KILOGRAM))));
      }
    }
  }

  private Break broken(Case plan, Store store, List<In> hour, double sum, Mass most, long off) {
    List<String> who = new ArrayList<>(hour.stream().map(each -> each.step.toString()).toList());
    who.add(store.name());
    Stretch when = new Stretch(hour.getFirst().minute, hour.getLast().minute + 1);
    String what = "about " + Math.round(sum * 10) / 10.0
        + " kg more than 10 K above its air within 60 min, at most "
        + most.written() + ". " + help(plan, store, hour);
    return Break.of(this, who, when, off, Break.Unit.GRAMS, what);
  }

  /** What would help; food gets no cooler on the counter than the room. */
  private static String help(Case plan, Store store, List<In> hour) {
    double room = plan.event().kitchen().room().inCelsius();
    boolean counterCools = room <= store.holds().inCelsius() + WARM;
    return (counterCools ? "Let it cool on the counter first, " : "Chill it first in a blast chiller, ")
        + (hour.size() == 1 ? "make it in smaller batches an hour apart" : "put it in an hour apart")
        + ", use another cold place, or give this one a larger \"warm load\"";
  }

  private static List<In> putIn(Case plan, Store store) {
    Life life = plan.life();
    Weights weights = new Weights(plan.cards());
    List<In> all = new ArrayList<>();
    for (BatchStep step : plan.work().steps()) {
      boolean there = wasThere(plan, step, store);
      for (Leg leg : life.of(step)) {
        boolean is = Objects.equals(leg.store(), store);
        double above = leg.food().getFirst().mean() - store.holds().inCelsius();
        if (is && !there && leg.when().minutes() > 0 && above > WARM + NOTHING) {
          all.add(new In(step, leg.when().from(), weights.kilograms(step)));
        }
        there = leg.when().minutes() > 0 ? is : there;
      }
    }
    return all.stream().sorted(Comparator.comparingInt(In::minute)).toList();
  }

  /** Whether all that a step begins with has been in a place until then. */
  private static boolean wasThere(Case plan, BatchStep step, Store store) {
    List<BatchStep> before = plan.work()
        .into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> plan.work().steps().get(link.from()))
        .filter(each -> each.dish().food())
        .toList();
    List<Leg> legs = plan.life().of(step);
    return !before.isEmpty() && !legs.isEmpty()
        && before.stream().allMatch(each -> isThere(plan, each, store, legs.getFirst().when().from()));
  }

  private static boolean isThere(Case plan, BatchStep step, Store store, int minute) {
    Leg last = null;
    for (Leg leg : plan.life().of(step)) {
      last = leg.when().minutes() > 0 && leg.when().from() < minute ? leg : last;
    }
    return last != null && Objects.equals(last.store(), store);
  }
}
