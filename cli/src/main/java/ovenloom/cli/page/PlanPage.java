package ovenloom.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import ovenloom.cli.sheet.Acts;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Title;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/** One HTML file with all of a plan in it, for which no network is needed. */
public final class PlanPage {

  private PlanPage() {}

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   */
  public static String of(Plan plan) {
    Life life = Life.of(plan, 1);
    StringOutput html = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, "ovenloom.cli.page.drawn")
        .render("page.jte", Map.of(
            "title", new Title(plan.event()),
            "clock", new Clock(plan.event().calendar()),
            "acts", Acts.of(plan, life)), html);
    return html.toString();
  }
}
