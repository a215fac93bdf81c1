package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;

/**
 * Food in an oven with the dial at one mark: a stage of a bake, or a wait after it.
 *
 * @param who whose food it is, as a cook would call it
 * @param run that put it there
 * @param waits whether it only waits
 * @param mark absent where the oven is off
 * @param mode the bake's own, for a wait too
 */
record OvenUse(String who, Placement run, boolean waits, @Nullable Setting mark, String mode, Stretch when) {

  /** All uses of each oven, by its name, in the order of their start. */
  static Map<String, List<OvenUse>> of(Case plan) {
    Map<String, List<OvenUse>> uses = new TreeMap<>();
    for (Bakes bake : Bakes.of(plan)) {
      uses.computeIfAbsent(bake.oven(), name -> new ArrayList<>()).addAll(of(bake));
    }
    uses.values().forEach(all -> all.sort(Comparator.comparingInt(use -> use.when().from())));
    return uses;
  }

  private static List<OvenUse> of(Bakes bake) {
    List<OvenUse> uses = new ArrayList<>();
    String mode = bake.baking().mode();
    for (Baking.StageRun stage : bake.baking().stages()) {
      uses.add(new OvenUse(bake.name(), bake.run(), false, stage.mark(), mode, stage.when()));
    }
    for (Bakes.Left left : bake.left()) {
      uses.add(new OvenUse(bake.name(), bake.run(), true, left.where().mark(), mode, left.when()));
    }
    return uses;
  }

  /** Where they do not, there is no saying what the oven ought to do, and another rule has a word about it. */
  static boolean shareTheDial(List<OvenUse> uses) {
    for (int i = 0; i < uses.size(); i++) {
      OvenUse use = uses.get(i);
      for (OvenUse other : uses.subList(i + 1, uses.size())) {
        if (use.when().overlaps(other.when()) && !use.sharesTheDial(other)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether one dial can serve both: the same mark in the same mode, or both switched off. */
  boolean sharesTheDial(OvenUse other) {
    Setting own = mark;
    Setting others = other.mark;
    if (own == null || others == null) {
      return own == null && others == null;
    }
    return isAt(own, others) && mode.equals(other.mode);
  }

  static boolean isAt(Setting one, Setting other) {
    return one.temperature().equals(other.temperature());
  }

  /** Whether the other is the same food, from the minute this ends. */
  boolean goesOnAs(OvenUse other) {
    return run.equals(other.run) && when.to() == other.when.from();
  }

  String setting() {
    Setting own = mark;
    return own == null ? "off" : own + " " + mode;
  }
}
