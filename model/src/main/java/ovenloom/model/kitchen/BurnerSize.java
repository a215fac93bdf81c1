package ovenloom.model.kitchen;

/** How big a burner is, smallest first. */
public enum BurnerSize {
  SMALL,
  MEDIUM,
  LARGE
}
