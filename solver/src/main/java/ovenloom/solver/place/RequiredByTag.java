package ovenloom.solver.place;

import ovenloom.model.menu.Dish;

/** The cooking temperature that raw food asks for. */
final class RequiredByTag {

  private RequiredByTag() {}

  static long of(Dish dish) {
    return dish.tags().stream().anyMatch(tag -> tag.startsWith("raw")) ? 1 : 0;
  }
}
