package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.safety.Profile;

/** Food stands neither cold nor hot for longer than it may: in a step, in a wait that it keeps through only there, or while it is served. */
record OutTooLong(Profile profile, Ways ways, Reach reach, Gaps gaps, Event event) implements Foregone {

  /** Colder it would be ice, C. */
  private static final double COLDEST = -1;

  /** So long in a place, asked for by these keys of a step. */
  private record Span(BatchStep asks, List<String> keys, BatchStep step, double hottest, int minutes,
      Surroundings there) {}

  @Override
  public List<Unavoidable> find(BatchStep step) {
    List<Unavoidable> all = new ArrayList<>();
    if (ways.isPerishable(step) && ways.areFollowed(step)) {
      for (Span span : spans(step)) {
        profile.out().forEach(limit -> leftOut(span, limit, all));
        profile.timeOnly().forEach(limit -> byTheClock(span, limit, all));
      }
    }
    return all;
  }

  private List<Span> spans(BatchStep step) {
    List<Span> all = new ArrayList<>();
    if (!reach.heats(step)) {
      inTheStep(step, all);
    }
    for (Gaps.Gap gap : gaps.of(step)) {
      if (gap.inPlace() < gap.least() && reach.keeping(step).isEmpty()) {
        all.add(new Span(gap.after(), Gaps.keys(step, gap), step, reach.leaves(step), gap.least(),
            reach.counter(step).dry()));
      }
    }
    if (!step.step().serve() && ways.eaten(step).anyMatch(each -> each.index() == step.index())) {
      int served = event.endOfService(step.dish()) - event.due(step.dish(), step.batches().first());
      all.add(
          new Span(step, List.of("dish", "served over"), step, reach.leaves(step), served,
              reach.counter(step).dry()));
    }
    return all;
  }

  /** In the place where it is left out the shortest there is no telling, so only one place is judged. */
  private void inTheStep(BatchStep step, List<Span> all) {
    List<Store> shelves = reach.shelves(step);
    List<String> keys = List.of("takes");
    if (step.step().shelf() == null) {
      all.add(new Span(step, keys, step, reach.goesInAt(step), step.minutes(), reach.counter(step).dry()));
    } else if (shelves.size() == 1) {
      all.add(new Span(step, keys, step, reach.goesInAt(step), step.minutes(),
          reach.in(step, shelves.getFirst()).dry()));
    }
  }

  private void leftOut(Span span, Profile.OutOfTemperature limit, List<Unavoidable> all) {
    int most = LeftOut.most(limit, event.kitchen());
    int out = between(span, limit.from().inCelsius(), limit.to().inCelsius());
    if (out > most) {
      all.add(new Unavoidable(span.asks(), span.keys(), out - most,
          LeftOut.what(limit, "at least " + Words.minutes(out), most), limit.source(), LeftOut.HELP));
    }
  }

  private void byTheClock(Span span, Profile.TimeOnly limit, List<Unavoidable> all) {
    Profile.Cool cool = limit.cool();
    int most = IntStream.of(limit.afterHot(), limit.afterCold(), cool == null ? 0 : cool.minutes())
        .max()
        .orElseThrow();
    int out = between(span, limit.cold().inCelsius(), limit.hot().inCelsius());
    if (out > most) {
      all.add(new Unavoidable(span.asks(), span.keys(), out - most,
          "Stands out for at least " + Words.minutes(out) + " since it was cold or hot, at most "
              + Words.minutes(most) + ".",
          limit.source(), TimeOnly.HELP));
    }
  }

  /** Minutes that it is surely neither as cold nor as hot as that, however cold or hot it comes there. */
  private int between(Span span, double cold, double hot) {
    double air = span.there().air().inCelsius();
    if (air <= cold || air >= hot) {
      return 0;
    }
    int warms = reach.minutes(span.step(), COLDEST, span.there(),
        food -> Math.max(food.middle(), food.surface()) > cold, span.minutes());
    int cools = reach.minutes(span.step(), span.hottest(), span.there(),
        food -> Math.min(food.middle(), food.surface()) < hot, span.minutes());
    return span.minutes() - Math.max(warms, cools);
  }
}
