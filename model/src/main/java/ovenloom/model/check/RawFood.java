package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.Dish;
import ovenloom.model.safety.CookTo;

/** Raw food of which nobody knows how hot it must be cooked counts as what must be cooked hottest, which is worth a note. */
final class RawFood implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of();
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<String> known = CookTo.ALL.stream().map(CookTo::tag).toList();
    List<Finding> found = new ArrayList<>();
    for (Dish dish : scene.event().dishes()) {
      for (String tag : dish.tags()) {
        if (CookTo.isOfUnknownFood(tag)) {
          found.add(
              Finding.note(Subject.dish(dish.name()).key("tags"), new Trouble.UnknownRawFood(tag, known)));
        }
      }
    }
    return found;
  }
}
