package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Every time a dial is turned to another mark, somebody has to think of it; a bake's own stages are in its recipe. */
final class DialTurns {

  private static final int POINTS_A_TURN = 5;

  /** Food in an oven at a mark. */
  private record Use(Temperature mark, Stretch when) {}

  private DialTurns() {}

  static long points(Ledger plan) {
    return Shares.sum(byOven(plan));
  }

  /** How often a dial is turned to another mark. */
  static long turns(Ledger plan) {
    return points(plan) / POINTS_A_TURN;
  }

  static Map<String, Long> byOven(Ledger plan) {
    List<String> ovens = plan.plan()
        .placements()
        .stream()
        .map(Placement::baking)
        .filter(baking -> baking != null)
        .map(Baking::oven)
        .distinct()
        .toList();
    Map<String, Long> byOven = new TreeMap<>();
    ovens.forEach(oven -> byOven.put(oven, POINTS_A_TURN * turns(plan.plan(), oven)));
    return byOven;
  }

  private static long turns(Plan plan, String oven) {
    List<Use> blocks = blocks(uses(plan, oven));
    return IntStream.range(1, blocks.size())
        .filter(i -> !blocks.get(i - 1).mark().equals(blocks.get(i).mark()))
        .filter(i -> !isItsOwnStage(plan, oven, blocks.get(i - 1), blocks.get(i)))
        .count();
  }

  private static List<Use> uses(Plan plan, String oven) {
    List<Use> uses = new ArrayList<>();
    for (Placement run : plan.placements()) {
      stages(run, oven).forEach(stage -> uses.add(new Use(stage.mark().temperature(), stage.when())));
    }
    for (Stay stay : plan.stays()) {
      for (Stay.Part part : stay.parts()) {
        if (part.where() instanceof Where.InOven(String in, Setting mark) && in.equals(oven)
            && mark != null) {
          uses.add(new Use(mark.temperature(), part.when()));
        }
      }
    }
    return uses;
  }

  private static List<Baking.StageRun> stages(Placement run, String oven) {
    Baking baking = run.baking();
    return baking != null && baking.oven().equals(oven) ? baking.stages() : List.of();
  }

  /** Uses at one mark that overlap or touch are one. */
  private static List<Use> blocks(List<Use> uses) {
    List<Use> blocks = new ArrayList<>();
    for (Use use : uses.stream().sorted(Comparator.comparingInt(each -> each.when().from())).toList()) {
      Use last = blocks.isEmpty() ? null : blocks.getLast();
      if (last != null && last.mark().equals(use.mark()) && use.when().from() <= last.when().to()) {
        int to = Math.max(last.when().to(), use.when().to());
        blocks.set(blocks.size() - 1, new Use(last.mark(), new Stretch(last.when().from(), to)));
      } else {
        blocks.add(use);
      }
    }
    return blocks;
  }

  private static boolean isItsOwnStage(Plan plan, String oven, Use earlier, Use later) {
    int turned = later.when().from();
    return plan.placements()
        .stream()
        .map(run -> stages(run, oven))
        .anyMatch(
            stages -> IntStream.range(1, stages.size())
                .anyMatch(i -> stages.get(i).when().from() == turned
                    && stages.get(i - 1).mark().temperature().equals(earlier.mark())
                    && stages.get(i).mark().temperature().equals(later.mark())));
  }
}
