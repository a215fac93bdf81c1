package ovenloom.model.plan;

import java.util.List;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;

/**
 * How vessels stand on one rack or shelf for a while.
 *
 * @param place the oven or store
 * @param level the rack or shelf, in the order the kitchen lists them, from 0
 */
public record Spread(String place, int level, Stretch when, List<Spot> spots) {

  /**
   * Where one vessel stands.
   *
   * @param piece which of the run's vessels, batch by batch, from 0
   * @param left from the left wall
   * @param front from the front edge
   * @param turned by 90 degrees
   */
  public record Spot(
      String dish, String step, Batches batches, int piece, Length left, Length front, boolean turned) {}

  public Spread {
    spots = List.copyOf(spots);
  }
}
