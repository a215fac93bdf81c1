package ovenloom.cli.sheet;

/**
 * Where something is done: an oven, a cold or hot place, or one rack or shelf of it.
 *
 * @param whole the oven or store by its name in the kitchen
 * @param part a shelf by its name, a rack by its number; empty for all of it
 */
public record Place(String whole, String part) {

  /** Nothing in a kitchen is without a name. */
  static final Place TABLE = new Place("", "");

  /** All of it. */
  public static Place all(String whole) {
    return new Place(whole, "");
  }

  /** A part of it, and nobody knows which. */
  static Place somewhereIn(String whole) {
    return new Place(whole, " ");
  }

  /** Whether they have some room in common. */
  boolean touches(Place other) {
    return whole.equals(other.whole) && (part.isEmpty() || other.part.isEmpty() || part.equals(other.part));
  }
}
