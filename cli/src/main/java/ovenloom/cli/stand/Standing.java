package ovenloom.cli.stand;

import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Spread;

/**
 * A vessel that stands on a surface for a while, wherever on it.
 *
 * @param piece which of the vessels of its run or its wait, batch by batch, from 0
 */
record Standing(String place, int level, String dish, String step, Batches batches, int piece, String vessel,
    Size size,
    Stretch when) {

  /** Where it stands, turned or not. */
  Stood at(long left, long front, boolean turned) {
    long width = (turned ? size.depth() : size.width()).micrometres();
    long depth = (turned ? size.width() : size.depth()).micrometres();
    return new Stood(dish, step, batches, vessel, left, front, width, depth);
  }

  boolean is(Spread.Spot spot) {
    return spot.dish().equals(dish) && spot.step().equals(step) && spot.batches().equals(batches)
        && spot.piece() == piece;
  }

  boolean isDeeperThanWide() {
    return size.depth().compareTo(size.width()) > 0;
  }
}
