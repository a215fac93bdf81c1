package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.search.Budget;

/** One oven or two, in fifty kitchens: whatever is found for one, nothing proven for two may say that two are worse. */
class SecondOvenTest {

  private static final Budget A_FEW = new Budget(null, 200L, 1, 1);
  private static int withAPlan;
  private static int bounded;

  @TempDir
  private Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest(name = "kitchen {0}")
  @MethodSource("seeds")
  void two_ovens_are_never_worse_than_one_beyond_what_is_proven(long seed) throws IOException {
    Files.writeString(folder.resolve("supper.yaml"), SmallKitchen.text(seed, folder));
    Files.writeString(folder.resolve("ovens.yaml"),
        """
            ovenloom: 1
            what if: A second oven?
            event: supper.yaml
            axes:
              ovens:
                as now: as it is
                one more: {kitchen: {ovens: {spare oven: {dial: 60 C to 250 C, step: 10 C, modes: [still],
                  heats: 200 C in 12 min, cools: 200 C to 150 C in 10 min, racks: {count: 2, size: 45 x 36 cm, clear: 15 cm}}}}}
            """);
    WhatIf ovens = whatIf();

    Outcome one = planned(ovens, 0);
    Outcome two = planned(ovens, 1);

    if (one instanceof Outcome.APlan(Plan withOne)) {
      withAPlan++;
      assertThat(two).isNotInstanceOfAny(Outcome.TooMuch.class, Outcome.Clashing.class);
      assertThat(two instanceof Outcome.APlan(Plan withTwo) && isBelow(withOne.score(), withTwo.bound()))
          .isFalse();
      bounded += two instanceof Outcome.APlan(Plan withTwo) && withTwo.bound() != null
          && withTwo.bound().wishes() > 0
              ? 1 : 0;
    }
  }

  /** Whether a plan with this score would be better than any there can be. */
  private static boolean isBelow(Score score, @Nullable Bound bound) {
    return bound != null && (score.atTheTableInAll() < bound.atTheTable()
        || (score.atTheTableInAll() == bound.atTheTable() && score.wishes() < bound.wishes()));
  }

  /** A law that is never put to the test holds easily. */
  @AfterAll
  static void most_kitchens_have_a_plan_and_many_a_bound_above_nothing() {
    assertThat(withAPlan).isGreaterThan(30);
    assertThat(bounded).isGreaterThan(20);
  }

  private static Outcome planned(WhatIf ovens, long index) {
    return switch (ovens.event(index)) {
      case Reading.Understood<Event>(Event event, List<Plan.Source> sources, var notes) ->
        Outcome.planned(event, sources, A_FEW, null, () -> false);
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private WhatIf whatIf() {
    return switch (WhatIfFile.read(folder.resolve("ovens.yaml"), folder)) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
