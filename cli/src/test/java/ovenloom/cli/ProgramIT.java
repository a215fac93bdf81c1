package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramIT {
  @TempDir
  private Path folder;

  @Test
  void the_packed_program_runs_from_any_folder_and_java_adds_no_words_of_its_own() throws Exception {
    var out = folder.resolve("out.txt");
    var err = folder.resolve("err.txt");
    var program = Path.of("target/ovenloom/bin/ovenloom").toAbsolutePath().toString();
    var process = new ProcessBuilder(program, "--version").directory(folder.toFile())
        .redirectOutput(out.toFile())
        .redirectError(err.toFile());
    process.environment().put("OVENLOOM_JAVA", System.getProperty("java.home"));

    var code = process.start().waitFor();

    assertThat(Files.readString(err)).isEmpty();
    assertThat(Files.readString(out)).startsWith("ovenloom ");
    assertThat(code).isZero();
  }
}
