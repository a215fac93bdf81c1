package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class FullOfMistakesTest {

  private static final Path PROBLEMS = Path.of("../problems");

  @Test
  void all_mistakes_of_a_file_are_said_at_once() throws IOException {
    String expected = Files.readString(PROBLEMS.resolve("full-of-mistakes.txt"));

    String said = new Desktop(PROBLEMS).mistakes("full-of-mistakes.yaml");

    assertThat(said).isEqualTo(expected);
  }
}
