package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int ovenloom(String... args) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  @Test
  void the_version_is_a_number_on_standard_output() {
    var code = ovenloom("--version");

    assertThat(code).isZero();
    assertThat(out.toString()).matches("ovenloom \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void saying_nothing_is_a_wrong_command_and_says_so_on_standard_error() {
    var code = ovenloom();

    assertThat(code).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).startsWith("ovenloom: say what to do").contains("Try: ovenloom --help");
  }
}
