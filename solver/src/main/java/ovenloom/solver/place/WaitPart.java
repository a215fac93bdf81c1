package ovenloom.solver.place;

/** A part of a wait, in one place. */
public final class WaitPart {

  /** What sort of place food waits in. */
  public enum Kind {
    COUNTER,
    STORE,
    BURNER,
    OVEN
  }

  private final Kind kind;
  private final int place;
  private final int[] levels;
  private final int from;
  private final int to;

  private WaitPart(Kind kind, int place, int[] levels, int from, int to) {
    this.kind = kind;
    this.place = place;
    this.levels = levels;
    this.from = from;
    this.to = to;
  }

  static WaitPart onTheCounter(int from, int to) {
    return new WaitPart(Kind.COUNTER, 0, new int[0], from, to);
  }

  static WaitPart inStore(int store, int[] shelves, int from, int to) {
    return new WaitPart(Kind.STORE, store, shelves, from, to);
  }

  static WaitPart onBurners(int[] burners, int from, int to) {
    return new WaitPart(Kind.BURNER, 0, burners, from, to);
  }

  static WaitPart inItsOven(int from, int to) {
    return new WaitPart(Kind.OVEN, 0, new int[0], from, to);
  }

  public Kind kind() {
    return kind;
  }

  /** The store's number in the kitchen's list, for a store. */
  public int place() {
    return place;
  }

  /** How many shelves or burners there are to {@link #level}. */
  public int levels() {
    return levels.length;
  }

  /** The shelf or burner of a piece, by number. */
  public int level(int piece) {
    return levels[piece];
  }

  int[] allLevels() {
    return levels;
  }

  public int from() {
    return from;
  }

  public int to() {
    return to;
  }

  /** How long. */
  public int minutes() {
    return to - from;
  }
}
