package ovenloom.cli.sheet;

/**
 * Something that goes on at a minute.
 *
 * @param cook whose hands are at it; empty where it needs none
 * @param places where it goes on
 * @param thing which place, or who: what the eye looks for
 */
public record Going(String cook, Places places, String thing, String words) {

  static Going at(Places places, String thing, String words) {
    return new Going("", places, thing, words);
  }
}
