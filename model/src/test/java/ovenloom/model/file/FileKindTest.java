package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileKindTest {

  @TempDir
  private Path folder;

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "'ovenloom: 1\nevent: Supper'                 | PROBLEM",
      "'ovenloom: 1\nwhat if: More guests?'         | WHAT_IF",
      "'{\"ovenloom plan\": \"1\", \"event\": {}}'  | PLAN",
      "'{\"ovenloom plan\": \"99\"}'                | PLAN",
      "'{\"ovenloom\": 1, \"what if\": \"Why?\"}'   | WHAT_IF",
      "'{\"ovenloom plan\": \"1\", '                | PROBLEM",
      "'- ovenloom plan'                            | PROBLEM",
      "''                                           | PROBLEM"})
  void a_file_is_what_its_keys_say(String text, FileKind kind) throws IOException {
    Path file = Files.writeString(folder.resolve("file"), text);

    assertThat(FileKind.of(file)).isEqualTo(kind);
  }

  @Test
  void one_that_is_not_there_is_for_the_reader_of_problems_to_complain_of() {
    assertThat(FileKind.of(folder.resolve("nothing.yaml"))).isEqualTo(FileKind.PROBLEM);
    assertThat(FileKind.of(folder)).isEqualTo(FileKind.PROBLEM);
  }

  @Test
  void a_link_is_what_it_leads_to() throws IOException {
    Path away = Files.createDirectory(folder.resolve("away"));
    Path plan = Files.writeString(away.resolve("plan.json"), "{\"ovenloom plan\": \"1\"}");

    assertThat(FileKind.of(Files.createSymbolicLink(folder.resolve("link"), plan))).isEqualTo(FileKind.PLAN);
  }
}
