package ovenloom.cli.sheet;

import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.why.Cost;
import ovenloom.model.why.Trial;

/** Why a run is not somewhere else. */
public final class WhyNotSheet {

  private static final String HOW = """
      Tried by itself: with its cooks, oven, burners and shelves, and with all else where it is.""";

  private WhyNotSheet() {}

  /**
   * What breaks there, or what it costs.
   *
   * @param trial of the run there
   * @param width of a line, in characters
   */
  public static String of(Plan plan, Placement run, Trial trial, int width) {
    Page page = new Page(width, false);
    Clock clock = new Clock(plan.event().calendar());
    int now = run.when().from();
    int then = now + trial.minutes();
    page.line(
        run.dish() + "/" + run.step() + " at " + clock.time(then, 0) + ", not at " + clock.time(now, then)
            + ":");
    if (!trial.keepsAllRules()) {
      page.line("No, " + BreakList.count(trial.breaks()) + ".");
      return page + BreakList.of(plan.event(), trial.breaks(), width) + new Page(width, false).line(HOW);
    }
    Cost cost = Cost.of(plan.score(), trial.plan().score(), plan.event().wishes());
    return page.line(words(cost)).line(HOW).toString();
  }

  private static String words(Cost cost) {
    if (cost.isNothing()) {
      return "It breaks nothing, and is as good.";
    }
    return cost.isLess() ? "It breaks nothing, and would be better: " + CostText.of(cost) + "."
        : "It breaks nothing, and would cost: " + CostText.of(cost) + ".";
  }
}
