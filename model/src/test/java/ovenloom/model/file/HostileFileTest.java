package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(10)
class HostileFileTest {

  @TempDir
  Path temp;
  private Desktop desk = new Desktop(Path.of("."));

  @BeforeEach
  void clearTheDesk() throws IOException {
    desk = new Desktop(Files.createDirectory(temp.resolve("menus")));
  }

  @Test
  void sixty_thousand_brackets_are_not_followed_down() {
    assertThat(desk.mistakesIn("a: " + "[".repeat(60_000))).contains("it.yaml:1:43: more than 40 levels");
  }

  @Test
  void forty_levels_are_too_many_and_thirty_nine_are_not() {
    assertThat(desk.mistakesIn("a: " + "[".repeat(39) + "]".repeat(39))).doesNotContain("levels");
    assertThat(desk.mistakesIn("a: " + "[".repeat(40) + "]".repeat(40))).contains("levels");
  }

  @Test
  void an_alias_bomb_does_not_go_off() {
    var bomb = new StringBuilder("a0: &a0 [" + "x,".repeat(400) + "x]\n");
    for (int i = 1; i < 10; i++) {
      bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
    }

    assertThat(desk.mistakesIn(bomb.toString())).contains("once its aliases are written out");
  }

  @Test
  void an_alias_inside_itself_is_refused() {
    assertThat(desk.mistakesIn("a: &x [*x]")).contains("once its aliases are written out");
  }

  @Test
  void a_file_of_more_than_a_million_bytes_is_not_opened() {
    assertThat(desk.mistakesIn(" ".repeat(1_000_001))).contains("more than 1000000 bytes");
    assertThat(desk.mistakesIn(" ".repeat(1_000_000))).contains("there is nothing in this file");
  }

  @Test
  void bytes_that_are_no_text_are_refused() throws IOException {
    Files.write(desk.folder().resolve("it.yaml"), new byte[]{'a', ':', ' ', (byte) 0xff});

    assertThat(desk.mistakes("it.yaml")).contains("is no text in UTF-8");
  }

  @Test
  void a_path_that_leaves_the_folder_is_refused_whether_or_not_there_is_anything() throws IOException {
    Files.writeString(temp.resolve("secret.yaml"), "room: 20 C");

    assertThat(desk.mistakesIn("kitchen: {from: ../secret.yaml}")).contains("is outside the folder");
    assertThat(desk.mistakesIn("kitchen: {from: ../none.yaml}")).contains("is outside the folder");
    assertThat(desk.mistakesIn("kitchen: {from: " + temp.resolve("secret.yaml") + "}"))
        .contains("is outside");
  }

  @Test
  void a_link_that_leads_out_of_the_folder_is_refused() throws IOException {
    Files.writeString(temp.resolve("secret.yaml"), "room: 20 C");
    Files.createSymbolicLink(desk.folder().resolve("home.yaml"), temp.resolve("secret.yaml"));

    assertThat(desk.mistakesIn("kitchen: {from: home.yaml}")).contains("is outside the folder");
  }

  @Test
  void a_wider_root_lets_dishes_lie_beside_the_menus() {
    desk.put("supper/supper.yaml", Desktop.SUPPER + "dishes: [{from: ../dishes/soup.yaml}]\n")
        .put("dishes/soup.yaml", "dish: Soup\nsteps: [{do: stir, takes: 5 min}]\n");

    var narrow = ProblemFile.read(
        desk.folder().resolve("supper/supper.yaml"), desk.folder().resolve("supper"), null);
    var wide = ProblemFile.read(desk.folder().resolve("supper/supper.yaml"), desk.folder(), null);

    assertThat(narrow).isInstanceOf(Reading.Mistaken.class);
    assertThat(wide).isInstanceOf(Reading.Understood.class);
  }

  @Test
  void files_that_take_each_other_in_are_refused() {
    desk.put("one.yaml", "from: two.yaml").put("two.yaml", "from: one.yaml");

    assertThat(desk.mistakesIn("kitchen: {from: one.yaml}"))
        .contains("two.yaml:1:7: \"one.yaml\" takes itself in");
    assertThat(desk.mistakesIn("kitchen: {from: it.yaml}")).contains("\"it.yaml\" takes itself in");
  }

  @Test
  void a_folder_or_nothing_at_all_is_no_file() {
    assertThat(desk.mistakesIn("kitchen: {from: .}")).contains("cannot be opened as a file");
    assertThat(desk.mistakes("none.yaml")).contains("there is no file");
  }

  @Test
  void a_course_without_a_time_because_of_a_key_that_is_no_word_is_one_mistake() {
    String menu = Desktop.SUPPER.replace("at: 2026-10-10 19:00", "{a: b}")
        .replace("[{name: supper", "[{name: lunch, at: 2026-10-10 13:00}, {name: supper");

    assertThat(desk.mistakesIn(menu
        + "dishes: [{dish: Soup, course: supper, steps: [{do: stir, takes: 5 min, hands: throughout}]}]\n"))
        .containsOnlyOnce("it.yaml:")
        .contains("a key cannot be");
  }

  @Test
  void a_whole_file_on_one_line_is_read_as_fast_as_on_many() {
    String line = "{a: [" + "10 min, ".repeat(90_000) + "10 min], b: 20 \u2013 30 min}";

    assertThat(desk.mistakesIn(line)).contains("it.yaml:1:2: \"a\" is not said of an event");
    assertThat(desk.mistakesIn(line.replace("b:", "\ud83c\udf5e:"))).contains("it.yaml:1:720015: ");
  }

  @Test
  void a_long_line_of_dishes_that_are_no_dishes_is_told_of_all_of_them() {
    assertThat(desk.mistakesIn("dishes: [" + "9, ".repeat(20_000) + "9]").lines().count())
        .isGreaterThan(20_000);
  }

  @Test
  void steps_that_wait_for_two_thousand_others_each_are_too_much_work() {
    String menu = Desktop.SUPPER.replace("guests: 4", "guests: 2000") + """
        dishes:
          - {dish: Buns, portions: 1, steps: [{do: fill, takes: 1 min}]}
          - {dish: Cups, for: 1999, portions: 1, steps: [{do: pour, takes: 1 min, uses: Buns/fill}]}
        """;

    assertThat(desk.mistakesIn(menu)).contains("more than 20000 links between steps");
    assertThat(desk.mistakesIn(menu.replace("for: 1999, ", ""))).doesNotContain("more than");
  }

  @Test
  void three_thousand_steps_in_a_row_are_looked_at() {
    var steps = new StringBuilder(
        Desktop.SUPPER.replace("on the day: 14", "8 days before: 9:00-10:00, on the day: 14"))
        .append("dishes:\n  - dish: Soup\n    steps:\n");
    for (int i = 0; i < 3_000; i++) {
      steps.append("      - {do: s").append(i).append(", takes: 1 min}\n");
    }

    assertThat(desk.mistakesIn(steps.toString())).isEmpty();
  }

  @Test
  void a_kitchen_has_a_hundred_ovens_of_a_hundred_racks_and_no_more() {
    String rack = "{size: 40 x 40 cm, clear: 9 cm, count: 9999}";

    assertThat(desk.mistakesIn("kitchen: {ovens: {name: o, racks: [" + rack + ", " + rack + "]}}"))
        .contains("more than 100 racks");
    assertThat(desk.mistakesIn("kitchen: {burners: [" + "small, ".repeat(100) + "small]}"))
        .contains("more than 100 burners");
    assertThat(desk.mistakesIn("cooks: [" + "{name: x}, ".repeat(100) + "{name: y}]"))
        .contains("more than 100 cooks");
    assertThat(
        desk.mistakesIn("kitchen: {cold: {name: c, holds: 4 C, shelves: {size: 9 x 9 x 9 cm, count: 201}}}"))
        .contains("more than 200 shelves");
  }

  @Test
  void one_file_takes_in_two_hundred_others_and_no_more() {
    desk.put("d.yaml", "dish: D");
    var dishes = new StringBuilder("dishes:\n");
    for (int i = 0; i < 200; i++) {
      desk.put("d" + i + ".yaml", "dish: D" + i);
      dishes.append("  - from: d").append(i).append(".yaml\n");
    }

    assertThat(desk.mistakesIn(dishes.toString())).contains("it.yaml:201:11: more than 200 files");
  }
}
