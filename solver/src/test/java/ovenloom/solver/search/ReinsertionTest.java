package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

/** A warm stew and a hot soup want one burner for the last hour before supper; dressing the salad wants nothing of the kind. */
class ReinsertionTest {

  private static final int TRIES = 50;

  @TempDir
  private Path folder;

  private Runs runs;

  @BeforeEach
  void stew_soup_and_salad() throws IOException {
    runs = Runs.of(Suppers.withDishes(folder, """
          - dish: Stew
            arrives: warm
            thick: 80 mm
            tags: [not tcs]
            steps: [{do: stew, takes: 60 min, burner: large, in: mixing bowl, keeps: {counter: 4 h}}]
          - dish: Soup
            arrives: hot
            thick: 10 mm
            tags: [not tcs]
            steps:
              - {do: boil, takes: 60 min, burner: large, in: mixing bowl, keeps: {counter: 4 h}}
              - {do: ladle, takes: 5 min, hands: throughout, keeps: {counter: 4 h}}
          - dish: Salad
            arrives: cool
            tags: [not tcs]
            steps: [{do: dress, takes: 5 min, hands: throughout, keeps: {counter: 4 h}}]
        """));
  }

  private int step(String name) {
    return IntStream.range(0, runs.work().steps().size())
        .filter(step -> runs.work().steps().get(step).step().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Decisions queue(String... steps) {
    Decisions decisions = Decisions.open(runs.work().steps().size());
    for (int turn = 0; turn < steps.length; turn++) {
      decisions.setStep(turn, step(steps[turn]));
    }
    return decisions;
  }

  private static long lost(Trial trial, Decisions decisions) {
    return trial.of(decisions).score().atTheTableInAll();
  }

  @Test
  void a_dish_that_loses_is_put_ahead_of_one_that_loses_less_for_it() {
    Trial trial = new Trial(runs, Judge.audit(runs.minutes().cards()));
    Decisions stewFirst = queue("dress", "stew", "ladle", "boil");
    long before = lost(trial, stewFirst);

    Decisions after = reinsertion(trial).from(stewFirst, TRIES, () -> false);

    assertThat(before).isPositive();
    assertThat(lost(trial, after)).isLessThan(before);
    assertThat(after.turns()[step("boil")]).isLessThan(after.turns()[step("stew")]);
  }

  @Test
  void it_keeps_to_the_tries_it_is_given() {
    Trial trial = new Trial(runs, Judge.audit(runs.minutes().cards()));

    reinsertion(trial).from(queue("dress", "stew", "ladle", "boil"), 2, () -> false);

    assertThat(trial.decoded()).isEqualTo(2);
  }

  @Test
  void what_is_to_be_hot_chooses_first_and_what_soon_loses_before_what_does_not() {
    Decoder decoder = new Decoder(runs);
    Decisions first = new HotFirst(runs, new FromTheHeat(runs.work()), decoder)
        .of(queue("dress", "stew", "ladle", "boil"), new Random(1));

    assertThat(IntStream.range(0, first.steps()).map(first::step).boxed())
        .containsExactly(step("boil"), step("ladle"), step("stew"), step("dress"));
    assertThat(first.stay(step("boil"))).isEqualTo(decoder.takenAtOnce(step("boil")));
  }

  private Reinsertion reinsertion(Trial trial) {
    return new Reinsertion(trial, runs.event(), new FromTheHeat(runs.work()), new Decoder(runs),
        new Random(1));
  }
}
