package ovenloom.model.menu;

/** How cold food is when a bake begins, warmest first. */
public enum StartState {
  /** At most five minutes since a step that heated it. */
  STRAIGHT_ON,
  /** At room temperature. */
  RESTED,
  /** From a fridge. */
  CHILLED,
  /** From a freezer. */
  FROZEN
}
