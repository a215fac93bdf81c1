package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.BatchStep;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

class PleasTest {

  @TempDir
  private Path folder;

  @Test
  void who_finds_no_hands_in_time_chooses_sooner() throws IOException {
    Runs runs = Runs.of(Suppers.withDishes(folder, """
          - dish: Salad
            steps: [{do: dress, takes: 60 min, hands: throughout, in: mixing bowl, keeps: {counter: 3 h}}]
          - dish: Soup
            steps: [{do: stir, takes: 20 min, hands: throughout, burner: large, keeps: {counter: 5 min}}]
        """));
    Decisions saladFirst = decided(runs, "dress", "stir");
    Trial trial = new Trial(runs, Judge.audit(runs.minutes().cards()));
    assertThat(trial.of(saladFirst).draft().shortfall()).as("before").isPositive();

    Decisions heard = new Pleas(trial, new Random(1)).hear(saladFirst, 20, () -> false);

    assertThat(trial.of(heard).draft().shortfall()).isZero();
    assertThat(steps(runs, heard)).containsExactly("stir", "dress");
  }

  @Test
  void food_that_waits_too_long_is_made_right_before_it_is_taken() throws IOException {
    Runs runs = Runs.of(Suppers.withDishes(folder, """
          - dish: Buns
            steps:
              - {do: shape, takes: 20 min, hands: throughout, in: half sheet, keeps: {counter: 10 min}}
              - {do: bake, takes: 60 min, bake: {at: 375 F}, keeps: {counter: 4 h}}
          - dish: Salad
            steps: [{do: dress, takes: 60 min, hands: throughout, in: mixing bowl, keeps: {counter: 3 h}}]
        """));
    Decisions saladBetween = decided(runs, "bake", "dress", "shape");
    saladBetween.setEarlier(step(runs, "dress"), 55);
    Trial trial = new Trial(runs, Judge.audit(runs.minutes().cards()));
    assertThat(trial.of(saladBetween).draft().shortfall()).as("before").isPositive();

    Decisions heard = new Pleas(trial, new Random(1)).hear(saladBetween, 20, () -> false);

    assertThat(trial.of(heard).draft().shortfall()).isZero();
    assertThat(steps(runs, heard)).containsExactly("bake", "shape", "dress");
  }

  @Test
  void what_nobody_pleads_against_stays_as_it_is() throws IOException {
    Runs runs = Runs.of(Suppers.withDishes(folder, """
          - dish: Salad
            steps: [{do: dress, takes: 60 min, hands: throughout, in: mixing bowl, keeps: {counter: 3 h}}]
        """));
    Trial trial = new Trial(runs, Judge.audit(runs.minutes().cards()));

    new Pleas(trial, new Random(1)).hear(Decisions.open(1), 20, () -> false);

    assertThat(trial.decoded()).isEqualTo(1);
  }

  private static Decisions decided(Runs runs, String... steps) {
    Decisions decisions = Decisions.open(steps.length);
    for (int turn = 0; turn < steps.length; turn++) {
      decisions.setStep(turn, step(runs, steps[turn]));
    }
    return decisions;
  }

  private static int step(Runs runs, String name) {
    return runs.work()
        .steps()
        .stream()
        .filter(unit -> unit.step().name().equals(name))
        .mapToInt(BatchStep::index)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> steps(Runs runs, Decisions decisions) {
    return IntStream.range(0, decisions.steps())
        .mapToObj(turn -> runs.work().steps().get(decisions.step(turn)).step().name())
        .toList();
  }
}
