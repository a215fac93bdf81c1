package ovenloom.model.watch;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Profile;

/** Food is made so long before it is eaten, by its own steps and waits, that it keeps for fewer days. */
record TooManyDays(Profile profile, Ways ways, Work work, Map<Integer, Long> latest) implements Foregone {

  private static final String HELP = "Make it later: shorter steps and waits; or freeze it.";

  TooManyDays(Profile profile, Ways ways, Work work) {
    this(profile, ways, work, new HashMap<>());
  }

  @Override
  public List<Unavoidable> find(BatchStep step) {
    Profile.Days limit = profile.days()
        .stream()
        .min(Comparator.comparingInt(Profile.Days::most))
        .orElse(null);
    return limit == null || ways.from(step).anyMatch(ways::mayFreeze) ? List.of()
        : ways.eaten(step)
            .filter(eaten -> ways.isPerishable(step, eaten.dish()))
            .filter(eaten -> first(eaten, limit) > latest(step))
            .filter(eaten -> isTheLast(step, first(eaten, limit)))
            .map(eaten -> tooEarly(step, first(eaten, limit), limit))
            .toList();
  }

  /** What comes before a step that is too early is too early as well, which goes without saying. */
  private boolean isTheLast(BatchStep step, long first) {
    return ways.from(step).allMatch(each -> each.index() == step.index() || latest(each) >= first);
  }

  private Unavoidable tooEarly(BatchStep step, long first, Profile.Days limit) {
    return new Unavoidable(step, List.of("do"), first - latest(step),
        "Eaten later than on day " + limit.most() + ", the day it was made counting as one.",
        limit.source(), HELP);
  }

  /** The minute that begins the first day on which what is eaten may have been made. */
  private long first(BatchStep eaten, Profile.Days limit) {
    Event event = work.event();
    LocalDate day = event.calendar().at(event.endOfService(eaten.dish())).toLocalDate();
    return event.calendar().minuteOf(day.minusDays(limit.most() - 1L).atStartOfDay());
  }

  /** When a step begins at the latest, were there cooks and room without end. */
  private long latest(BatchStep step) {
    Long known = latest.get(step.index());
    if (known == null) {
      known = worked(step);
      latest.put(step.index(), known);
    }
    return Objects.requireNonNull(known);
  }

  private long worked(BatchStep step) {
    Event event = work.event();
    long end = step.step().serve() ? event.endOfService(step.dish())
        : event.due(step.dish(), step.batches().first());
    long start = Long.MAX_VALUE;
    for (BatchLink link : work.outOf(step.index())) {
      long next = latest(work.steps().get(link.to()));
      if (link.link().kind() == Link.Kind.ALONGSIDE) {
        start = Math.min(start, next);
      } else {
        end = Math.min(end, next - link.link().least());
      }
    }
    return Math.min(start, end - least(step));
  }

  /** A bake may be shorter than on its card. */
  private static int least(BatchStep step) {
    return step.step().bake() == null ? step.minutes() : 1;
  }
}
