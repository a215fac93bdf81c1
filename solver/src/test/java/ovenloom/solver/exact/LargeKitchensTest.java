package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/**
 * Before large kitchens are measured against the full model of CP-SAT (OR-Tools), it is shown with few dishes that it has their rules:
 * its plans pass the audit, the model that goes minute by minute comes to the same, and no search finds a better plan.
 */
class LargeKitchensTest {

  /** The plan says nothing of the wishes that weigh nothing. */
  private static final String ONLY_WHAT_IS_NOT_ASKED_FOR = "score";

  private static final int DISHES = 6;
  private static final int SECONDS = 60;
  private static final Budget A_SEARCH = new Budget(null, 20_000L, 1, 2);

  private static final Map<Long, FullModel.Reached> REACHED = new TreeMap<>();

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = {2, 4, 5})
  void the_audit_agrees_with_the_best_plan(long seed) throws IOException {
    FullModel.Reached reached = reached(seed);

    Plan best = Objects.requireNonNull(reached.plan());
    Score counted = Reckoning.of(event(seed), best);
    assertThat(Audit.of(event(seed), best)).extracting(Break::rule).containsOnly(ONLY_WHAT_IS_NOT_ASKED_FOR);
    assertThat(counted.atTheTable()).isEqualTo(best.score().atTheTable());
    assertThat(counted.wishes()).isEqualTo(best.score().wishes());
    assertThat(points(counted)).as("proven").isEqualTo(reached.bound());
  }

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = 2)
  void minute_by_minute_it_comes_to_the_same(long seed) throws IOException {
    Answer exact = Exact.of(event(seed), 1);

    assertThat(points(((Answer.Best) exact).plan().score())).isEqualTo(reached(seed).bound());
  }

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = {2, 4, 5})
  void the_search_finds_a_plan_and_none_that_is_better(long seed) throws IOException {
    Found found = Search.find(event(seed), List.of(), A_SEARCH, (best, schedules, left) -> {}, () -> false);

    assertThat(found.isAPlan()).isTrue();
    assertThat(points(found.plan().score())).isGreaterThanOrEqualTo(reached(seed).bound());
  }

  private Event event(long seed) throws IOException {
    return LargeKitchen.of(seed, DISHES, folder);
  }

  private FullModel.Reached reached(long seed) throws IOException {
    if (!REACHED.containsKey(seed)) {
      REACHED.put(seed, FullModel.of(event(seed), SECONDS));
    }
    return Objects.requireNonNull(REACHED.get(seed));
  }

  private static long points(Score score) {
    return score.atTheTableInAll() + score.wishes();
  }
}
