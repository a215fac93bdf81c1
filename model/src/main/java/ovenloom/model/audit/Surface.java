package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.audit.Packing.Rectangle;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;

/** A rack or a shelf, all that stands on it over time, and whether there is room for it. */
final class Surface {

  /** @param level of the rack or shelf, from 0 */
  record Place(String name, int level) implements Comparable<Place> {

    @Override
    public int compareTo(Place other) {
      return name.equals(other.name) ? Integer.compare(level, other.level) : name.compareTo(other.name);
    }
  }

  /**
   * A vessel that stands on it.
   *
   * @param piece which of the run's or the stay's vessels, from 0
   * @param who whose it is, as a cook would call it
   */
  record Standing(String dish, String step, Batches batches, int piece, Size size, String who) {

    Rectangle rectangle() {
      return new Rectangle(size.width().micrometres(), size.depth().micrometres());
    }
  }

  private final Place place;
  private final Size size;
  private final Moments<Standing> standing = new Moments<>();

  Surface(Place place, Length width, Length depth) {
    this.place = place;
    size = new Size(width, depth);
  }

  void put(Standing piece, Stretch when) {
    standing.add(when, piece);
  }

  /** Where there is too little room, or where more than eight stand and the plan does not say how. */
  List<Break> check(KitchenRule rule, Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Moments.Still<Standing> still : standing.stills()) {
      if (still.there().size() > Packing.MOST) {
        breaks.addAll(new SpreadCheck(rule, plan, place, size).of(still));
      } else {
        int left = leftOver(still.there(), plan.event().kitchen().gap());
        if (left > 0) {
          breaks.add(tooMany(rule, still, left));
        }
      }
    }
    return breaks;
  }

  /** How many find no room once those before them stand. */
  private int leftOver(List<Standing> all, Length gap) {
    Rectangle room = new Rectangle(size.width().micrometres(), size.depth().micrometres());
    List<Rectangle> stands = new ArrayList<>();
    if (Packing.fits(all.stream().map(Standing::rectangle).toList(), room, gap.micrometres())) {
      return 0;
    }
    for (Standing piece : all) {
      stands.add(piece.rectangle());
      if (!Packing.fits(stands, room, gap.micrometres())) {
        stands.removeLast();
      }
    }
    return all.size() - stands.size();
  }

  private Break tooMany(KitchenRule rule, Moments.Still<Standing> still, int left) {
    List<String> who = new ArrayList<>(List.of(place.name()));
    still.there().stream().map(Standing::who).distinct().forEach(who::add);
    Map<String, Integer> sizes = new TreeMap<>();
    still.there().forEach(piece -> sizes.merge(piece.size().written(), 1, Integer::sum));
    return Break.of(rule, who, still.when(), left, Unit.PIECES,
        "no room for " + left + " of " + sizes + " on level " + (place.level() + 1) + " of " + size);
  }
}
