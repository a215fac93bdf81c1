package ovenloom.model.watch;

import java.util.List;
import ovenloom.model.heat.Kind;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.menu.BatchStep;

/**
 * Which food must be kept hot or cold: raw animal food, and what has been cooked, but for bread. Tags say otherwise: {@code tcs},
 * {@code not tcs}. Source: FDA Food Code 2017, 1-201.10(B), in states' adoptions; that bread is not is common practice.
 */
final class Perishable {

  private static final String YES = "tcs";
  private static final String NO = "not tcs";
  private static final String RAW = "raw";

  private Perishable() {}

  /** The minute from which on food of a way must be; its end where it never must. */
  static int from(Track track) {
    List<String> tags = track.last().dish().tags();
    if (tags.contains(NO) || track.last().dish().kind() == Kind.BREAD) {
      return track.to();
    }
    for (Leg leg : track.legs()) {
      if (tags.contains(YES) || isRaw(leg.step())) {
        return leg.when().from();
      }
      if (leg.step().step().cooks()) {
        return leg.when().from();
      }
    }
    return track.to();
  }

  static boolean isRaw(BatchStep step) {
    return step.dish().tags().stream().anyMatch(tag -> tag.startsWith(RAW));
  }
}
