package ovenloom.model.watch;

import java.util.List;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Perishable;

/** From when on food of one way must be kept hot or cold. */
final class Since {

  private Since() {}

  /** The minute; the end of the way where it never must. */
  static int perishable(Track track) {
    List<String> tags = track.last().dish().tags();
    if (Perishable.isNever(tags, track.last().dish().kind())) {
      return track.to();
    }
    return track.legs()
        .stream()
        .filter(leg -> isOrBecomes(leg, tags))
        .mapToInt(leg -> leg.when().from())
        .findFirst()
        .orElse(track.to());
  }

  private static boolean isOrBecomes(Leg leg, List<String> tags) {
    return Perishable.isFromTheStart(tags) || Perishable.isFromTheStart(leg.step().dish().tags())
        || leg.step().step().cooks();
  }
}
