package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ovenloom.model.menu.Dish;
import ovenloom.model.safety.Allergens;

/** An allergen that no dish contains is kept apart from nothing: worth a note where its name is none of the known ones, and may be misspelt. */
final class KnownAllergens implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    Set<String> contained = new TreeSet<>();
    scene.event().dishes().forEach(dish -> contained.addAll(Allergens.in(dish.tags())));
    List<String> known = Stream.concat(contained.stream(), Allergens.KNOWN.stream()).distinct().toList();
    List<Finding> found = new ArrayList<>();
    for (Dish dish : scene.event().dishes()) {
      for (String allergen : Allergens.keptOutOf(dish.tags())) {
        if (!known.contains(allergen)) {
          found.add(Finding.note(Subject.dish(dish.name()).key("tags"),
              new Trouble.UnknownAllergen(allergen, known)));
        }
      }
    }
    return found;
  }
}
