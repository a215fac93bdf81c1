package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {

  @Test
  void lines_are_as_wide_as_columns_says_or_eighty() {
    assertThat(Terminal.width("140")).isEqualTo(140);
    assertThat(Terminal.width(null)).isEqualTo(80);
    assertThat(Terminal.width("wide")).isEqualTo(80);
    assertThat(Terminal.width("0")).isEqualTo(80);
    assertThat(Terminal.width("9999")).isEqualTo(1000);
  }

  @Test
  void any_word_in_no_color_means_none() {
    assertThat(Terminal.isColourWanted(Map.of())).isTrue();
    assertThat(Terminal.isColourWanted(Map.of("NO_COLOR", ""))).isTrue();
    assertThat(Terminal.isColourWanted(Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(Terminal.isColourWanted(Map.of("TERM", "dumb"))).isFalse();
  }
}
