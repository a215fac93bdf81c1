package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;

class LikeAPlanTest {

  private static final Path PROBLEMS = Path.of("../problems");

  /** One first try may be luck; of nine, most are better. */
  @Test
  void the_first_try_like_a_plan_is_better_than_any_first_try() {
    long better = Stream.of("friday-dinner.yaml", "easter-lamb.yaml", "harvest-supper.yaml")
        .map(LikeAPlanTest::event)
        .flatMapToInt(event -> IntStream.rangeClosed(1, 3)
            .map(seed -> score(event, 1, 1, found(event, 400, seed, null).plan())
                .compareTo(score(event, 1, 1, null))))
        .filter(difference -> difference < 0)
        .count();

    assertThat(better).isGreaterThanOrEqualTo(7);
  }

  private static Score score(Event event, long tries, long seed, @Nullable Plan from) {
    return found(event, tries, seed, from).plan().score();
  }

  private static Found found(Event event, long tries, long seed, @Nullable Plan from) {
    return Search.find(event, List.of(), new Budget(null, tries, seed, 1), from,
        (best, schedules, left) -> {},
        () -> false);
  }

  private static Event event(String problem) {
    return switch (ProblemFile.read(PROBLEMS.resolve(problem), PROBLEMS, null)) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(mistakes.toString());
    };
  }
}
