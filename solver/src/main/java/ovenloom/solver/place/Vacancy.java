package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.solver.timeline.CountTimeline;
import ovenloom.solver.timeline.Timeline;

/** Finds when a run has room: asks the timelines of all it needs until they agree on a start. */
final class Vacancy {

  private final Floor floor;
  private final Wants wants;
  private final Leads leads;
  private int blocker = Timeline.NOBODY;
  private @Nullable Scarce scarcest;
  private long farthest;

  Vacancy(Floor floor, Wants wants, Leads leads) {
    this.floor = floor;
    this.wants = wants;
    this.leads = leads;
  }

  /** Who stood in the way at last. */
  int blocker() {
    return blocker;
  }

  /** What took it back the farthest; null if it got the start it asked for. */
  @Nullable
  Scarce scarcest() {
    return scarcest;
  }

  /** The latest start, not after this one, at which everything the run needs is free; or NONE. */
  int latestStart(Request request, int notAfter) {
    Run run = request.run();
    int start = request.latestStart(notAfter);
    int last = Integer.MAX_VALUE;
    blocker = Timeline.NOBODY;
    scarcest = null;
    farthest = 0;
    if (request.stays() && !isTakenOut(request)) {
      return lower(Scarce.HANDS, start, Timeline.NONE, Timeline.HOURS);
    }
    while (start < last) {
      last = start;
      start = attended(request, start);
      start = lower(Scarce.HANDS, start, hands(request, start), floor.crew.blocker());
      start = onPlaces(request, start);
      start = withVessels(request, start);
      if (request.choice() != null && start >= floor.from) {
        start = inOven(request, start);
      }
      if (start < Math.max(floor.from, run.notBefore())) {
        return Timeline.NONE;
      }
    }
    return start;
  }

  private int hands(Request request, int start) {
    return floor.crew.latestStart(start, request.hands(), request.minutes(), request.door());
  }

  /** Whether somebody is free to take it out in the last minutes of its stay. */
  private boolean isTakenOut(Request request) {
    HandsNeed unloading = request.unloading();
    int from = request.until() - unloading.minutes();
    return floor.crew.latestStart(from, List.of(unloading), unloading.minutes(), request.door()) == from;
  }

  private int lower(Scarce what, int start, int found, int whose) {
    if (found < start) {
      blocker = whose;
      if (start - (long) found > farthest) {
        farthest = start - (long) found;
        scarcest = what;
      }
    }
    return Math.min(start, found);
  }

  private int attended(Request request, int notAfter) {
    Run run = request.run();
    int minutes = request.minutes();
    int start = notAfter;
    if (run.dish().food()) {
      start = lower(Scarce.HOURS, start, floor.crew.there().latestMoment(start), Timeline.HOURS);
      start = lower(Scarce.HOURS, start, leads.latestStart(run, start, floor.crew.there()), Timeline.HOURS);
      boolean moves = run.footing().cooks() || run.footing().onAMachine() || wants.mustBeTakenOut(run);
      if (moves && start != Timeline.NONE) {
        int end = floor.crew.there().latestMoment(start + minutes);
        start = lower(Scarce.HOURS, start, end == Timeline.NONE ? end : end - minutes, Timeline.HOURS);
      }
    }
    if (run.footing().cooks() && !run.step().unattended()) {
      start = lower(Scarce.HOURS, start, floor.crew.there().latestCovered(start, minutes),
          Timeline.HOURS);
    }
    return start;
  }

  private int onPlaces(Request request, int notAfter) {
    Run run = request.run();
    int start = notAfter;
    int minutes = request.minutes();
    if (start >= floor.from && run.footing().onTheWorktop() && !run.pieces().isEmpty()) {
      start = lower(Scarce.WORKTOP, start, floor.landing.latestStart(start, minutes, run.pieces().size()),
          floor.landing.blocker());
    }
    for (int appliance : wants.appliances(run)) {
      CountTimeline machine = floor.appliances[appliance];
      start = start < floor.from ? start
          : lower(Scarce.APPLIANCES, start, machine.latestStart(start, minutes, 1), machine.blocker());
    }
    if (start >= floor.from && run.footing().onABurner()) {
      start = onBurners(run, start);
    }
    if (start >= floor.from && run.footing().onAShelf()) {
      start = onShelves(run, start);
    }
    return start;
  }

  private int onBurners(Run run, int notAfter) {
    int[] wide = wants.burners(run);
    int[] latest = new int[wide.length];
    int whose = Timeline.NOBODY;
    for (int i = 0; i < wide.length; i++) {
      latest[i] = floor.burners[wide[i]].latestStart(notAfter, run.minutes(), 1);
      whose = latest[i] < notAfter ? floor.burners[wide[i]].blocker() : whose;
    }
    int start = notAfter;
    for (BurnerSize size : wants.pots(run)) {
      start = lower(Scarce.BURNERS, start, onBurnersFrom(size, run, latest), whose);
    }
    return start;
  }

  /** The latest start, of those of each burner that will do, at which all pots that need one of a size or larger have one. */
  private int onBurnersFrom(BurnerSize size, Run run, int[] latest) {
    int[] wide = wants.burners(run);
    int pots = 0;
    for (BurnerSize pot : wants.pots(run)) {
      pots += pot.compareTo(size) >= 0 ? 1 : 0;
    }
    int[] large = new int[wide.length];
    int count = 0;
    for (int i = 0; i < wide.length; i++) {
      if (floor.size(wide[i]).compareTo(size) >= 0) {
        large[count++] = latest[i];
      }
    }
    Arrays.sort(large, 0, count);
    return count < pots ? Timeline.NONE : large[count - pots];
  }

  private int onShelves(Run run, int notAfter) {
    int latest = Timeline.NONE;
    int whose = Timeline.HOURS;
    for (int store : wants.stores(run)) {
      Tiers tiers = floor.stores[store];
      int start = tiers.latestStart(
          notAfter, run.minutes(), run.pieces(), wants.tiers(run, store), run.requires(), floor.from);
      if (start > latest) {
        latest = start;
        whose = tiers.blocker();
      }
    }
    return lower(Scarce.SHELVES, notAfter, latest, whose);
  }

  private int withVessels(Request request, int notAfter) {
    int start = notAfter;
    for (Wants.Filling filling : wants.fillings(request.run())) {
      if (start >= floor.from) {
        int found = floor.pool(filling.fill())
            .latestStart(start, request.minutes(), filling.number(), filling.fill().count());
        start = lower(Scarce.VESSELS, start, found, Timeline.HOURS);
      }
    }
    return start;
  }

  private int inOven(Request request, int notAfter) {
    BakeChoice choice = request.bakeFrom(notAfter);
    int turned = turned(choice, notAfter);
    if (turned < notAfter) {
      return lower(Scarce.HOURS, notAfter, turned, Timeline.HOURS);
    }
    int start = lower(
        Scarce.OVENS, notAfter, floor.dials[choice.oven()].latestStart(notAfter, choice.bake()),
        floor.dials[choice.oven()].blocker());
    if (start < floor.from) {
      return start;
    }
    Run run = request.run();
    Tiers racks = floor.racks[choice.oven()];
    int minutes = request.leaves(start) - start;
    int found = racks.latestStart(start, minutes, run.pieces(), choice.racks(), 0, floor.from);
    return lower(Scarce.RACKS, start, found, racks.blocker());
  }

  /** The latest start, not after this one, from which somebody is there whenever a stage ends and the dial is turned. */
  private int turned(BakeChoice choice, int notAfter) {
    int start = notAfter;
    for (int stage = 1; stage < choice.marks().size() && start != Timeline.NONE; stage++) {
      int at = floor.crew.there().latestMoment(start + choice.bake().from(stage));
      start = at == Timeline.NONE ? at : at - choice.bake().from(stage);
    }
    return start;
  }
}
