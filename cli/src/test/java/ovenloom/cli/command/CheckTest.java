package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Kitchens.SOUP;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {

  @TempDir
  private Path folder;

  @Test
  void what_was_understood_is_told_in_a_few_lines() {
    var typed = ovenloom("check", "../problems/harvest-supper.yaml");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo("""
        ../problems/harvest-supper.yaml is understood: Harvest supper, 10 guests.
        Courses   soup, Saturday 10 October 2026 18:30
                  supper, Saturday 10 October 2026 19:00
        Menu      1 dish in 2 batches, 4 steps
        Kitchen   1 oven, 4 burners, 1 cold or hot place, 4 kinds of vessel, 1 kind of appliance
        Cooks     Host (from Thursday 8 October 2026 18:00)
        """);
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void guests_on_the_command_line_win() {
    assertThat(ovenloom("check", "../problems/harvest-supper.yaml", "--guests", 8).out())
        .contains("8 guests.", "1 dish in 1 batch");
  }

  @Test
  void all_mistakes_are_shown_at_once() throws IOException {
    var expected = Files.readString(Path.of("../problems/full-of-mistakes.txt"));

    var typed = ovenloom("check", "../problems/full-of-mistakes.yaml");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ../problems/full-of-mistakes.yaml: ")
        .contains(expected.lines().filter(line -> line.startsWith("  Expected")).toList());
  }

  @Test
  void a_what_if_file_is_understood_without_planning_any_of_it() {
    var typed = ovenloom("check", "../problems/one-oven-or-two.what-if.yaml");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo("""
        ../problems/one-oven-or-two.what-if.yaml is understood: One oven or two?
        2 variations along:
          ovens: one oven, two ovens
        """);
  }

  @Test
  void a_slip_in_the_name_of_a_cook_is_told_and_adds_nobody() throws IOException {
    Files.copy(SOUP, folder.resolve("soup.yaml"));
    Path slip = Files.writeString(folder.resolve("slip.yaml"), """
        ovenloom: 1
        what if: Longer
        event: soup.yaml
        axes:
          soup: {longer: {cooks: {Cok: {hours: {on the day: 9:00-21:00}}}}}
        """);

    var typed = ovenloom("check", slip);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("Did you mean");
  }

  @Test
  void a_command_for_problems_says_so_of_a_what_if_file_and_the_other_way() {
    var solve = ovenloom("solve", "../problems/one-oven-or-two.what-if.yaml");
    var batch = ovenloom("batch", "../problems/friday-dinner.yaml", "-o", folder.resolve("runs"));

    assertThat(solve.code()).isEqualTo(2);
    assertThat(solve.err()).isEqualTo("""
        ovenloom: ../problems/one-oven-or-two.what-if.yaml is a what-if file, not a problem
          Plan its variations with compare or batch; check says what is wrong with it.
        """);
    assertThat(batch.code()).isEqualTo(2);
    assertThat(batch.err()).isEqualTo("""
        ovenloom: ../problems/friday-dinner.yaml is a problem, not a what-if file
          Plan it with solve; a what-if file names it as its event.
        """);
  }

  private Path pork(int core, int overcook) throws IOException {
    return Files.writeString(folder.resolve("pork.yaml"),
        """
            ovenloom: 1
            event: Pork
            rules: us-home
            guests: 6
            courses: [{name: supper, at: 2026-11-06 19:00}]
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - dish: Pork loin
                tags: [raw meat, whole roast]
                steps:
                  - {do: roast, takes: 75-90 min, bake: {at: 180 C}, in: roasting tin, stands: 12 cm, core: %d C, overcook: %d %%}
                  - {do: rest, takes: 10 min, in: carving board}
                  - {do: carve, takes: 8 min, hands: throughout, in: platter}
            """
            .formatted(core, overcook));
  }

  /** USDA-FSIS Safe Minimum Internal Temperature Chart, 2015: roasts to 145 F, which is 62.8 C. */
  @Test
  void a_roast_whose_core_is_too_low_is_refused_or_where_only_overcooking_would_do_it_is_noted()
      throws IOException {
    String told = "at least 63 C for 180 s or as long at less as the table says (USDA-FSIS";

    assertThat(ovenloom("check", pork(55, 0)).code()).isEqualTo(1);
    assertThat(ovenloom("check", pork(55, 0)).err()).contains("C at most, " + told, "a higher \"core:\"");
    assertThat(ovenloom("check", pork(55, 20)).code()).isZero();
    assertThat(ovenloom("check", pork(55, 20)).out())
        .contains("C at most if it bakes no longer than it needs, " + told);
    assertThat(ovenloom("check", pork(63, 20)).out()).doesNotContain("Cooked to");
  }

  @Test
  void what_is_well_written_and_cannot_be_done_is_an_honest_no() throws IOException {
    var typed = ovenloom("check", Kitchens.tooLateToBegin(folder));

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ")
        .contains("too-late.yaml: well written, and it cannot be done\n")
        .contains("this and all it waits for take 2 h, and there are 1 h from the first hour to the table");
  }

  @Test
  void one_slip_beside_what_cannot_be_done_is_still_a_mistake() throws IOException {
    var late = Kitchens.tooLateToBegin(folder);
    Files.writeString(late, Files.readString(late) + "colour: white\n");

    var typed = ovenloom("check", late);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("too-late.yaml: 2 mistakes", "take 2 h", "colour");
  }

  @Test
  void what_is_worth_a_look_is_told_by_check_and_by_solve() throws IOException {
    var tall = Kitchens.potTooTallForTheFridge(folder);
    var plan = folder.resolve("plan.json");

    var checked = ovenloom("check", tall);
    var solved = ovenloom("solve", tall, "--tries", 20, "-o", plan);
    var audited = ovenloom("check", tall, plan);

    assertThat(List.of(checked.code(), solved.code(), audited.code())).containsOnly(0);
    assertThat(List.of(checked.out(), solved.err(), audited.err())).allSatisfy(text -> assertThat(text)
        .containsOnlyOnce("Worth a look:\n")
        .contains("\"stock pot\" (12 x 12 x 9 in) fits on no shelf of \"wine fridge\""));
    assertThat(audited.out()).contains("plan.json keeps all ").doesNotContain("Worth");
  }

  @Test
  void a_file_that_is_not_there_is_a_mistake() {
    var typed = ovenloom("check", folder.resolve("supper.yaml"));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("ovenloom: ").contains("supper.yaml");
  }

  @Test
  void a_plan_that_keeps_every_rule_passes() {
    var typed = ovenloom("check", SOUP, Kitchens.aPlan(folder));

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).containsPattern("plan.json keeps all \\d\\d rules.");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void a_plan_that_is_late_fails_with_the_rule_who_when_and_by_how_much() throws IOException {
    var typed = ovenloom("check", SOUP, Kitchens.aPlanThatIsLate(folder));

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).contains("late.json is no plan: it breaks ", "Leek soup/simmer",
        "Friday 6 November 18:40",
        "Off by 10 min.");
  }

  @Test
  void a_plan_for_other_guests_is_refused() {
    var typed = ovenloom("check", SOUP, Kitchens.aPlan(folder), "--guests", 6);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ")
        .contains("was made from another event", "The plan is for 4 guests, the file for 6.");
  }

  @Test
  void a_plan_for_another_event_is_refused() {
    var typed = ovenloom("check", "../problems/harvest-supper.yaml", Kitchens.aPlan(folder));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("The plan is for \"Soup for four\", the file for \"Harvest supper\".");
  }

  @Test
  void a_plan_for_a_file_that_has_changed_since_is_refused_by_the_files_name() throws IOException {
    var plan = Kitchens.aPlan(folder);
    var changed = Files.writeString(folder.resolve("first-soup.yaml"),
        Files.readString(SOUP).replace("takes: 15 min", "takes: 16 min"));

    var typed = ovenloom("check", changed, plan);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("Changed since the plan was made: first-soup.yaml.");
  }

  @Test
  void a_comment_changes_no_event() throws IOException {
    var plan = Kitchens.aPlan(folder);
    var commented = Files.writeString(folder.resolve("soup.yaml"), Files.readString(SOUP) + "# lovely\n");

    assertThat(ovenloom("check", commented, plan).code()).isZero();
  }

  @Test
  void a_file_that_is_no_plan_is_not_audited() {
    var typed = ovenloom("check", SOUP, SOUP);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ../problems/first-soup.yaml: ");
  }
}
