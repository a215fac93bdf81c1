package ovenloom.model.file;

/**
 * How much a file may hold, so that one from a stranger does no harm.
 *
 * @param bytes how large it may be
 * @param values how many values it may hold, aliases written out
 * @param files over how many it may be spread
 */
record Limits(int bytes, int values, int files) {

  /** What people write by hand. */
  static final Limits PROBLEM = new Limits(1_000_000, 100_000, 200);

  /** Many menus and kitchens to choose from. */
  static final Limits WHAT_IF = new Limits(1_000_000, 100_000, 5_000);

  /** What this program writes: every minute of a large event. */
  static final Limits PLAN = new Limits(20_000_000, 2_000_000, 1);
}
