package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;
import ovenloom.solver.wish.Scorer;

/** There is one burner, and all wait for it: whoever chooses first has it nearest to supper at 19:00. */
class LosersFirstTest {

  private static final int SOUP = 0;
  private static final int RICE = 1;

  @TempDir
  private Path folder;

  private Runs soupAndRice(String arrives) throws IOException {
    return Runs.of(Suppers.withDishes(folder,
        """
              - dish: Soup
                arrives: hot
                tags: [not tcs]
                steps: [{do: boil, takes: 60 min, burner: small, in: mixing bowl, hands: throughout, keeps: {counter: 4 h}}]
              - dish: Rice
                arrives: %s
                tags: [not tcs]
                steps: [{do: boil, takes: 60 min, burner: small, in: mixing bowl, hands: throughout, keeps: {fridge: 2 days}}]
            """
            .formatted(arrives)));
  }

  private static Score score(Runs runs, Decisions decisions) {
    return new Scorer(runs).of(new Decoder(runs).decode(decisions));
  }

  private static Decisions riceFirst(Runs runs, Decisions good) {
    Decisions ahead = FirstOrder.of(runs);
    new HeadStart(runs).tell(ahead);
    return new LosersFirst(runs.work(), ahead).of(good, runs.event().dish("Rice"));
  }

  private static List<Integer> queue(Decisions decisions) {
    return IntStream.range(0, decisions.steps()).map(decisions::step).boxed().toList();
  }

  @Test
  void what_comes_too_cold_chooses_first_and_waits_for_nothing() throws IOException {
    Runs runs = soupAndRice("hot");
    Decisions good = Decisions.open(2);
    good.setEarlier(RICE, 30);
    assertThat(score(runs, good).atTheTable()).containsOnlyKeys("Rice");

    Decisions next = riceFirst(runs, good);

    assertThat(queue(next)).containsExactly(RICE, SOUP);
    assertThat(next.earlier(RICE)).isZero();
    assertThat(score(runs, next).atTheTable()).doesNotContainKey("Rice");
  }

  @Test
  void what_comes_too_warm_chooses_first_with_the_time_it_takes_to_cool() throws IOException {
    Runs runs = soupAndRice("cool");
    Decisions good = FirstOrder.of(runs);
    good.setStep(0, SOUP);
    good.setStep(1, RICE);
    assertThat(score(runs, good).atTheTable()).containsKey("Rice");

    Decisions next = riceFirst(runs, good);

    assertThat(queue(next)).containsExactly(RICE, SOUP);
    assertThat(next.earlier(RICE)).isPositive();
    assertThat(score(runs, next).atTheTable()).doesNotContainKey("Rice");
  }
}
