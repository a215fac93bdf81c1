package ovenloom.model.file;

import java.util.Comparator;

/**
 * A place in a file that someone can put a finger on.
 *
 * @param file as the person named it, or relative to the first file's folder
 * @param line counted from 1
 * @param column counted in characters from 1
 * @param text the whole line
 * @param length how many characters are meant, at least 1
 */
public record Place(String file, int line, int column, String text, int length) implements Comparable<Place> {

  private static final Comparator<Place> AS_READ = Comparator.comparing(Place::file)
      .thenComparingInt(Place::line)
      .thenComparingInt(Place::column);

  public Place {
    if (line < 1 || column < 1 || length < 1) {
      throw new IllegalArgumentException("no place at " + file + ":" + line + ":" + column);
    }
  }

  /** A part of this place, counted from its first character. */
  Place part(int from, int to) {
    return new Place(file, line, column + from, text, Math.max(1, to - from));
  }

  @Override
  public int compareTo(Place other) {
    return AS_READ.compare(this, other);
  }
}
