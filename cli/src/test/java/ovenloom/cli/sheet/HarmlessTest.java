package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Names of strangers. */
class HarmlessTest {

  @Test
  void what_steers_is_shown_as_a_question_mark_and_letters_of_all_kinds_stay() {
    assertThat(Harmless.words("Pie\u001b[2J\u202e\u2028\u2029\n", "")).isEqualTo("Pie?[2J????");
    assertThat(Harmless.words("Kn\u00f6del \u5473\u564c cafe\u0301 \uD83C\uDF4F", ""))
        .isEqualTo("Kn\u00f6del \u5473\u564c cafe\u0301 \uD83C\uDF4F");
  }

  @Test
  void a_text_keeps_its_lines() {
    assertThat(Harmless.text("It is hot:\n\tPie\u001b[2J\u2028")).isEqualTo("It is hot:\n\tPie?[2J?");
  }

  @Test
  void what_is_allowed_stays() {
    assertThat(Harmless.words("a\n\u200D\u202e", "\n\u200D")).isEqualTo("a\n\u200D?");
  }
}
