package ovenloom.model.watch;

import ovenloom.model.life.Track;
import ovenloom.model.menu.Dish;
import ovenloom.model.safety.Perishable;

/** From when on food of one way must be kept hot or cold. */
final class Since {

  private Since() {}

  /** The minute; the end of the way where it never must. */
  static int perishable(Track track) {
    Dish eaten = track.last().dish();
    if (Perishable.isNever(eaten.tags())) {
      return track.to();
    }
    boolean isOnceCooked = Perishable.isOnceCooked(eaten.matter().kind());
    return track.legs()
        .stream()
        .filter(leg -> Perishable.isFromTheStart(eaten.tags())
            || Perishable.isFromTheStart(leg.step().dish().tags())
            || (isOnceCooked && Spans.cooks(leg)))
        .mapToInt(leg -> leg.when().from())
        .findFirst()
        .orElse(track.to());
  }
}
