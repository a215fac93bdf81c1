package ovenloom.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import ovenloom.model.tally.Tally;

/** One HTML file that shows what many runs came to, for which no network is needed. */
public final class RunsPage {

  private RunsPage() {}

  /**
   * Writes it out.
   *
   * @param name of the what-if
   * @param asked how many runs there are to be in the end
   */
  public static String of(Tally tally, String name, long asked) {
    StringOutput html = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, "ovenloom.cli.page.drawn")
        .render("runs.jte", RunsView.of(tally, name, asked), html);
    return html.toString();
  }
}
