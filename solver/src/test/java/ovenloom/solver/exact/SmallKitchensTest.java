package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/**
 * In kitchens so small that the best plan can be proven, nobody finds a better one, and the search comes to it in most.
 *
 * <p>Three say what a plan is: the rules as CP-SAT understands them, the audit, and the search.
 */
class SmallKitchensTest {

  /** Of the first hundred those that are proven in a few seconds. */
  private static final long[] SEEDS = {
      1, 2, 3, 4, 5, 10, 11, 12, 13, 16, 19, 26, 29, 31, 36, 37, 39, 43, 44, 46, 48, 49, 53, 55, 56, 57, 59,
      61, 67, 68};

  private static final Budget A_SEARCH = new Budget(null, 100_000L, 1, 2);

  /** Where the best plan leaves food in an oven that is switched off, which the search never does. */
  private static final Set<Long> IN_AN_OVEN_THAT_IS_OFF = Set.of(29L, 37L, 43L, 61L);

  /** Where food stands on the counter for a part of its wait only, or a wash waits for a calmer hour. */
  private static final Set<Long> BEYOND_THE_DECODER = Set.of(26L, 46L, 57L);

  /** Where the search of this seed stops one point of calm short of the best. */
  private static final Set<Long> NEARLY = Set.of(59L);

  private static final Set<Long> PLANNED = new TreeSet<>();
  private static final Set<Long> REACHED = new TreeSet<>();

  @TempDir
  private Path folder;

  static LongStream seeds() {
    return Arrays.stream(SEEDS);
  }

  @ParameterizedTest(name = "kitchen {0}")
  @MethodSource("seeds")
  void no_plan_is_better_than_the_one_that_is_proven_to_be_the_best(long seed) throws IOException {
    Event event = SmallKitchen.of(seed, folder);
    Found found = Search.find(event, List.of(), A_SEARCH, (best, schedules, left) -> {}, () -> false);

    switch (Exact.of(event)) {
      case Answer.NoPlan() -> assertThat(found.breaks()).isNotEmpty();
      case Answer.Best(Plan best) -> {
        assertThat(Audit.of(event, best)).isEmpty();
        isCountedAlike(best.score(), Reckoning.of(event, best));
        PLANNED.add(seed);
        if (found.isAPlan()) {
          isNoBetter(found.plan().score(), best.score(), seed);
        }
        boolean known = Stream.of(IN_AN_OVEN_THAT_IS_OFF, BEYOND_THE_DECODER, NEARLY)
            .anyMatch(each -> each.contains(seed));
        assertThat(REACHED.contains(seed) || known).as("the search comes to the best").isTrue();
      }
    }
  }

  private static void isCountedAlike(Score proven, Score counted) {
    assertThat(proven.atTheTable()).isEqualTo(counted.atTheTable());
    assertThat(proven.points()).isEqualTo(counted.points());
    assertThat(proven.early()).isEqualTo(counted.early());
  }

  private static void isNoBetter(Score found, Score proven, long seed) {
    assertThat(found.atTheTableInAll()).isGreaterThanOrEqualTo(proven.atTheTableInAll());
    if (found.atTheTableInAll() == proven.atTheTableInAll()) {
      assertThat(found.wishes()).isGreaterThanOrEqualTo(proven.wishes());
      if (found.wishes() == proven.wishes()) {
        REACHED.add(seed);
      }
    }
  }

  /** A law that is never put to the test holds easily. */
  @AfterAll
  static void some_kitchens_have_a_plan_and_some_have_none() {
    assertThat(PLANNED).hasSizeBetween(SEEDS.length / 2, SEEDS.length - 3);
  }
}
