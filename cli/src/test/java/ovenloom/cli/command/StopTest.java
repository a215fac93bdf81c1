package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class StopTest {

  /** A program that begins to search while it is going down already. */
  static final class TooLate {

    private TooLate() {}

    public static void main(String[] args) {
      Runtime.getRuntime().addShutdownHook(new Thread(() -> {
        var stop = new Stop();
        stop.listen();
        System.out.print("stopped: " + stop.getAsBoolean());
        stop.stopListening();
      }));
    }
  }

  @Test
  void ctrl_c_just_before_a_search_stops_it_and_is_nobodys_fault() throws Exception {
    var program = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-cp",
        System.getProperty("java.class.path"), TooLate.class.getName()).redirectErrorStream(true).start();

    var printed = new String(program.getInputStream().readAllBytes(),
        java.nio.charset.StandardCharsets.UTF_8);

    assertThat(printed).isEqualTo("stopped: true");
    assertThat(program.waitFor()).isZero();
  }
}
