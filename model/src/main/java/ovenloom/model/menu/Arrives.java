package ovenloom.model.menu;

/** How a dish comes to the table. */
public enum Arrives {
  HOT,
  WARM,
  COOL,
  COLD
}
