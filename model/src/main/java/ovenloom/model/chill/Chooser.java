package ovenloom.model.chill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Chilling;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/**
 * Picks a way to cool the food of a step: the first on its card by which food straight from the heat is predicted to keep all limits of
 * the event's safety profile, in that place and then in the coldest in which the step keeps.
 */
public final class Chooser {

  private static final int A_DAY = 24 * 60;

  /** Minutes are rounded up to a multiple of this. */
  private static final int ROUND = 5;

  /** Where a profile has no limits, C. Common practice. */
  private static final double COLD = 5;

  /** At which food may go from ice or a freezer into the fridge, C: where the first stage of cooling ends; or half way on. */
  private static final double FIT_FOR_THE_FRIDGE = 21;
  private static final double HALF_WAY = 12;

  private final ChillCard card;
  private final List<CoolDown> limits;
  private final List<String> refused = new ArrayList<>();

  private Chooser(ChillCard card, List<CoolDown> limits) {
    this.card = card;
    this.limits = limits;
  }

  /** How long food must be somewhere, and what is wrong with that; null where nothing is. */
  private record Tried(Store store, int minutes, int stirredEvery, CoolDown.@Nullable TooSlow slow,
      boolean isTooHeavy) {

    boolean isGood() {
      return slow == null && !isTooHeavy;
    }
  }

  /** Of an event that is sound but for how this step is done. */
  public static Chosen of(Event event, ChillCard card) {
    return new Chooser(card, Profile.of(event.rules()).cool()).choose(event);
  }

  private Chosen choose(Event event) {
    for (WayToChill way : card.ways()) {
      Event prepared = way.name().equals(WayToChill.ICE_BATH) ? IceBath.in(event) : event;
      Chosen chosen = tried(prepared, way);
      if (chosen != null) {
        return chosen;
      }
    }
    return new Chosen(event, null, refused);
  }

  private @Nullable Chosen tried(Event event, WayToChill way) {
    List<Store> stores = way.stores(event.kitchen());
    if (stores.isEmpty()) {
      refused.add(way.name() + ": this kitchen has none");
      return null;
    }
    Rewritten step = Rewritten.of(event, card, way);
    if (step == null) {
      refused.add(way.name() + ": there are no such pans, or too few of them");
      return null;
    }
    List<Tried> all = new ArrayList<>();
    List<Tried> good = List.of();
    for (double celsius : untilCold(way, stores.getFirst())) {
      all = stores.stream().map(store -> tried(step, way, store, celsius)).toList();
      good = all.stream().filter(Tried::isGood).toList();
      if (!good.isEmpty()) {
        break;
      }
    }
    if (good.isEmpty()) {
      Tried best = all.stream().min(Comparator.comparingInt(Chooser::slowness)).orElseThrow();
      refused.add(way.name() + ": " + told(best));
      return null;
    }
    int minutes = good.stream().mapToInt(Tried::minutes).max().orElseThrow();
    List<String> names = good.stream().map(each -> each.store().name()).toList();
    return new Chosen(step.in(names, minutes, good.getFirst().stirredEvery()), way, refused);
  }

  /** How cold it is to be as it goes on to its next place, C: out of ice and out of a freezer as soon as will do. */
  private List<Double> untilCold(WayToChill way, Store store) {
    double last = limits.stream().mapToDouble(limit -> limit.to().inCelsius()).min().orElse(COLD);
    return switch (store.kind()) {
      case ICE_BATH -> way.minutes() != null ? List.of(last) : List.of(FIT_FOR_THE_FRIDGE, HALF_WAY, last);
      case FREEZER -> List.of(FIT_FOR_THE_FRIDGE);
      case FRIDGE, HOT -> List.of(last);
    };
  }

  private Tried tried(Rewritten step, WayToChill way, Store store, double celsius) {
    Cards cards = new Cards(Work.of(step.in(List.of(store.name()), A_DAY, 0)));
    BatchStep batch = cards.work()
        .steps()
        .stream()
        .filter(each -> each.dish().name().equals(card.dish()) && each.step().name().equals(card.step()))
        .findFirst()
        .orElseThrow();
    Chilling chilling = new Chilling(cards);
    Integer own = way.minutes();
    int minutes = own == null ? rounded(chilling.minutesTo(batch, store, celsius, A_DAY)) : own;
    double[] warmest = chilling.warmest(batch, store, Math.min(minutes, A_DAY),
        next(cards.work().event(), batch.step()), A_DAY);
    CoolDown.TooSlow slow = null;
    for (CoolDown limit : limits) {
      CoolDown.TooSlow each = limit.check(warmest, 0);
      slow = slow == null ? each : slow;
    }
    return new Tried(store, minutes, chilling.stirredEvery(batch, store), slow,
        !chilling.isLightEnough(batch, store));
  }

  private static int rounded(int minutes) {
    return (minutes + ROUND - 1) / ROUND * ROUND;
  }

  /** The coldest place in which the food of a step keeps; null where none is cold. */
  private static @Nullable Store next(Event event, Step step) {
    Keeps keeps = step.keeps();
    return keeps == null ? null : event.kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind().isCold() && keeps.stores().containsKey(store.name()))
        .min(Comparator.comparing(Store::holds))
        .orElse(null);
  }

  private static int slowness(Tried tried) {
    CoolDown.TooSlow slow = tried.slow();
    return slow == null ? 0 : slow.minutes();
  }

  private static String told(Tried tried) {
    CoolDown.TooSlow slow = tried.slow();
    if (slow == null) {
      return "more warm food than it takes at a time";
    }
    CoolDown limit = slow.limit();
    String took = slow.minutes() == Integer.MAX_VALUE ? "never" : "only in " + hours(slow.minutes());
    return "from " + Math.round(limit.from().inCelsius()) + " C to " + Math.round(limit.to().inCelsius())
        + " C " + took + ", at most " + hours(limit.minutes()) + " (" + limit.source() + ")";
  }

  private static String hours(int minutes) {
    String rest = minutes % 60 == 0 && minutes > 0 ? "" : minutes % 60 + " min";
    return minutes < 60 ? rest : (minutes / 60 + " h " + rest).strip();
  }
}
