package ovenloom.cli.page;

import ovenloom.cli.lane.Box;

/**
 * A box and what is written of it.
 *
 * @param words as many as have room; none where none do
 * @param fits whether they have it inside, and not to the right, where nothing else is
 */
public record Lettered(Box box, String words, boolean fits) {

  public boolean isInside() {
    return fits && !words.isEmpty();
  }

  public boolean isBeside() {
    return !fits && !words.isEmpty();
  }
}
