package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramIT {
  @TempDir
  private Path folder;

  @Test
  void the_packed_program_runs_from_any_folder_and_java_adds_no_words_of_its_own() throws Exception {
    assertThat(versionAsked(Map.of())).isEmpty();
  }

  @Test
  void the_packed_program_starts_warm() throws Exception {
    assumeTrue(Runtime.version().feature() >= 25, "Java keeps what it learned from 25 on");

    assertThat(versionAsked(Map.of("JDK_JAVA_OPTIONS", "-XX:AOTMode=on"))).hasSize(1)
        .first()
        .asString()
        .startsWith("NOTE");
  }

  /** What it says beside its version. */
  private List<String> versionAsked(Map<String, String> surroundings) throws Exception {
    var out = folder.resolve("out.txt");
    var err = folder.resolve("err.txt");
    var program = Path.of("target/ovenloom/bin/ovenloom").toAbsolutePath().toString();
    var process = new ProcessBuilder(program, "--version").directory(folder.toFile())
        .redirectOutput(out.toFile())
        .redirectError(err.toFile());
    process.environment().put("OVENLOOM_JAVA", System.getProperty("java.home"));
    process.environment().putAll(surroundings);

    var code = process.start().waitFor();

    assertThat(Files.readString(out)).startsWith("ovenloom ");
    assertThat(code).isZero();
    return Files.readAllLines(err);
  }
}
