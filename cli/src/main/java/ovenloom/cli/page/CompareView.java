package ovenloom.cli.page;

import java.util.List;
import ovenloom.cli.compare.Comparison;
import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.compare.Differing;

/**
 * All that is on the page of a comparison.
 *
 * @param planned the names of those that have a plan
 */
public record CompareView(Comparison comparison, List<String> planned, List<Stack> stacks,
    List<Differing> differing) {

  static CompareView of(Comparison comparison) {
    List<Planned> planned = comparison.planned();
    return new CompareView(comparison, planned.stream().map(Planned::name).toList(), Stack.of(planned),
        comparison.differing());
  }

  public String style() {
    return Palette.style() + PlanPage.read("page.css") + PlanPage.read("compare.css");
  }
}
