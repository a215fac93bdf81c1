package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OvenloomTest {

  private static final int SCREEN = 24;

  @Test
  void the_version_is_a_number_on_standard_output() {
    var typed = ovenloom("--version");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).matches("ovenloom \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void saying_nothing_is_a_wrong_command_and_says_so_on_standard_error() {
    var typed = ovenloom();

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: say what to do").contains("Try: ovenloom --help");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "solve", "check", "show", "explain", "compare"})
  void the_short_help_fits_a_screen(String command) {
    var typed = command.isEmpty() ? ovenloom("-h") : ovenloom(command, "-h");

    assertThat(typed.code()).isZero();
    assertThat(typed.out().lines()).hasSizeLessThan(SCREEN).allMatch(line -> line.length() <= 80);
    assertThat(typed.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "solve", "check", "show", "explain", "compare"})
  void the_long_help_tells_what_the_exit_codes_say_and_what_a_plan_cannot_know(String command) {
    var typed = command.isEmpty() ? ovenloom("--help") : ovenloom(command, "--help");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("4   no plan found in the time given", "probe thermometer");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void the_long_help_says_more_of_each_option_than_the_short_one() {
    assertThat(ovenloom("solve", "-h").out()).contains("Try N schedules").doesNotContain("any machine");
    assertThat(ovenloom("solve", "--help").out()).contains("Try N schedules", "any machine");
  }

  @Test
  void a_command_that_is_nearly_one_is_guessed() {
    var typed = ovenloom("slove", "supper.yaml");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("ovenloom: ").containsPattern("Did you mean: .*solve");
  }
}
