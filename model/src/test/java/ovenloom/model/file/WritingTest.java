package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.RandomEvents;

class WritingTest {

  /** Everything YAML 1.1 would take for something else than text: its types at yaml.org/type. */
  private static final List<Pattern> OTHERS_IN_OLD_YAML = List.of(
      Pattern.compile("y|Y|yes|Yes|YES|n|N|no|No|NO|true|True|TRUE|false|False|FALSE|on|On|ON|off|Off|OFF"),
      Pattern.compile("~|null|Null|NULL|"),
      Pattern.compile("[-+]?0b[0-1_]+|[-+]?0[0-7_]+|[-+]?(0|[1-9][0-9_]*)|[-+]?0x[0-9a-fA-F_]+"),
      Pattern.compile("[-+]?[1-9][0-9_]*(:[0-5]?[0-9])+"),
      Pattern.compile(
          "[-+]?([0-9][0-9_]*)?\\.[0-9.]*([eE][-+][0-9]+)?|[-+]?[0-9][0-9_]*(:[0-5]?[0-9])+\\.[0-9_]*"),
      Pattern.compile("[-+]?\\.(inf|Inf|INF)|\\.(nan|NaN|NAN)"),
      Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}"),
      Pattern.compile("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}([Tt]|[ \\t]+)[0-9]{1,2}:[0-9]{2}:[0-9]{2}.*"),
      Pattern.compile("=|<<"));

  @TempDir
  Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_is_written_as_yaml_reads_as_the_same_event(long seed) {
    Event event = RandomEvents.event(seed);

    Event read = read("it.yaml", ProblemFile.yaml(event));

    assertThat(read).isEqualTo(event);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_is_written_as_json_reads_as_the_same_event(long seed) {
    Event event = RandomEvents.event(seed);

    Event read = read("it.json", ProblemFile.json(event));

    assertThat(read).isEqualTo(event);
  }

  @ParameterizedTest
  @MethodSource("ovenloom.model.file.ProblemFileTest#problems")
  void every_problem_in_the_house_reads_again_as_it_was_written(Path file) {
    Path parent = Objects.requireNonNull(file.getParent());
    Event event = new Desktop(parent).event(String.valueOf(file.getFileName()));
    Desktop desk = new Desktop(folder).put("it.yaml", ProblemFile.yaml(event))
        .put("it.json", ProblemFile.json(event));

    assertThat(desk.event("it.yaml")).isEqualTo(event);
    assertThat(desk.event("it.json")).isEqualTo(event);
  }

  @ParameterizedTest
  @ValueSource(strings = {"no", "On", "12:30", "012", "0x1F", "1_000", "1e3", ".5", "~", "null", "2026-10-10",
      "=", "<<", "y",
      "2001-12-14t21:59:43.10-05:00", "190:20:30", "0b1", "+12", "1.", "- x", "a: b", "a #b", "", "a:", "{a",
      "a, b"})
  void a_text_that_old_yaml_would_change_stands_in_quotes(String text) {
    String written = YamlText.of(new Draft.Card().say("key", text));

    assertThat(written).isEqualTo("key: \"" + text + "\"\n");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nothing_but_counts_is_left_plain_that_old_yaml_would_change(long seed) {
    String written = ProblemFile.yaml(RandomEvents.event(seed));

    String plain = written.replaceAll("\"(?:[^\"\\\\]|\\\\.)*\"", "quoted text");
    for (String value : Pattern.compile("(?m): |:$|^ *- |[\\[\\]{},\n]").splitAsStream(plain).toList()) {
      String text = value.strip();
      assertThat(text.isEmpty() || text.matches("0|[1-9][0-9]*")
          || OTHERS_IN_OLD_YAML.stream().noneMatch(pattern -> pattern.matcher(text).matches())).as(text)
          .isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"half sheet", "350 F", "2 days before", "18:00-21:00", "9x13 in dish", "GN 1/1-65", "Sauté"})
  void what_people_write_stays_as_they_write_it(String text) {
    assertThat(YamlText.of(new Draft.Card().say("key", text))).isEqualTo("key: " + text + "\n");
  }

  @Test
  void a_step_that_waits_twice_for_another_still_does_when_it_is_read_again() {
    Desktop desk = new Desktop(folder).put("it.yaml", Desktop.SUPPER + """
        dishes:
          - dish: Salad
            steps:
              - {do: chop, takes: 5 min, keeps: {counter: 1 h}}
              - {do: dress, takes: 5 min, after: [{chop: {least: 5 min}}, {chop: {most: 9 min}}]}
        """);
    Event event = desk.event("it.yaml");

    assertThat(event.dish("Salad").step("dress").after()).hasSize(2);
    assertThat(desk.put("again.yaml", ProblemFile.yaml(event)).event("again.yaml")).isEqualTo(event);
  }

  @Test
  void what_simmers_until_it_is_hot_inside_keeps_its_figure() {
    Desktop desk = new Desktop(folder).put("it.yaml", Desktop.SUPPER + """
        kitchen: {burners: [large]}
        dishes: [{dish: Stew, steps: [{do: simmer, takes: 5 min, burner: large, core: 74 C}]}]
        """);
    Event event = desk.event("it.yaml");

    assertThat(event.dish("Stew").step("simmer").burner())
        .isEqualTo(new Need.OnBurner(BurnerSize.LARGE, Temperature.celsius(74)));
    assertThat(desk.put("again.yaml", ProblemFile.yaml(event)).event("again.yaml")).isEqualTo(event);
  }

  @Test
  void short_things_stand_on_one_line_and_long_ones_below() {
    Draft.Card rack = new Draft.Card().say("size", "46 x 37 cm").say("clear", "15 cm");

    String written = YamlText.of(new Draft.Card().each("racks", List.of(rack, rack), card -> card)
        .each("long", List.of("a".repeat(60), "b".repeat(60)), Draft.Text::new));

    assertThat(written)
        .isEqualTo("racks: [{size: 46 x 37 cm, clear: 15 cm}, {size: 46 x 37 cm, clear: 15 cm}]\nlong:\n  - "
            + "a".repeat(60) + "\n  - " + "b".repeat(60) + "\n");
  }

  /** Without the second look: not every event here is possible. */
  private Event read(String name, String text) {
    Desk desk = new Desk();
    Written written = new WrittenReader(new Sheet(name, folder.resolve(name), text), Limits.PROBLEM,
        desk.mistakes()).read();
    Event event = written == null ? null : new EventReader(desk, Includes.none(desk)).event(written, null);
    if (event == null || !desk.mistakes().none()) {
      throw new AssertionError(MistakeText.of(desk.mistakes().all()) + "\n" + text);
    }
    return event;
  }
}
