package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.BatchStep;
import ovenloom.solver.supper.Suppers;

/** Two dishes for supper at 19:00 and one large burner, on which the soup, placed first, simmers for the last hour. */
class StraightOnTest {

  private static final int AT_SIX = 18 * 60;

  @TempDir
  private Path folder;

  private Runs soupAnd(String steps) throws IOException {
    return Runs.of(Suppers.withDishes(folder, """
          - dish: Soup
            arrives: hot
            tags: [not tcs]
            steps: [{do: simmer, takes: 60 min, burner: large, in: mixing bowl}]
          - dish: Rice
            arrives: hot
            tags: [not tcs]
            steps:
        """ + steps));
  }

  private static int run(Runs runs, String step) {
    return runs.runOf()
        .get(runs.work()
            .steps()
            .stream()
            .filter(unit -> unit.step().name().equals(step))
            .findFirst()
            .map(BatchStep::index)
            .orElseThrow());
  }

  /** With steps of one run each, so that runs and steps have the same numbers. */
  private static Draft decoded(Runs runs, List<String> takenAtOnce) {
    return decoded(runs, List.of("simmer"), takenAtOnce);
  }

  private static Draft decoded(Runs runs, List<String> first, List<String> takenAtOnce) {
    Decoder decoder = new Decoder(runs);
    Decisions decisions = Decisions.open(runs.runs().size());
    double[] wanted = decisions.turns();
    first.forEach(step -> wanted[run(runs, step)] = -1);
    decisions.queueBy(wanted);
    for (String step : takenAtOnce) {
      decisions.setStay(run(runs, step), decoder.takenAtOnce(run(runs, step)));
    }
    return decoder.decode(decisions);
  }

  private static final String BOILED_AND_DRESSED = """
              - {do: boil, takes: 30 min, burner: large, in: mixing bowl, keeps: {counter: 2 h}}
              - {do: dress, takes: 5 min, hands: throughout, keeps: {counter: 2 h}}
      """;

  @Test
  void food_that_may_wait_is_taken_on_as_late_as_it_fits() throws IOException {
    Runs runs = soupAnd(BOILED_AND_DRESSED);
    Draft draft = decoded(runs, List.of());

    assertThat(draft.end(run(runs, "boil"))).isEqualTo(AT_SIX);
    assertThat(draft.end(run(runs, "dress"))).isEqualTo(AT_SIX + 60);
    assertThat(draft.shortfall()).isZero();
  }

  @Test
  void food_that_is_not_to_wait_is_taken_on_as_soon_as_it_is_done() throws IOException {
    Runs runs = soupAnd(BOILED_AND_DRESSED);
    Draft draft = decoded(runs, List.of("boil"));

    assertThat(draft.end(run(runs, "boil"))).isEqualTo(AT_SIX);
    assertThat(draft.start(run(runs, "dress"))).isEqualTo(AT_SIX);
    assertThat(draft.shortfall()).isZero();
  }

  @Test
  void one_step_after_the_other_follows_what_is_not_to_wait() throws IOException {
    Runs runs = soupAnd("""
                - {do: boil, takes: 30 min, burner: large, in: mixing bowl, keeps: {counter: 2 h}}
                - {do: rest, takes: 10 min, keeps: {counter: 2 h}}
                - {do: dress, takes: 5 min, hands: throughout, keeps: {counter: 2 h}}
        """);
    Draft draft = decoded(runs, List.of("boil", "rest"));

    assertThat(draft.end(run(runs, "boil"))).isEqualTo(AT_SIX);
    assertThat(draft.start(run(runs, "rest"))).isEqualTo(AT_SIX);
    assertThat(draft.start(run(runs, "dress"))).isEqualTo(AT_SIX + 10);
  }

  /** The cook carves something else in the minutes after six: both are done sooner, and still one right after the other. */
  @Test
  void who_takes_it_on_and_what_is_taken_agree_on_a_moment_that_suits_both() throws IOException {
    Runs runs = soupAnd(BOILED_AND_DRESSED + """
          - dish: Ham
            arrives: cool
            tags: [not tcs]
            steps: [{do: carve, takes: 65 min, hands: throughout, keeps: {counter: 2 h}}]
        """);
    Draft draft = decoded(runs, List.of("simmer", "carve"), List.of("boil"));

    assertThat(draft.start(run(runs, "carve"))).isEqualTo(AT_SIX - 5);
    assertThat(draft.end(run(runs, "dress"))).isEqualTo(AT_SIX - 5);
    assertThat(draft.end(run(runs, "boil"))).isEqualTo(AT_SIX - 10);
  }

  @Test
  void food_for_the_table_cannot_be_taken_at_once() throws IOException {
    Runs runs = soupAnd(BOILED_AND_DRESSED);
    Decoder decoder = new Decoder(runs);

    assertThat(decoder.waysToWait(run(runs, "boil"))).isEqualTo(decoder.waysToWait(run(runs, "dress")) + 1);
  }
}
