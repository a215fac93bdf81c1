package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;
import ovenloom.solver.supper.Suppers;

class FoundTest {

  @TempDir
  private Path folder;

  private Found misjudgedBy(String... rules) throws IOException {
    Plan plan = Suppers.planned(Suppers.withDishes(folder, """
          - {dish: Bread, steps: [{do: slice, takes: 10 min, hands: throughout}]}
        """)).plan();
    List<Break> breaks = Arrays.stream(rules)
        .map(rule -> new Break(rule, "A rule.", List.of("Bread/slice"), null, 1, Break.Unit.MINUTES, "so"))
        .toList();
    return new Found(plan, breaks, List.of(), true, 1);
  }

  @Test
  void how_warm_food_is_layer_by_layer_is_not_for_the_search_to_foresee() throws IOException {
    assertThat(misjudgedBy("safe", "long enough").isOurFault()).isFalse();
    assertThat(misjudgedBy("safe", "hands").isOurFault()).isTrue();
  }
}
