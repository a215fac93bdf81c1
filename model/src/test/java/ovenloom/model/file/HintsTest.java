package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HintsTest {

  @TempDir
  Path folder;

  @ParameterizedTest(name = "at {1}: {2}")
  @MethodSource("slips")
  void a_common_slip_is_told_from_others(String yaml, String place, String hint) {
    String said = new Desktop(folder).mistakesIn(yaml);

    assertThat(said).contains("it.yaml:" + place + ":").contains(hint);
  }

  static Stream<Arguments> slips() {
    return Stream.of(
        Arguments.of("kitchen:\n\troom: 20 C\n", "2:1", "Use spaces"),
        Arguments.of("event: Supper: late\n", "1:14", "put the text in quotes"),
        Arguments.of("event: {a: b: c}\n", "1:13", "put the text in quotes"),
        Arguments.of("event: 'Ann's supper'\n", "1:13", "a text in quotes ends before this"),
        Arguments.of("event: @home\n", "1:8", "Put the text in quotes"),
        Arguments.of("dishes: [{do: x}\ncooks: y\n", "2:1", "not closed"),
        Arguments.of("event: a\n guests: 4\n", "2:8", "Check how far it is moved in"),
        Arguments.of("cooks:\n  - name: A\n     hours: {on the day: 9:00-10:00}\n", "3:11",
            "Check how far it is moved in"),
        Arguments.of("event: a\n---\nevent: b\n", "2:1", "Remove the line"),
        Arguments.of("<<: {event: a}\n", "1:1", "Write the keys out"),
        Arguments.of("event: a\nevent: b\n", "2:1", "The first is in line 1"),
        Arguments.of("event: Soup, bread\n", "1:8", "as a list"),
        Arguments.of("event: {a, b: c}\n", "1:8", "a single text"),
        Arguments.of("kitchen: {vessels: {pot, pan: 2}}\n", "1:21", "A comma inside { }"),
        Arguments.of("kitchen: {vessels: {flour: 1,5 kg}}\n", "1:30", "Did you mean \"1.5 kg\"?"),
        Arguments.of("kitchen: {gap: \"1,5 cm\"}\n", "1:16", "Did you mean \"1.5 cm\"?"),
        Arguments.of("kitchen:\n  room: 70\n", "2:9", "Did you mean \"70 C\" or \"70 F\"?"),
        Arguments.of("event: Table #4\n", "1:8", "\"Table #4\""),
        Arguments.of("kitchen:\n  vessels:\n    tub: yes\n", "3:10", "whole number"),
        Arguments.of("event:\nguests: 4\n", "1:1", "Write its value behind it"),
        Arguments.of("courses: []\n", "1:10", "\"courses\" is an empty list"),
        Arguments.of("cooks: [{name: A, hours: 9:00-13:00}]\n", "1:26", "like \"on the day: 9:00-13:00\""),
        Arguments.of("dishes: [{dish: S, steps: [{do: x, takes: 5 min, in: hat}]}]\n", "1:54",
            "If you have one, add \"kitchen: {from: home, vessels: {hat: {count: 1, size: 30 x 20 x 5 cm}}}\"."),
        Arguments.of("dishes: [{dish: S, steps: [{do: x, takes: 5 min, in: mixing bowl}]}]\n", "1:54",
            "Did you mean \"bowl\"? If not, add"),
        Arguments.of("dishes: [{dish: S, steps: [{do: x, takes: 5 min, in: bakng tray}]}]\n", "1:54",
            "Did you mean \"baking tray\"? If not, add"),
        Arguments.of(
            "kitchen: {vessels: {cap: 1}}\ndishes: [{dish: S, steps: [{do: x, takes: 5 min, in: hat}]}]\n",
            "2:54", "Say under \"vessels:\""),
        Arguments.of("dishes: [{dish: S, steps: [{do: x, time: 5 min}]}]\n", "1:36", "\"keeps\", \"after\""),
        Arguments.of("{\"ovenloom plan\": 1, \"event\": {}}\n", "1:1", "this is a plan and no problem"),
        Arguments.of("kitchen: {ovens: [{name: o, racks: []}]}\n", "1:36", "at least one"),
        Arguments.of("", "1:1", "there is nothing in this file"),
        Arguments.of("zone: Europe/Pari\n", "1:7", "Did you mean \"Europe/Paris\"?"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "made of: {sugar: 5 %}|\"sugar\" is not said of what a dish is made of|Known here: \"water\", \"protein\", \"fat\", \"carbohydrate\", \"fibre\", \"ash\".",
      "made of: sugar|what a dish is made of cannot be a single text|Expected keys like \"water:\".",
      "ingredients: flour|\"ingredients:\" cannot be a single text|like \"flour: 250 g\"",
      "thick: [1 cm, 2 cm]|this cannot be a list|Expected a single text.",
      "steps: [{do: x, takes: 5 min, hands: {at: 2 min}}]|a moment of hands needs \"for:\"|Add \"for:\".",
      "steps: [{do: x, takes: 5 min, keeps: fridge}]|\"keeps:\" cannot be a single text|like \"fridge: 2 days\""})
  void what_is_wrong_is_told_in_a_sentence(String key, String told, String next) {
    String said = new Desktop(folder).mistakesIn("dishes: [{dish: Cake, " + key + "}]\n");

    assertThat(said).contains(": " + told + "\n").contains(next);
  }

  @Test
  void json_is_read_by_the_same_path_tabs_and_all() {
    String said = new Desktop(folder)
        .put("it.json", "{\n\t\"ovenloom\": 1,\n\t\"event\": \"S\",\n\t\"kitchen\": {\"room\": 21}\n}")
        .mistakes("it.json");

    assertThat(said).contains("it.json:4:22: \"21\" is not a temperature");
  }

  @Test
  void a_mistake_in_a_dish_of_its_own_is_shown_there() {
    String said = new Desktop(folder)
        .put("soup.yaml", "dish: Soup\nsteps:\n  - {do: stir, takes: 5}\n")
        .mistakesIn(Desktop.SUPPER + "dishes: [{from: soup.yaml}]\n");

    assertThat(said).startsWith("soup.yaml:3:23: \"5\" is not a time");
  }

  @Test
  void letters_of_two_chars_may_stand_anywhere() {
    String said = new Desktop(folder)
        .mistakesIn("# " + "x".repeat(997) + "\nevent: " + "🍲".repeat(600) + "\nguests: none\n");

    assertThat(said).contains("it.yaml:3:9: \"none\" is not a whole number");
  }

  @Test
  void dishes_need_no_course_while_the_only_one_there_is_is_wrong() {
    String said = new Desktop(folder).mistakesIn(Desktop.SUPPER.replace("2026-10-10 19:00", "Friday 19:00")
        + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n");

    assertThat(said).contains("\"Friday 19:00\" is not a date and a time").doesNotContain("needs");
  }

  @Test
  void what_is_misspelt_is_not_said_to_be_missing_too() {
    String said = new Desktop(folder).mistakesIn(Desktop.SUPPER.replace("guests", "gests") + "dishes: []\n");

    assertThat(said).contains("Did you mean \"guests\"?").doesNotContain("needs \"guests:\"");
  }
}
