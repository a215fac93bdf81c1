package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Link;
import ovenloom.solver.timeline.Presence;
import ovenloom.solver.timeline.Timeline;

/**
 * What must have begun how long before a run, since its food does not keep: so that no run is put where the work before it would
 * have to begin while nobody is there. Takes away no plan.
 */
final class Leads {

  /** With more play than a night, nothing is known, minutes. */
  private static final int A_NIGHT = 8 * 60;

  private final Runs runs;
  private final Bonds bonds;
  private final Wants wants;
  private final LongestWaits longest;
  private final List<@Nullable List<Lead>> leads = new ArrayList<>();

  /**
   * Something begins before a run.
   *
   * @param least minutes before it
   * @param play minutes more that it may be
   */
  private record Lead(int least, int play) {

    Lead then(Lead next) {
      return new Lead(least + next.least, play + next.play);
    }
  }

  Leads(Runs runs, Bonds bonds, Wants wants, LongestWaits longest) {
    this.runs = runs;
    this.bonds = bonds;
    this.wants = wants;
    this.longest = longest;
    runs.runs().forEach(run -> leads.add(null));
    runs.runs().forEach(this::of);
  }

  private List<Lead> of(Run run) {
    List<Lead> known = leads.get(run.index());
    if (known == null) {
      known = bonds.before(run.index())
          .stream()
          .filter(tie -> tie.link().kind() == Link.Kind.FOOD)
          .flatMap(tie -> through(tie, run))
          .filter(lead -> lead.play() < A_NIGHT)
          .distinct()
          .toList();
      leads.set(run.index(), known);
    }
    return known;
  }

  private Stream<Lead> through(Tie tie, Run run) {
    Run before = runs.runs().get(tie.earlier());
    if (before.step().serve() || !before.dish().food()) {
      return Stream.empty();
    }
    int sooner = run.stretches() ? run.most() - run.minutes() : 0;
    int minutes = wants.leastMinutes(before);
    int waits = Math.max(0, longest.gap(tie.link(), tie.earlier()) - tie.link().least());
    Lead next = new Lead(tie.link().least() + minutes, sooner + waits + wants.mostMinutes(before) - minutes);
    return Stream.concat(Stream.of(next), of(before).stream().map(next::then));
  }

  /** The latest start of a run, not after this one, before which someone is there whenever what goes before must begin; or NONE. */
  int latestStart(Run run, int notAfter, Presence there) {
    int start = notAfter;
    for (Lead lead : of(run)) {
      if (start == Timeline.NONE) {
        return start;
      }
      int begins = there.latestMoment(start - lead.least());
      start = begins == Timeline.NONE ? begins : Math.min(start, begins + lead.least() + lead.play());
    }
    return start;
  }
}
