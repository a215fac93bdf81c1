package ovenloom.model.menu;

/** A kind of points: what makes one plan better than another that is as safe and as hot. Fewer points are better. */
public enum Wish {
  FRESHNESS,
  SETTING,
  CALM,
  DIAL,
  ENERGY,
  SESSIONS,
  STEADY
}
