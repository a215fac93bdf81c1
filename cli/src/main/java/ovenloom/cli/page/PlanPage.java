package ovenloom.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.plan.Plan;

/** One HTML file with all of a plan in it, for which no network is needed. */
public final class PlanPage {

  /** Line breaks, and what joins several pictures to one. */
  private static final String ALLOWED = "\n\u200D";

  private PlanPage() {}

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   */
  public static String of(Plan plan) {
    return filled("page.jte", View.of(plan));
  }

  /** A template with all that is on the page. */
  static String filled(String template, Object view) {
    StringOutput html = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, "ovenloom.cli.page.drawn")
        .render(template, view, html);
    return Harmless.words(html.toString(), ALLOWED);
  }

  /** A part that is the same on every page. */
  static String read(String name) {
    try (InputStream in = PlanPage.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
