package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.chill.Advice;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/** What was cooked is chilled by its card for longer than it may take to cool, where it cannot have cooled in time. */
record NeverCooled(Profile profile, Ways ways, Reach reach) implements Foregone {

  /** Of the time that is worked out, so much is sure: minutes are whole. */
  private static final double SURE = 0.9;

  private static final int A_DAY = 1440;

  @Override
  public List<Unavoidable> find(BatchStep step) {
    List<Unavoidable> all = new ArrayList<>();
    List<BatchStep> since = step.step().shelf() == null ? List.of() : sinceItWasHeated(step);
    if (!since.isEmpty() && ways.isPerishable(since.getFirst()) && ways.areFollowed(step)) {
      profile.cool().forEach(limit -> tooSlow(step, since, limit, all));
    }
    return all;
  }

  /** The steps from the one that heats it to this one, if there is but one way; else none. */
  private List<BatchStep> sinceItWasHeated(BatchStep step) {
    List<BatchStep> all = new ArrayList<>();
    BatchStep now = step;
    while (now != null) {
      all.addFirst(now);
      if (reach.heats(now)) {
        return all;
      }
      now = onlyFeeder(now);
    }
    return List.of();
  }

  private @Nullable BatchStep onlyFeeder(BatchStep step) {
    List<BatchStep> feeders = ways.feeders(step);
    return feeders.size() == 1 ? feeders.getFirst() : null;
  }

  private void tooSlow(BatchStep step, List<BatchStep> since, CoolDown limit, List<Unavoidable> all) {
    double from = limit.from().inCelsius();
    double to = limit.to().inCelsius();
    double least = SURE * reach.cooling(step, from, to, places(since));
    boolean isPoured = since.stream().anyMatch(each -> !reach.isAsThick(each, step));
    boolean isHot = reach.done(since.getFirst()) > from;
    boolean isSlow = least > limit.minutes() && (!isPoured || least == Double.POSITIVE_INFINITY);
    if (isHot && isSlow && step.minutes() - begins(step, from) > limit.minutes()) {
      boolean never = least == Double.POSITIVE_INFINITY;
      all.add(new Unavoidable(step, List.of(key(step)), least - limit.minutes(),
          Cooling.what(limit, never ? "never there" : "at least " + Words.minutes((int) least)),
          limit.source(), help(step)));
    }
  }

  private String help(BatchStep step) {
    if (key(step).equals("hot")) {
      return Cooling.HELP;
    }
    return Advice.onPlaces(ways.event(), step.dish().name(), step.step().name(), reach.shelves(step)).text();
  }

  /** Minutes of a step after which no part of its food is warmer than that, however hot it came in. */
  private int begins(BatchStep step, double celsius) {
    return reach.shelves(step)
        .stream()
        .mapToInt(store -> reach.minutes(step, reach.goesInAt(step), reach.in(step, store).dry(),
            food -> Math.max(food.middle(), food.surface()) <= celsius, A_DAY))
        .max()
        .orElse(A_DAY);
  }

  /** Where its food may be from the end of the heat to the end of its chilling. */
  private List<Surroundings> places(List<BatchStep> since) {
    List<Surroundings> all = new ArrayList<>();
    since.forEach(each -> all.add(reach.counter(each)));
    since.stream()
        .filter(each -> each.index() != since.getLast().index())
        .flatMap(each -> reach.keeping(each).stream().map(store -> reach.in(each, store)))
        .forEach(all::add);
    since.stream().flatMap(reach::ovenTurnedOff).forEach(all::add);
    since.stream()
        .skip(1)
        .flatMap(each -> reach.shelves(each).stream().map(store -> reach.in(each, store)))
        .forEach(all::add);
    return all;
  }

  private String key(BatchStep step) {
    return Stream.of(step)
        .flatMap(each -> reach.shelves(each).stream())
        .allMatch(store -> store.kind() != Store.Kind.HOT) ? "cold" : "hot";
  }
}
