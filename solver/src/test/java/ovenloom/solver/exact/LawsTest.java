package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** What holds for every kitchen, whatever is cooked in it. */
class LawsTest {

  private static final Set<String> BETTER_WITH = new TreeSet<>();

  private static final Comparator<Score> AS_A_GUEST_SEES_IT = Comparator
      .comparingLong(Score::atTheTableInAll)
      .thenComparingLong(Score::wishes);

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = {2, 10, 12, 19, 31, 49, 55, 56})
  void another_oven_cook_or_burner_never_makes_the_proven_best_worse(long seed) throws IOException {
    String text = SmallKitchen.text(seed, folder);
    Score best = best(text);

    check("an oven", best, text.replace("  ovens:\n", """
          ovens:
            - {name: spare oven, dial: 60 C to 250 C, step: 10 C, modes: [still], heats: 200 C in 12 min,
               cools: 200 C to 150 C in 10 min, racks: {count: 2, size: 45 x 36 cm, clear: 15 cm}}
        """));
    check("a cook", best,
        text.replace("cooks:\n",
            "cooks:\n  - {name: Eva, skills: [carving], hours: {on the day: 16:30-20:00}}\n"));
    check("a burner", best, text.replace("burners: [large", "burners: [large, large"));
  }

  private void check(String more, Score best, String text) throws IOException {
    Score with = best(text);
    assertThat(with).as("with %s more", more).usingComparator(AS_A_GUEST_SEES_IT).isLessThanOrEqualTo(best);
    if (AS_A_GUEST_SEES_IT.compare(with, best) < 0) {
      BETTER_WITH.add(more);
    }
  }

  private Score best(String text) throws IOException {
    return switch (Exact.of(SmallKitchen.read(text, folder))) {
      case Answer.Best(Plan best) -> best.score();
      case Answer.NoPlan() -> throw new AssertionError("a kitchen without a plan");
    };
  }

  /** A law that is never put to the test holds easily. */
  @AfterAll
  static void some_kitchens_are_better_off_with_more() {
    assertThat(BETTER_WITH).contains("an oven", "a cook");
  }

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = {1, 2, 3, 10, 11, 12, 13, 16, 19, 26, 31, 36})
  void more_tries_never_make_the_answer_worse(long seed) throws IOException {
    Event event = SmallKitchen.of(seed, folder);
    Score before = found(event, 1).plan().score();

    for (long tries : new long[]{10, 100, 1_000, 6_000}) {
      Score after = found(event, tries).plan().score();
      assertThat(after).as("%d tries", tries).isLessThanOrEqualTo(before);
      before = after;
    }
  }

  private static Found found(Event event, long tries) {
    return Search.find(event, List.of(), new Budget(null, tries, 1, 2), (best, schedules, left) -> {},
        () -> false);
  }
}
