package ovenloom.model.chill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Pace;
import ovenloom.model.measure.Range;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Takes;
import ovenloom.model.menu.Work;

/**
 * A step, rewritten so that it is done in one way.
 *
 * @param needs all but the place
 * @param hands minutes that it takes to spread the food out or to make the bath
 */
record Rewritten(Event event, Dish dish, Step step, List<Need> needs, int hands) {

  /** A pan no deeper than this is shallow, mm: two and a half inches. Advice ranges from two to four; row T26 of the facts. */
  private static final double SHALLOW = 66;

  /** Minutes of one cook to spread food out, or to make an ice bath. Common practice. */
  private static final int MINUTES = 5;

  private static final double MICROMETRES_A_MILLIMETRE = 1000;

  /** For a way; null where there are no pans for it. */
  static @Nullable Rewritten of(Event event, ChillCard card, WayToChill way) {
    Dish dish = event.dish(card.dish());
    Step step = dish.step(card.step());
    List<Need> needs = new ArrayList<>(
        step.needs().stream().filter(need -> !(need instanceof Need.OnShelf)).toList());
    boolean isShallow = way.name().equals(WayToChill.SHALLOW_PANS);
    if (isShallow && step.vessels().isEmpty()) {
      Need.InVessel pans = pans(event, card);
      if (pans == null) {
        return null;
      }
      needs.add(pans);
    }
    boolean isWork = isShallow || way.name().equals(WayToChill.ICE_BATH);
    return new Rewritten(event, dish, step, needs, isWork && step.hands().isEmpty() ? MINUTES : 0);
  }

  /** The fewest shallow pans that take what is in the vessels before. */
  private static Need.@Nullable InVessel pans(Event event, ChillCard card) {
    Work work = Work.of(event);
    double volume = 0;
    for (BatchStep each : work.steps()) {
      if (each.dish().name().equals(card.dish()) && each.step().name().equals(card.step())) {
        volume = Math.max(volume, volume(event, work.fillingsOf(each.index())));
      }
    }
    if (volume == 0) {
      return null;
    }
    double all = volume;
    return event.kitchen()
        .vessels()
        .stream()
        .filter(vessel -> volume(vessel) > 0 && height(vessel) <= SHALLOW)
        .map(vessel -> new Need.InVessel(vessel.name(), (int) Math.ceil(all / volume(vessel))))
        .filter(pans -> pans.count() <= count(event, pans))
        .min(Comparator.comparingInt(Need.InVessel::count))
        .orElse(null);
  }

  private static int count(Event event, Need.InVessel pans) {
    Vessel vessel = event.kitchen().vessel(pans.vessel());
    return vessel == null ? 0 : vessel.count();
  }

  private static double volume(Event event, List<Filling> fillings) {
    double volume = 0;
    for (Filling filling : fillings) {
      Vessel vessel = event.kitchen().vessel(filling.vessel());
      volume += vessel == null ? 0 : filling.count() * volume(vessel);
    }
    return volume;
  }

  /** Cubic millimetres; 0 where nobody knows. */
  private static double volume(Vessel vessel) {
    Size size = vessel.size();
    return size == null || size.height() == null ? 0
        : millimetres(size.width().micrometres()) * millimetres(size.depth().micrometres()) * height(vessel);
  }

  private static double height(Vessel vessel) {
    Size size = vessel.size();
    return size == null || size.height() == null ? 0 : millimetres(size.height().micrometres());
  }

  private static double millimetres(long micrometres) {
    return micrometres / MICROMETRES_A_MILLIMETRE;
  }

  /** The event, with the step done in one of these places. */
  Event in(List<String> stores, int minutes, int stirredEvery) {
    List<Need> all = new ArrayList<>(needs);
    all.add(new Need.OnShelf(stores));
    if (hands > 0) {
      all.add(new Need.Hands(new Need.Moment.First(Math.min(hands, minutes)), 1, null));
      for (int at = stirredEvery; stirredEvery > 0 && at < minutes; at += stirredEvery) {
        all.add(new Need.Hands(new Need.Moment.At(at, 1, false), 1, null));
      }
    }
    Step done = new Step(step.name(), new Takes(Pace.steady(Range.exactly(minutes)), null), step.once(),
        step.serve(), step.unattended(), step.away(), step.together(), all, step.after(), step.keeps(),
        step.starts(), step.covered());
    return event.with(dish, dish.with(done));
  }
}
