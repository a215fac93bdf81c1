package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.cli.command.Kitchens;

/** Somebody loses patience with the packed program. */
class CtrlCIT {

  private static final int SECONDS = 30;

  @TempDir
  private Path folder;

  private Process program(String... words) throws Exception {
    var command = new ArrayList<>(
        List.of(Path.of("target/ovenloom/bin/ovenloom").toAbsolutePath().toString()));
    command.addAll(List.of(words));
    var builder = new ProcessBuilder(command).redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile());
    builder.environment().put("OVENLOOM_JAVA", System.getProperty("java.home"));
    return builder.start();
  }

  /** As the terminal does it; once the search surely runs. */
  private static int stopped(Process program, Process press) throws Exception {
    assertThat(press.waitFor()).isZero();
    assertThat(program.waitFor(SECONDS, TimeUnit.SECONDS)).as("ends soon").isTrue();
    return program.exitValue();
  }

  private static Process press(Process program) throws Exception {
    return press(program, 3_000);
  }

  private static Process press(Process program, int millis) throws Exception {
    Thread.sleep(millis);
    return new ProcessBuilder("kill", "-INT", Long.toString(program.pid())).start();
  }

  @Test
  void ctrl_c_prints_and_keeps_the_best_plan_so_far() throws Exception {
    var plan = folder.resolve("plan.json");
    var program = program("solve", "../problems/friday-dinner.yaml", "--for", "10min", "-o", plan.toString());

    var code = stopped(program, press(program));

    assertThat(code).isZero();
    assertThat(folder.resolve("out")).content().startsWith("Friday dinner\n").contains("allergens.\n");
    assertThat(folder.resolve("err")).isEmptyFile();
    assertThat(Files.readString(plan)).startsWith("{").endsWith("}\n");
  }

  @Test
  void ctrl_c_without_a_plan_tells_the_best_try() throws Exception {
    var problem = Kitchens.rawBesideReady(folder);
    var program = program("solve", problem.toString(), "--for", "10min");

    var code = stopped(program, press(program));

    assertThat(code).isEqualTo(4);
    assertThat(folder.resolve("out")).isEmptyFile();
    assertThat(folder.resolve("err")).content().startsWith("ovenloom: no plan found in ");
  }

  @Test
  void ctrl_c_compares_what_was_found_until_then() throws Exception {
    var program = program("compare", "../problems/friday-dinner.yaml", "../problems/first-soup.yaml", "--for",
        "10min");

    var code = stopped(program, press(program, 5_000));

    assertThat(code).isZero();
    assertThat(folder.resolve("out")).content()
        .startsWith("friday-dinner and first-soup\n")
        .contains("Fits  ");
    assertThat(folder.resolve("err")).hasContent("ovenloom: stopped; what was found until then is compared");
  }

  @Test
  void a_reader_who_walks_away_is_no_fault() throws Exception {
    var pipe = new ProcessBuilder("sh", "-c",
        Path.of("target/ovenloom/bin/ovenloom").toAbsolutePath()
            + " solve ../problems/first-soup.yaml --tries 20 | true");
    pipe.environment().put("OVENLOOM_JAVA", System.getProperty("java.home"));

    var process = pipe.redirectError(folder.resolve("err").toFile()).start();

    assertThat(process.waitFor()).isZero();
    assertThat(folder.resolve("err")).isEmptyFile();
  }
}
