package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;

/**
 * Brings washing-up forward from the last moment: what is dirty is washed while whoever emptied it is still about, if somebody is
 * free then and no course is near.
 */
final class WashUp {

  /** Who worked is about for so long after it, minutes: no sitting more. Common practice, as is the next. */
  private static final int STILL_ABOUT = 60;

  /** Hands are wanted for other things so long before a course, minutes. */
  private static final int HURRY = 120;

  private final Crew crew;
  private final List<Stretch> hurries;

  WashUp(Event event, Crew crew) {
    this.crew = crew;
    hurries = event.courses()
        .stream()
        .map(Course::at)
        .map(at -> new Stretch(at - HURRY, at))
        .toList();
  }

  /** A wash at the first minute at which somebody is free for it; where it was if there is none soon. */
  VesselPool.Done sooner(VesselPool.Done wash, int dirty) {
    int minutes = wash.to() - wash.from();
    int last = Math.min(wash.from() - 1, dirty + STILL_ABOUT);
    for (int from = dirty; from <= last; from++) {
      boolean isStillAbout = crew.isAnyoneAtWork(from - STILL_ABOUT + 1, from);
      if (isStillAbout && !isInAHurry(from, minutes) && crew.latestWash(from, minutes) == from) {
        int cook = crew.takeForWash(from, minutes);
        return new VesselPool.Done(wash.vessel(), wash.pieces(), from, from + minutes, cook);
      }
    }
    return wash;
  }

  private boolean isInAHurry(int from, int minutes) {
    for (Stretch hurry : hurries) {
      if (hurry.from() < from + minutes && from < hurry.to()) {
        return true;
      }
    }
    return false;
  }
}
