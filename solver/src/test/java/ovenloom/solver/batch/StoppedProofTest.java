package ovenloom.solver.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.variation.Variation;
import ovenloom.solver.proof.NativeLibrary;
import ovenloom.solver.search.Budget;

class StoppedProofTest {

  private static final Path PROBLEMS = Path.of("../problems");

  /** Of a feast, a proof takes seconds. While it runs another thread asks whether to stop, and is told so; nobody else ever is first. */
  @Test
  void a_run_that_is_stopped_while_it_is_proven_has_no_result() throws IOException {
    assumeTrue(NativeLibrary.isLoaded());
    Thread searching = Thread.currentThread();
    AtomicBoolean said = new AtomicBoolean();
    Attempt attempt = new Attempt((event, outcome) -> "because", (run, plan) -> {}, () -> {
      if (Thread.currentThread() != searching) {
        said.set(true);
      }
      return said.get();
    });

    assertThat(attempt.of(feast())).isNull();
    assertThat(said).isTrue();
  }

  private static Run feast() {
    return Run.of("feast", new Variation(Map.of(), List.of()),
        () -> ProblemFile.read(PROBLEMS.resolve("village-feast.yaml"), PROBLEMS, null),
        new Budget(null, 1L, 1, 1), null, "test");
  }
}
