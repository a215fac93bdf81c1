package ovenloom.model.life;

/** What food on the counter and at the table is taken to have over it, where no card says. */
public enum Unsaid {
  /** Nothing: it gives off vapour. */
  OPEN,

  /** Loosely something: no vapour gets away, and as much heat as from an open dish. */
  LOOSE,

  /** A lid or foil. */
  LID
}
