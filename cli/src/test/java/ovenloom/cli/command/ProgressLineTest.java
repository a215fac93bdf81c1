package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Kitchens.SOUP;
import static ovenloom.cli.command.Typed.ovenloom;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Score;

class ProgressLineTest {

  @Test
  void it_tells_what_is_left_what_is_found_and_how_fast() {
    var none = Score.of(169, Map.of(), Map.of(), Wishes.EVEN, 0);
    var some = Score.of(0, Map.of("Lamb", 1776L), Map.of(Wish.CALM, 275L), Wishes.EVEN, 0);

    assertThat(ProgressLine.words(none, 900, 450, Duration.ofMillis(17_300)))
        .isEqualTo("18 s left, no plan yet (900 schedules, 450 a second)");
    assertThat(ProgressLine.words(some, 12_345, 1_000, null))
        .isEqualTo("a plan: table 1,776, wishes 275 (12,345 schedules, 1,000 a second)");
  }

  @Test
  void it_is_written_over_in_a_terminal_and_gone_at_the_end() {
    var watched = new Terminal(60, false, true, false);

    var typed = ovenloom(watched, new Stop(), "solve", SOUP, "--for", "1s");

    assertThat(typed.err()).startsWith("\r").endsWith("\r").doesNotContain("\n").contains("a plan: table 0");
    assertThat(typed.err().split("\r", -1)).allMatch(line -> line.length() < 60);
  }

  @Test
  void nobody_watches_a_pipe() {
    assertThat(ovenloom("solve", SOUP, "--for", "1s").err()).isEmpty();
  }
}
