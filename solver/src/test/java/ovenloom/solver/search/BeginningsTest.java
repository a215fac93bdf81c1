package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

/** One burner, one cook, a soup that is to be hot and rice that is to be cool. */
class BeginningsTest {

  @TempDir
  private Path folder;

  private Runs runs;

  @BeforeEach
  void a_supper() throws IOException {
    runs = Runs.of(Suppers.withDishes(folder,
        """
              - dish: Rice
                arrives: cool
                tags: [not tcs]
                steps: [{do: boil, takes: 60 min, burner: small, in: mixing bowl, hands: throughout, keeps: {fridge: 2 days}}]
              - dish: Soup
                arrives: hot
                tags: [not tcs]
                steps: [{do: boil, takes: 60 min, burner: small, in: mixing bowl, hands: throughout, keeps: {counter: 4 h}}]
            """));
  }

  private Beginnings beginnings(Trial trial, boolean isHasty) {
    return new Beginnings(runs, new Decoder(runs), trial, new Elite(), new Deadline(null), false, isHasty);
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void no_beginning_takes_more_tries_than_it_may(boolean isHasty) {
    for (int most = 1; most <= 60; most++) {
      Trial trial = new Trial(runs, plan -> List.of());

      beginnings(trial, isHasty).next(new Random(most), most);

      assertThat(trial.decoded()).isBetween(1L, (long) most);
    }
  }

  @Test
  void what_is_to_be_cool_begins_with_the_time_it_takes_to_cool() {
    Trial trial = new Trial(runs, plan -> List.of());
    assertThat(trial.of(FirstOrder.of(runs)).score().atTheTable()).containsKey("Rice");

    Decisions begun = beginnings(new Trial(runs, plan -> List.of()), false).next(new Random(1), 1_000);

    assertThat(trial.of(begun).score().breaks()).isZero();
    assertThat(trial.of(begun).score().atTheTable()).isEmpty();
  }
}
