package ovenloom.solver.place;

/** What a kitchen may be short of. */
public enum Scarce {
  /** Somebody to be there. */
  HOURS,
  HANDS,
  WORKTOP,
  APPLIANCES,
  BURNERS,
  SHELVES,
  VESSELS,
  /** An oven at the mark, or with the door shut. */
  OVENS,
  RACKS
}
