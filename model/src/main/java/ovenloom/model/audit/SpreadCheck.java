package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.audit.Surface.Place;
import ovenloom.model.audit.Surface.Standing;
import ovenloom.model.measure.Size;
import ovenloom.model.plan.Spread;

/** Whether a plan says how a crowd stands on a rack or shelf, and whether it can stand so. */
record SpreadCheck(KitchenRule rule, Case plan, Place place, Size surface) {

  /** A vessel where the plan puts it: sides in micrometres from the left wall and the front edge. */
  private record Spot(Standing piece, long left, long front, long right, long back) {

    static Spot of(Standing piece, Spread.Spot spot) {
      long width = piece.size().width().micrometres();
      long depth = piece.size().depth().micrometres();
      long left = spot.left().micrometres();
      long front = spot.front().micrometres();
      return new Spot(piece, left, front, left + (spot.turned() ? depth : width),
          front + (spot.turned() ? width : depth));
    }

    String name() {
      return piece.who() + " no. " + (piece.piece() + 1);
    }

    /** Along the side on which they are further apart; less than nothing where they overlap. */
    long apartFrom(Spot other) {
      long across = Math.max(other.left - right, left - other.right);
      long along = Math.max(other.front - back, front - other.back);
      return Math.max(across, along);
    }
  }

  List<Break> of(Moments.Still<Standing> still) {
    Spread spread = plan.plan()
        .layouts()
        .stream()
        .filter(each -> each.place().equals(place.name()) && each.level() == place.level())
        .filter(each -> each.when().encloses(still.when()))
        .findFirst()
        .orElse(null);
    if (spread == null) {
      int off = still.there().size() - Packing.MOST;
      return List.of(broken(still, off, Unit.PIECES, still.there().size() + " stand on level "
          + (place.level() + 1) + ", and the plan does not say how"));
    }
    List<Break> breaks = new ArrayList<>();
    checkPieces(still, spread, breaks);
    checkRoom(still, spots(still, spread), breaks);
    return breaks;
  }

  private void checkPieces(Moments.Still<Standing> still, Spread spread, List<Break> breaks) {
    Set<Standing> missing = new HashSet<>(still.there());
    int strange = 0;
    for (Spread.Spot spot : spread.spots()) {
      Standing piece = piece(still, spot);
      if (piece == null || !missing.remove(piece)) {
        strange++;
      }
    }
    if (missing.size() + strange > 0) {
      breaks.add(broken(still, missing.size() + strange, Unit.PIECES,
          "the layout lacks " + missing.size() + " and has " + strange + " that are not there"));
    }
  }

  private List<Spot> spots(Moments.Still<Standing> still, Spread spread) {
    List<Spot> spots = new ArrayList<>();
    for (Spread.Spot spot : spread.spots()) {
      Standing piece = piece(still, spot);
      if (piece != null) {
        spots.add(Spot.of(piece, spot));
      }
    }
    return spots;
  }

  private static @Nullable Standing piece(Moments.Still<Standing> still, Spread.Spot spot) {
    return still.there()
        .stream()
        .filter(each -> each.dish().equals(spot.dish()) && each.step().equals(spot.step()))
        .filter(each -> each.batches().equals(spot.batches()) && each.piece() == spot.piece())
        .findFirst()
        .orElse(null);
  }

  private void checkRoom(Moments.Still<Standing> still, List<Spot> spots, List<Break> breaks) {
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      long out = Math.max(spot.right() - surface.width().micrometres(),
          spot.back() - surface.depth().micrometres());
      if (out > 0) {
        breaks.add(broken(still, millimetres(out), Unit.MILLIMETRES,
            spot.name() + " stands out by " + millimetres(out) + " mm"));
      }
      for (Spot other : spots.subList(i + 1, spots.size())) {
        checkGap(still, spot, other, breaks);
      }
    }
  }

  private void checkGap(Moments.Still<Standing> still, Spot one, Spot other, List<Break> breaks) {
    long missing = plan.event().kitchen().gap().micrometres() - one.apartFrom(other);
    if (missing > 0) {
      breaks.add(broken(still, millimetres(missing), Unit.MILLIMETRES, one.name() + " and "
          + other.name() + " are too near by " + millimetres(missing) + " mm"));
    }
  }

  private static long millimetres(long micrometres) {
    return Math.ceilDiv(micrometres, 1000);
  }

  private Break broken(Moments.Still<Standing> still, long off, Unit unit, String what) {
    List<String> who = new ArrayList<>(List.of(place.name()));
    still.there().stream().map(Standing::who).distinct().forEach(who::add);
    return Break.of(rule, who, still.when(), off, unit, what);
  }
}
