package ovenloom.model.kitchen;

/** How high in an oven. */
public enum Level {
  LOW,
  MIDDLE,
  HIGH
}
