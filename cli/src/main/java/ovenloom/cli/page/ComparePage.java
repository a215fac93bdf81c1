package ovenloom.cli.page;

import ovenloom.cli.compare.Comparison;

/** One HTML file with all of a comparison in it, for which no network and no script is needed. */
public final class ComparePage {

  private ComparePage() {}

  /**
   * Writes it out.
   *
   * @param comparison of plans that have passed the audit
   */
  public static String of(Comparison comparison) {
    return PlanPage.filled("compare.jte", CompareView.of(comparison));
  }
}
