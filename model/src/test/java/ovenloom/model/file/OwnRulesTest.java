package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.menu.Event;
import ovenloom.model.safety.Profile;

class OwnRulesTest {

  private static final String SUPPER = Desktop.SUPPER
      + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n";
  private static final Path HOUSE = Path.of("src/main/resources/ovenloom/model/safety");

  @TempDir
  Path folder;

  private Desktop desk(String rules) {
    return new Desktop(folder).put("supper.yaml", SUPPER + "rules: my-rules.yaml\n")
        .put("my-rules.yaml", rules);
  }

  @ParameterizedTest
  @ValueSource(strings = {"us-home", "us-service", "uk"})
  void a_copy_of_rules_in_the_house_says_the_same_and_stays_so_in_a_plan(String name) throws IOException {
    Desktop desk = desk(Files.readString(HOUSE.resolve(name + ".yaml")) + "\nname: " + name + " copied\n");

    Event event = desk.event("supper.yaml");

    assertThat(Objects.requireNonNull(event.rules()).hot()).isEqualTo(Profile.read(name).hot());
    assertThat(event.rules()).usingRecursiveComparison().ignoringFields("name").isEqualTo(Profile.read(name));
    assertThat(desk.put("again.yaml", ProblemFile.yaml(event)).event("again.yaml")).isEqualTo(event);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "hot: [{at: 60, source: [a, b, c]}]|my-rules.yaml:1:12",
      "hot: [{at: 60 C}]|needs \"source:\"",
      "hott: [{at: 60 C, source: [a, b, c]}]|\"hott\" is not said of safety rules",
      "hot: [{at: 60 C, source: [a, b]}]|a list of 2 is no source",
      "roast oven: [{mode: stil, at: 350 F, source: [a, b, c]}]|Did you mean \"still\"",
      "roast oven: [{mode: fan, under: 0 lb, at: 325 F, source: [a, b, c]}]|more than nothing",
      "roast oven: [{mode: fan, at: 325 F}]|needs \"source:\"",
      "cool: [{from: 5 C, to: 60 C, minutes: 60, source: [a, b, c]}]|5 C is not above 60 C",
      "reheat: [{hold: [{at: 70 C, seconds: 5}, {at: 60 C, seconds: 9}], source: [a, b, c]}]|row 2 is not hotter"})
  void a_slip_in_it_is_shown_at_its_place(String rules, String told) {
    assertThat(desk(rules).mistakes("supper.yaml")).contains(told).contains("my-rules.yaml:1:");
  }

  @Test
  void a_file_that_is_not_there_is_shown_where_it_is_named() {
    assertThat(new Desktop(folder).put("supper.yaml", SUPPER + "rules: none.yaml\n").mistakes("supper.yaml"))
        .contains("there is no file \"none.yaml\"");
  }
}
