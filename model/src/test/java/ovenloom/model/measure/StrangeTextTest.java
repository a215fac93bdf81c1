package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a stranger's file holds, reading it ends soon, throws nothing, and marks a place. */
class StrangeTextTest {

  private static final List<String> SCRAPS = List.of("1", "2", "45", "350", "1/2", "½", "1,5", "0", ".", ",",
      " ", " ", " ",
      "-", "–", "+", "x", "×", "/", ":", "°", "%", "\"", "min", "h", "m", "s", "days", "C", "F", "K", "gas",
      "mark", "cm",
      "in", "kg", "cups", "cpus", "fl", "oz", "W", "kW", "a", "portion", "to", "P", "T", "PT15M", "P1M",
      "eggs", "é",
      "\u0000", "\ud83c\udf73", "\u00a0", "\u202f", "\n", "\u212a", "İ", "١");

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  static Stream<Readings.Kind> kinds() {
    return Readings.KINDS.stream();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_megabyte_of_anything_is_refused_at_once(Readings.Kind kind) {
    for (String scrap : List.of("9", " ", "1/", "1 h ", "a", "½", "-", "1,", "(", "PT1H", "\u0000")) {
      String megabyte = scrap.repeat(1_000_000 / scrap.length());

      Parsed<?> answer = inTime(() -> kind.read().apply(megabyte));

      assertThat(answer).isInstanceOfSatisfying(Parsed.Bad.class, bad -> {
        assertThat(bad.expected()).endsWith(", in at most 200 characters");
        assertThat(bad.to()).isEqualTo(megabyte.length());
      });
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void the_longest_text_that_is_looked_at_is_answered_in_no_time(Readings.Kind kind) {
    for (String scrap : SCRAPS) {
      String text = (scrap + " ").repeat(200).substring(0, 200);
      assertSound(kind, text, inTime(() -> kind.read().apply(text)));
      String dense = scrap.repeat(200).substring(0, 200);
      assertSound(kind, dense, inTime(() -> kind.read().apply(dense)));
    }
  }

  @Test
  void two_hundred_characters_are_read_and_one_more_is_not() {
    String spaces = " ".repeat(195);

    assertThat(Setting.read(spaces + "350 F")).isEqualTo(new Parsed.Good<>(Setting.fahrenheit(350)));
    assertThat(Setting.read(spaces + " 350 F")).isInstanceOf(Parsed.Bad.class);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void scraps_thrown_together_are_read_or_refused_with_a_place_and_guesses_that_read_well(long seed) {
    var random = new Random(seed);

    for (int i = 0; i < 20; i++) {
      String text = scraps(random);
      Readings.KINDS.forEach(kind -> assertSound(kind, text, kind.read().apply(text)));
    }
  }

  private static String scraps(Random random) {
    var text = new StringBuilder();
    int count = random.nextInt(1, 8);
    for (int i = 0; i < count; i++) {
      text.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
    }
    return text.toString();
  }

  private static void assertSound(Readings.Kind kind, String text, Parsed<?> answer) {
    switch (answer) {
      case Parsed.Good<?>(var value) -> {
        assertThat(text).doesNotContain(",");
        assertThat(kind.read().apply(value.toString())).as("%s as written from %s", kind, text)
            .isEqualTo(new Parsed.Good<>(value));
      }
      case Parsed.Bad<?>(var expected, var suggestions, var from, var to) -> {
        assertThat(expected).isNotBlank();
        assertThat(from).as("%s in '%s'", kind, text).isBetween(0, to - 1);
        assertThat(to).isLessThanOrEqualTo(text.length());
        assertThat(suggestions).hasSizeLessThanOrEqualTo(3)
            .doesNotHaveDuplicates()
            .allSatisfy(guess -> assertThat(kind.read().apply(guess)).isInstanceOf(Parsed.Good.class));
      }
    }
  }

  private static Parsed<?> inTime(Supplier<Parsed<?>> reading) {
    return assertTimeoutPreemptively(Duration.ofSeconds(5), reading::get);
  }
}
