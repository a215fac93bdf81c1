package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;

/** Every bake runs at a mark its oven has, as hot as the bake allows, and for as long in each stage. */
record SetPoints() implements KitchenRule {

  private static final int SLIP = 3;

  @Override
  public String id() {
    return "set-points";
  }

  @Override
  public String sentence() {
    return "Every bake runs at a mark its oven has, as hot as the bake allows, and for as long in each stage.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      List<BatchStep> steps = plan.steps(run);
      if (!steps.isEmpty()) {
        checkIsBaked(plan, run, steps.getFirst().step().bake(), breaks);
      }
    }
    for (Bakes bake : Bakes.of(plan)) {
      checkStages(bake, breaks);
      Oven oven = plan.event().kitchen().oven(bake.oven());
      if (oven == null) {
        breaks.add(times(bake, "there is no oven " + bake.oven() + " here"));
      } else {
        checkMarks(bake, oven, breaks);
      }
    }
    return breaks;
  }

  private void checkIsBaked(
      Case plan, Placement run, Need.@Nullable Bake bake, List<Break> breaks) {
    if ((bake == null) != (run.baking() == null)) {
      breaks.add(Break.of(this, List.of(plan.name(run)), run.when(), 1, Unit.TIMES,
          bake == null ? "is put in an oven and is no bake" : "is a bake and is put in no oven"));
    }
  }

  private void checkMarks(Bakes bake, Oven oven, List<Break> breaks) {
    if (!oven.modes().contains(bake.baking().mode())) {
      breaks.add(times(bake, "the oven has no mode " + bake.baking().mode()));
      return;
    }
    List<Need.Stage> asked = bake.bake().stages();
    List<Baking.StageRun> given = bake.baking().stages();
    for (int stage = 0; stage < Math.min(asked.size(), given.size()); stage++) {
      checkMark(bake, oven, asked.get(stage), given.get(stage), breaks);
    }
  }

  private void checkMark(
      Bakes bake, Oven oven, Need.Stage asked, Baking.StageRun given, List<Break> breaks) {
    Window window = Window.of(asked, bake.baking().mode(), oven);
    Setting mark = given.mark();
    if (window == null) {
      breaks.add(times(bake, "is written for " + asked.mode() + ", which says nothing of "
          + bake.baking().mode()));
    } else if (!oven.dial().marks().contains(mark)) {
      Temperature nearest = oven.dial().nearest(mark.temperature()).temperature();
      breaks.add(kelvins(bake, given.when(), mark.temperature().kelvinsAbove(nearest),
          mark + " is no mark of the dial"));
    } else if (!window.holds(mark, oven.dial())) {
      breaks.add(kelvins(bake, given.when(), window.kelvinsOutside(mark),
          mark + " is not from " + window.from() + " to " + window.to()));
    }
  }

  private void checkStages(Bakes bake, List<Break> breaks) {
    List<Need.Stage> asked = bake.bake().stages();
    List<Baking.StageRun> given = bake.baking().stages();
    if (asked.size() != given.size()) {
      breaks.add(Break.of(this, List.of(bake.name()), bake.run().when(),
          Math.abs(asked.size() - given.size()), Unit.TIMES,
          "has " + given.size() + " stages and is written with " + asked.size()));
      return;
    }
    int at = bake.run().when().from();
    for (int stage = 0; stage < given.size(); stage++) {
      checkFollows(bake, given.get(stage).when(), at, breaks);
      boolean last = stage == given.size() - 1;
      checkMinutes(bake, last ? null : asked.get(stage).minutes(), given.get(stage).when(), breaks);
      at = given.get(stage).when().to();
    }
    checkEnds(bake, at, breaks);
  }

  private void checkFollows(Bakes bake, Stretch stage, int at, List<Break> breaks) {
    if (stage.from() != at) {
      breaks.add(minutes(bake, stage, Math.abs(stage.from() - at),
          "a stage begins " + Math.abs(stage.from() - at) + " min from where the one before ends"));
    }
  }

  private void checkEnds(Bakes bake, int at, List<Break> breaks) {
    int off = Math.abs(at - bake.run().when().to());
    if (off > 0) {
      breaks.add(minutes(bake, bake.run().when(), off, "the stages end " + off + " min from the bake"));
    }
  }

  /** The last stage has no minutes of its own: it takes what is left. */
  private void checkMinutes(
      Bakes bake, @Nullable Integer written, Stretch stage, List<Break> breaks) {
    int off = written == null ? 1 - stage.minutes() : Math.abs(stage.minutes() - written) - SLIP;
    if (off > 0) {
      breaks.add(minutes(bake, stage, off, written == null ? "nothing is left for the last stage"
          : "a stage of " + written + " min lasts " + stage.minutes()));
    }
  }

  private Break times(Bakes bake, String what) {
    return Break.of(this, List.of(bake.name(), bake.oven()), bake.run().when(), 1, Unit.TIMES, what);
  }

  private Break minutes(Bakes bake, Stretch when, int off, String what) {
    return Break.of(this, List.of(bake.name()), when, off, Unit.MINUTES, what);
  }

  private Break kelvins(Bakes bake, Stretch when, double off, String what) {
    long whole = Math.max(1, (long) Math.ceil(Math.abs(off)));
    return Break.of(this, List.of(bake.name(), bake.oven()), when, whole, Unit.KELVINS, what);
  }
}
