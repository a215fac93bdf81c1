package ovenloom.solver.batch;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Variation;
import ovenloom.solver.search.Budget;

/**
 * All that is needed to plan one variation, here or on another machine.
 *
 * @param id what tells it from all other runs: equal ones have equal results
 * @param base a digest of the event that is varied
 * @param event reads it with the patches of the variation
 * @param from the plan of the event as it is, to begin with; absent where its search begins as any other
 * @param version of this program: another one may come to another plan
 */
public record Run(String id, String base, Variation variation, Supplier<Reading<Event>> event, Budget budget,
    @Nullable Plan from, String version) {

  public static Run of(
      String base, Variation variation, Supplier<Reading<Event>> event, Budget budget, @Nullable Plan from,
      String version) {
    String id = Digest.of(String.join("\n", base, variation.choices().toString(),
        variation.patches().toString(), budget.toString(), from == null ? "cold" : "warm", version));
    return new Run(id, base, variation, event, budget, from, version);
  }
}
