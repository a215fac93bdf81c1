package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrappedTest {

  @Test
  void words_go_on_the_next_line_when_they_no_longer_fit() {
    assertThat(Wrapped.lines("out of the oven", 10)).containsExactly("out of the", "oven");
    assertThat(Wrapped.lines("out of the oven", 15)).containsExactly("out of the oven");
    assertThat(Wrapped.lines("out of the oven", 14)).containsExactly("out of the", "oven");
  }

  @Test
  void a_word_that_fits_no_line_is_cut() {
    assertThat(Wrapped.lines("a Schwarzwälderkirschtorte", 10)).containsExactly("a", "Schwarzwäl",
        "derkirscht", "orte");
  }

  @Test
  void an_accent_of_its_own_takes_no_column_and_a_wide_letter_two() {
    assertThat(Wrapped.length("cafe\u0301")).isEqualTo(4);
    assertThat(Wrapped.length("味噌")).isEqualTo(4);
    assertThat(Wrapped.lines("味噌汁", 4)).containsExactly("味噌", "汁");
  }

  @Test
  void what_a_terminal_would_obey_is_shown_as_a_question_mark() {
    assertThat(Wrapped.lines("Pie\u001b[2J\u202e", 80)).containsExactly("Pie?[2J?");
  }
}
