package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.life.Cards;
import ovenloom.model.life.RoastOvens;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.safety.Profile;

/**
 * The oven in which a whole roast is first baked is hot enough for its weight, in each stage.
 */
record Roasted(Plan plan, Work work) {

  static final String HELP = "A hotter mark, or the fan; a weight among the ingredients, where the roast is heavier.";

  List<Concern> concerns() {
    RoastOvens ovens = new RoastOvens(Profile.of(plan.event().rules()), new Cards(work));
    List<Concern> all = new ArrayList<>();
    for (BatchStep step : work.steps()) {
      Baking baking = baking(step);
      if (baking != null) {
        tooCool(step, baking.stages(), ovens.least(step, baking.mode()), all);
      }
    }
    return all;
  }

  private static void tooCool(BatchStep step, List<Baking.StageRun> stages,
      Profile.@Nullable RoastOven least, List<Concern> all) {
    if (least != null) {
      stages.stream()
          .filter(stage -> stage.mark().temperature().compareTo(least.at()) < 0)
          .forEach(stage -> all.add(concern(step, stage, least)));
    }
  }

  private @Nullable Baking baking(BatchStep step) {
    return plan.placements()
        .stream()
        .filter(run -> run.dish().equals(step.dish().name()) && run.step().equals(step.step().name()))
        .filter(run -> run.batches().holds(step.batches()))
        .findFirst()
        .map(Placement::baking)
        .orElse(null);
  }

  private static Concern concern(BatchStep step, Baking.StageRun stage, Profile.RoastOven least) {
    Temperature mark = stage.mark().temperature();
    return new Concern(Concern.Rule.ROASTED, step, stage.when().from(), least.at().kelvinsAbove(mark),
        what("Roasted at " + Words.degrees(mark), least), least.source(), HELP);
  }

  /** What is so of an oven, and what it should be. */
  static String what(String so, Profile.RoastOven least) {
    Mass under = least.under();
    String roast = under == null ? "any roast" : "a roast under " + Words.kilograms(under);
    return so + " (" + least.mode() + "), at least " + Words.degrees(least.at()) + " for " + roast + ".";
  }
}
