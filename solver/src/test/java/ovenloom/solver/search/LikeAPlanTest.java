package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

class LikeAPlanTest {

  private static final Path PROBLEMS = Path.of("../problems");

  @ParameterizedTest
  @ValueSource(strings = {"friday-dinner.yaml", "easter-lamb.yaml"})
  void the_first_try_like_a_plan_is_better_than_any_first_try(String problem) {
    Event event = event(problem);
    Plan plan = found(event, 2_000, null).plan();

    Found cold = found(event, 1, null);
    Found warm = found(event, 1, plan);

    assertThat(warm.plan().score()).isLessThan(cold.plan().score());
  }

  private static Found found(Event event, long tries, @Nullable Plan from) {
    return Search.find(event, List.of(), new Budget(null, tries, 1, 1), from, (best, schedules, left) -> {},
        () -> false);
  }

  private static Event event(String problem) {
    return switch (ProblemFile.read(PROBLEMS.resolve(problem), PROBLEMS, null)) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(mistakes.toString());
    };
  }
}
