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

  /** The names are POSIX's, in its order: IEEE Std 1003.1-2017, Base Definitions, 8.2. */
  @Test
  void the_first_word_on_the_locale_that_is_set_says_whether_blocks_can_be_read() {
    assertThat(Terminal.isUtf8(Map.of("LANG", "fr_FR.UTF-8"), "ISO-8859-1")).isTrue();
    assertThat(Terminal.isUtf8(Map.of("LANG", "de_DE.utf8"), null)).isTrue();
    assertThat(Terminal.isUtf8(Map.of("LANG", "fr_FR.UTF-8", "LC_ALL", "C"), "UTF-8")).isFalse();
    assertThat(Terminal.isUtf8(Map.of("LANG", "C.UTF-8", "LC_CTYPE", "fr_FR"), "UTF-8")).isFalse();
    assertThat(Terminal.isUtf8(Map.of("LC_ALL", ""), "UTF-8")).isTrue();
    assertThat(Terminal.isUtf8(Map.of(), "ISO-8859-1")).isFalse();
    assertThat(Terminal.isUtf8(Map.of(), null)).isFalse();
  }

  @Test
  void a_bare_locale_that_the_launcher_has_put_right_is_read_in_ascii() {
    assertThat(Terminal.isUtf8(Map.of("LC_ALL", "C.UTF-8"), "UTF-8")).isTrue();
    assertThat(Terminal.isUtf8(Map.of("LC_ALL", "C.UTF-8", "OVENLOOM_ASCII", "1"), "UTF-8")).isFalse();
  }

  @Test
  void any_word_in_no_color_means_none() {
    assertThat(Terminal.isColourWanted(Map.of())).isTrue();
    assertThat(Terminal.isColourWanted(Map.of("NO_COLOR", ""))).isTrue();
    assertThat(Terminal.isColourWanted(Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(Terminal.isColourWanted(Map.of("TERM", "dumb"))).isFalse();
  }
}
