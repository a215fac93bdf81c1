package ovenloom.solver.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

/** A result is found again where it lies. */
class ResultsByRunTest {

  @TempDir
  private Path folder;

  @Test
  void a_result_is_found_by_its_run_in_a_new_file_and_in_one_opened_again() throws IOException {
    try (Results results = open()) {
      results.add(result("one", "Gougères"));
      results.add(result("two", "Soup"));

      assertThat(results.of("two")).isEqualTo(result("two", "Soup"));
      results.add(result("three", "Roast"));
      assertThat(results.of("one")).isEqualTo(result("one", "Gougères"));
    }
    try (Results again = open()) {
      assertThat(again.of("two")).isEqualTo(result("two", "Soup"));
      assertThat(again.of("three")).isEqualTo(result("three", "Roast"));
      assertThat(again.of("four")).isNull();
    }
  }

  @Test
  void a_file_that_somebody_changes_meanwhile_is_not_believed() throws IOException {
    try (Results results = open()) {
      results.add(result("one", "Soup"));
      Files.writeString(file(), "\n".repeat(500));

      assertThatThrownBy(() -> results.of("one")).isInstanceOf(IOException.class)
          .hasMessageContaining("was changed by somebody else");
    }
  }

  private Path file() {
    return folder.resolve("results.jsonl");
  }

  private Results open() throws IOException {
    return Results.in(file());
  }

  private static Result result(String run, String decides) {
    return new Result(run, "event", Map.of("guests", "80"), List.of("{\"guests\":80}"), 100L, null, 1, false,
        "1", Answer.NO_PLAN, "Too much.", decides, null, null, null);
  }
}
