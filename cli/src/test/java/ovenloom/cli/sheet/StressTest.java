package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands out in colour. */
class StressTest {

  private static final String RED = "\u001b[31m";
  private static final String GREEN = "\u001b[32m";
  private static final String PLAIN = "\u001b[0m";

  @Test
  void a_caution_is_red_and_what_goes_to_the_table_green() {
    assertThat(Stress.inked(List.of("Out of the oven. To the table (dish).")))
        .containsExactly("Out of the oven. " + GREEN + "To the table (dish)." + PLAIN);
    assertThat(Stress.inked(List.of("Preheat: 180 C, ready at 18:00. Leave your work for it.")))
        .containsExactly("Preheat: 180 C, ready at 18:00. " + RED + "Leave your work for it." + PLAIN);
  }

  @Test
  void a_sentence_that_runs_on_is_in_its_colour_on_each_line() {
    assertThat(Stress.inked(List.of("Switch off. Leave your", "break for it. To the", "table (pot).", "So.")))
        .containsExactly("Switch off. " + RED + "Leave your" + PLAIN,
            RED + "break for it." + PLAIN + " " + GREEN + "To the" + PLAIN, GREEN + "table (pot)." + PLAIN,
            "So.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Leave your break for it.", "If it is less, leave it in and probe again every 5 min.",
          "If it is warmer, throw it away.", "Must be 21 C or less by 23:32, when nobody is here."})
  void what_to_take_care_of_is_a_caution(String sentence) {
    assertThat(Stress.inked(List.of(sentence))).containsExactly(RED + sentence + PLAIN);
  }

  @Test
  void other_sentences_are_as_they_are() {
    assertThat(Stress.inked(List.of("Fill (dish): 20 min, until 17:20."))).containsExactly(
        "Fill (dish): 20 min, until 17:20.");
  }
}
