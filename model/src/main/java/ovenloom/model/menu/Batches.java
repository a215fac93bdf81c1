package ovenloom.model.menu;

/**
 * Which batches of a dish, from the first to the last of them.
 *
 * @param first from 1
 */
public record Batches(int first, int last) implements Comparable<Batches> {

  public Batches {
    if (first < 1 || last < first) {
      throw new IllegalArgumentException("no batches from " + first + " to " + last);
    }
  }

  public static Batches only(int batch) {
    return new Batches(batch, batch);
  }

  public int count() {
    return last - first + 1;
  }

  public boolean holds(int batch) {
    return first <= batch && batch <= last;
  }

  public boolean holds(Batches others) {
    return first <= others.first && others.last <= last;
  }

  @Override
  public int compareTo(Batches other) {
    return first != other.first ? Integer.compare(first, other.first) : Integer.compare(last, other.last);
  }
}
