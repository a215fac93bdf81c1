package ovenloom.model.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.Allergens;

/** What must be free of an allergen neither has it, nor is made of anything that does. */
final class NotFree implements Check {

  @Override
  public Set<Part> relyingOn() {
    return EnumSet.of(Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Map<String, String>> all = new ArrayList<>();
    List<Finding> found = new ArrayList<>();
    for (BatchStep step : scene.work().steps()) {
      String dish = step.dish().name();
      Map<String, String> has = whatHasThem(scene, step, all);
      all.add(has);
      for (String allergen : Allergens.keptOutOf(step.dish().tags())) {
        String from = has.get(allergen);
        if (from != null) {
          found.add(Finding.fatal(Subject.dish(dish).key("tags"),
              new Trouble.NotFree(allergen, from.equals(dish) ? null : from)));
        }
      }
    }
    return found;
  }

  /** For each allergen in a step's food: a dish that it is from, its own before any other. Steps come after all they link to. */
  private static Map<String, String> whatHasThem(Scene scene, BatchStep step,
      List<Map<String, String>> before) {
    Map<String, String> has = new TreeMap<>();
    Allergens.in(step.dish().tags()).forEach(allergen -> has.put(allergen, step.dish().name()));
    for (BatchLink link : scene.work().into(step.index())) {
      if (link.carriesFood()) {
        before.get(link.from()).forEach(has::putIfAbsent);
      }
    }
    return has;
  }
}
