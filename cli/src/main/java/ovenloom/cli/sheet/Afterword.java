package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/** What stands under the last act of a run sheet: how warm all of it is, how good the plan is, and the cautions. */
public final class Afterword {

  private final Plan plan;
  private final Life life;
  private final Page page;

  Afterword(Plan plan, Life life, Page page) {
    this.plan = plan;
    this.life = life;
    this.page = page;
  }

  /** It by itself, for whatever paper. */
  public static List<Line> of(Plan plan, Life life) {
    return new Afterword(plan, life, new Page(Page.NARROWEST, false)).write().lines();
  }

  Page write() {
    new HowWarm(plan, life, page).write();
    new HowGood(plan, page).write();
    return page;
  }
}
