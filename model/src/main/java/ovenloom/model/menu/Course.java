package ovenloom.model.menu;

/**
 * A course and the moment everyone sits down to it.
 *
 * @param at the table time
 * @param servedOver minutes from the table time in which its dishes are plated and served
 */
public record Course(String name, int at, int servedOver) {

  public Course {
    if (servedOver < 0) {
      throw new IllegalArgumentException("\"" + name + "\" cannot be served over " + servedOver + " minutes");
    }
  }
}
