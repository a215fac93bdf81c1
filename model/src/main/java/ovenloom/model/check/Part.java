package ovenloom.model.check;

/** The parts of an event that a check relies on. */
public enum Part {
  COURSES,
  KITCHEN,
  COOKS,
  RULES,
  /** All dishes, whole. */
  MENU
}
