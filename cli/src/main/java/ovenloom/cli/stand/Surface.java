package ovenloom.cli.stand;

import java.util.List;
import ovenloom.model.measure.Size;

/**
 * A rack of an oven or a shelf of a cold or hot place over time.
 *
 * @param place the oven or store
 * @param level from 0, in the order the kitchen lists them: racks from the bottom up, shelves from the top down
 * @param scenes in order, without a gap between them
 */
public record Surface(String place, int level, Size size, List<Scene> scenes) {

  public Surface {
    scenes = List.copyOf(scenes);
  }
}
