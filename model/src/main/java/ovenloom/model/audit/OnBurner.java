package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * A pot on a burner, cooking or kept warm there.
 *
 * @param who whose pot it is, as a cook would call it
 */
record OnBurner(String burner, String who, Stretch when) {

  static List<OnBurner> of(Case plan) {
    List<OnBurner> pots = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      run.burners().forEach(burner -> pots.add(new OnBurner(burner, plan.name(run), run.when())));
    }
    for (Stay stay : plan.plan().stays()) {
      for (Stay.Part part : stay.parts()) {
        if (part.where() instanceof Where.OnBurner on) {
          on.burners().forEach(burner -> pots.add(new OnBurner(burner, plan.name(stay), part.when())));
        }
      }
    }
    return pots;
  }
}
