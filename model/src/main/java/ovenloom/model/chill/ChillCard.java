package ovenloom.model.chill;

import java.util.List;

/**
 * A step that cools food, and the ways in which it may.
 *
 * @param ways the one that the cook likes best first
 */
public record ChillCard(String dish, String step, List<WayToChill> ways) {

  public ChillCard {
    ways = List.copyOf(ways);
    if (ways.isEmpty()) {
      throw new IllegalArgumentException(dish + "/" + step + " has no way to chill");
    }
  }
}
