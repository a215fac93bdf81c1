package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static ovenloom.cli.command.Kitchens.SOUP;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Audit;

class SolveTest {

  @TempDir
  private Path folder;

  @Test
  void a_plan_that_is_found_is_printed_and_nothing_else_is() {
    var typed = ovenloom("solve", SOUP, "--tries", 20);

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("Soup for four\n")
        .contains("18:30  Leek soup")
        .contains("allergens.\n")
        .containsPattern(
            "\nProven: no plan is better at the table, and none by more than [0-9]+ points of\\s+wishes.\n$");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void soup_in_an_ice_bath_is_stirred_and_the_sheet_says_how_much_ice_it_takes() throws IOException {
    var problem = Files.writeString(folder.resolve("cold-soup.yaml"), """
        ovenloom: 1
        event: Cold soup
        rules: us-service
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Ann, hours: {on the day: 10:00-20:00}}]
        kitchen:
          burners: [large]
          cold: [{name: fridge, holds: 3 C, shelves: {size: 60 x 50 x 30 cm}}]
          vessels: {pot: {count: 1, size: 26 x 26 x 10 cm}}
        dishes:
          - dish: Pea soup
            arrives: cold
            tags: [tcs]
            steps:
              - {do: simmer, takes: 40 min, burner: large, in: pot}
              - {do: chill, chill by: [fridge, ice bath], keeps: {fridge: 1 day}}
        """);

    var typed = ovenloom("solve", problem, "--tries", 50);

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("Into the ice bath (pot).", "kg of ice", "Stir: 1 min.");
  }

  @Test
  void a_plan_that_is_found_is_kept_where_it_is_wanted_and_passes_the_audit() throws IOException {
    var file = folder.resolve("plan.json");

    var typed = ovenloom("solve", SOUP, "--tries", 20, "-o", file);

    assertThat(typed.code()).isZero();
    var plan = Kitchens.read(file);
    assertThat(Audit.of(plan.event(), plan)).isEmpty();
    assertThat(folder).isDirectoryNotContaining(other -> !other.equals(file));
  }

  @Test
  void a_plan_takes_the_place_of_what_was_there_also_behind_a_link() throws IOException {
    var real = Files.writeString(folder.resolve("real.json"), "an older plan");
    var link = Files.createSymbolicLink(folder.resolve("link.json"), real.getFileName());

    var typed = ovenloom("solve", SOUP, "--tries", 20, "-o", link);

    assertThat(typed.code()).isZero();
    assertThat(link).isSymbolicLink();
    assertThat(Kitchens.read(real).placements()).isNotEmpty();
  }

  @Test
  void a_plan_may_be_thrown_away() {
    var nowhere = Path.of("/dev/null");
    assumeThat(nowhere).as("a system with /dev/null").exists();

    var typed = ovenloom("solve", SOUP, "--tries", 20, "-o", nowhere);

    assertThat(typed.code()).isZero();
    assertThat(Files.isRegularFile(nowhere)).isFalse();
  }

  @Test
  void a_folder_that_is_not_there_is_said_before_the_search_begins() {
    var typed = ovenloom("solve", SOUP, "--for", "1h", "-o", folder.resolve("nowhere/plan.json"));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: cannot write ").contains("there is no folder");
  }

  @Test
  void a_folder_is_no_place_for_a_plan_to_be_written_over() {
    var typed = ovenloom("solve", SOUP, "--for", "1h", "-o", folder);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).isEqualTo("ovenloom: cannot write " + folder + ": it is a folder\n");
  }

  @Test
  void tries_and_a_seed_give_the_same_bytes_twice() {
    var once = ovenloom("solve", "../problems/harvest-supper.yaml", "--tries", 100, "--seed", 7);
    var twice = ovenloom("solve", "../problems/harvest-supper.yaml", "--tries", 100, "--seed", 7);

    assertThat(once).isEqualTo(twice);
    assertThat(once.code()).isZero();
  }

  @Test
  void guests_on_the_command_line_win() {
    assertThat(ovenloom("solve", SOUP, "--tries", 20).out()).contains("\n4 guests.");
    assertThat(ovenloom("solve", SOUP, "--tries", 20, "--guests", 9).out()).contains("\n9 guests.");
  }

  @Test
  void where_no_plan_is_found_the_best_try_is_told_by_its_breaks_and_never_as_a_plan() throws IOException {
    var file = folder.resolve("plan.json");

    var typed = ovenloom("solve", Kitchens.rawBesideReady(folder), "--tries", 20, "-o", file);

    assertThat(typed.code()).isEqualTo(4);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: no plan found in ")
        .contains("The best try is no plan: it breaks ", "1.  ", "Jelly/set", "Off by ",
            "\nSeems short:  ",
            "--for 2min");
    assertThat(file).doesNotExist();
  }

  @Test
  void where_no_stretch_is_short_but_claims_clash_they_are_told() throws IOException {
    var typed = ovenloom("solve", Kitchens.twoMarksAtOnce(folder), "--tries", 20);

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: there is no plan\n").contains("Meringue", "Pizza", "oven");
  }

  @Test
  void where_it_is_plain_that_there_is_no_plan_the_clash_is_told_at_once() throws IOException {
    var typed = ovenloom("solve", Kitchens.tooMuchForOne(folder), "--for", "1h");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err().replaceAll("\\s+", " "))
        .startsWith("ovenloom: there is no plan Between Saturday 10 October 2026, 18:")
        .contains(" hands are asked for ", " min and there are ",
            ": Omelette/fry and Pancakes/fry. It would help ");
  }

  @Test
  void a_file_full_of_mistakes_is_not_solved() throws IOException {
    var typed = ovenloom("solve", "../problems/full-of-mistakes.yaml", "--for", "1h");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ../problems/full-of-mistakes.yaml: ")
        .contains("mistakes\n");
  }

  @Test
  void what_cannot_be_done_is_not_looked_for() throws IOException {
    var typed = ovenloom("solve", Kitchens.tooLateToBegin(folder), "--for", "1h");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("well written, and it cannot be done");
  }

  @ParameterizedTest
  @CsvSource({"--for,0s", "--for,20", "--for,soon", "--tries,0", "--tries,-3", "--seeds,0", "--seeds,65",
      "--seed,first",
      "--guests,0", "--guests,many"})
  void a_number_that_makes_no_sense_is_a_wrong_command(String option, String value) {
    var typed = ovenloom("solve", SOUP, option, value);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ").contains(option, value, "Try: ovenloom solve --help");
  }

  @Test
  void an_option_that_does_not_exist_is_told_with_the_one_it_was_meant_for() {
    assertThat(ovenloom("solve", SOUP, "--gests", 3).err())
        .isEqualTo(
            "ovenloom: there is no option \"--gests\"; did you mean --guests?\n  Try: ovenloom solve --help\n");
    assertThat(ovenloom("solve", SOUP, "--output", "x").err())
        .startsWith("ovenloom: there is no option \"--output\"\n");
    assertThat(ovenloom("solve", SOUP, "--gests", 3).code()).isEqualTo(2);
  }

  @Test
  void a_place_that_takes_no_file_is_named_with_the_plan_printed_all_the_same() {
    var nowhere = Path.of("/proc");
    assumeThat(nowhere).as("a system with /proc, where nobody can make files").exists();
    assumeThat(Files.isWritable(nowhere)).as("someone who is allowed to try").isTrue();

    var typed = ovenloom("solve", SOUP, "--tries", 20, "-o", nowhere.resolve("plan.json"));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).startsWith("Soup for four\n");
    assertThat(typed.err())
        .isEqualTo("ovenloom: cannot write /proc/plan.json: the system lets no file be made there\n");
  }

  @Test
  void files_are_read_below_the_root_only() {
    var outside = ovenloom("check", SOUP, "--root", folder);
    var inside = ovenloom("check", SOUP, "--root", "..");

    assertThat(outside.code()).isEqualTo(2);
    assertThat(inside.code()).isZero();
  }
}
