package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MistakeTextTest {

  @Test
  void a_message_shows_the_line_with_a_mark_and_says_what_would_do() {
    Place place = new Place("supper.yaml", 41, 13, "      oven: 350 K", 5);
    Fault fault = new Fault.NotUnderstood(
        "350 K", "an oven setting like \"350 F\", \"180 C\" or \"gas 4\"", List.of("350 F"));

    String text = MistakeText.of(new Mistake(place, fault));

    assertThat(text).isEqualTo("""
        supper.yaml:41:13: "350 K" is not an oven setting
            oven: 350 K
                  ^^^^^
          Expected something like "350 F", "180 C" or "gas 4". Did you mean "350 F"?""");
  }

  @Test
  void of_a_very_long_line_only_what_is_around_the_place_is_shown() {
    Place place = new Place("supper.json", 1, 5_001, "x".repeat(10_000), 3);

    String text = MistakeText.of(new Mistake(place, new Fault.MissingKey("do", "a step")));

    assertThat(text.lines()).allMatch(line -> line.length() < 200);
    assertThat(text.lines().toList().get(2).strip()).isEqualTo("^^^");
  }

  @Test
  void nothing_a_file_holds_can_play_tricks_on_a_terminal() {
    Place place = new Place("supper.yaml", 1, 1, "dish: \u001b[31mred", 4);

    String text = MistakeText.of(new Mistake(place, new Fault.RepeatedName("\u001b[31mred", "dish")));

    assertThat(text).doesNotContain("\u001b");
  }

  @Test
  void a_mark_stands_under_its_word_though_letters_before_it_need_two_chars() {
    Place place = new Place("supper.yaml", 1, 9, "{do: 🍞🍞, takes: 5}", 5);

    String text = MistakeText.of(new Mistake(place, new Fault.MissingKey("do", "a step")));

    assertThat(text.lines().toList().get(2)).isEqualTo("    " + " ".repeat(8) + "^^^^^");
  }
}
