package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Leeks are sliced for 15 minutes, simmer for 30, and are at the table at 19:00. */
class ExplainTest {

  @TempDir
  private Path folder;

  @Test
  void a_plan_is_explained_by_what_its_points_are_made_of_and_by_what_holds_each_step() {
    var typed = ovenloom("explain", Kitchens.aPlan(folder));

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains("What its points are made of", "Leek soup", "Slice the leeks.", "Simmer.")
        .containsPattern("\n  calm +\\d+ .*no hand free \\d+");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_step_by_any_of_its_names_is_told_with_what_follows() {
    var plan = Kitchens.aPlan(folder);
    var told = ovenloom("explain", plan, "SIMMER");

    assertThat(told.code()).isZero();
    assertThat(told.out()).startsWith("Leek soup: simmer, ").contains("To the table at 19:00.", "Held");
    assertThat(ovenloom("explain", plan, "simmer of leek soup")).isEqualTo(told);
    assertThat(ovenloom("explain", plan, "leek soup/simmer")).isEqualTo(told);
    assertThat(ovenloom("explain", plan, "Leek soup").out()).contains("slice the leeks, ", "simmer, ");
  }

  @Test
  void why_not_later_is_answered_by_what_breaks() {
    var typed = ovenloom("explain", Kitchens.aPlan(folder), "simmer at 18:45");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).contains("Leek soup/simmer at 18:45, not at ", "No, it breaks ",
        "it is ready 15 min after it is due");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void why_not_a_little_earlier_is_answered_by_what_it_costs() {
    var typed = ovenloom("explain", Kitchens.aPlan(folder), "slice the leeks at 18:10");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("It breaks nothing, and would cost: early 5 more.");
  }

  @Test
  void a_day_may_be_said_as_in_a_problem_file() {
    var typed = ovenloom("explain", Kitchens.aPlan(folder), "simmer at day before 18:00");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).contains("simmer at Thursday 18:00, not at Friday 1");
  }

  @Test
  void a_name_that_is_nearly_one_is_guessed_and_any_other_answered_by_the_dishes_there_are() {
    var plan = Kitchens.aPlan(folder);

    assertThat(ovenloom("explain", plan, "simer")).satisfies(typed -> {
      assertThat(typed.code()).isEqualTo(2);
      assertThat(typed.err()).contains("there is no dish and no step \"simer\"", "Did you mean \"simmer\"?");
    });
    assertThat(ovenloom("explain", plan, "trifle at 16:00").err()).contains("\"trifle\"",
        "Its dishes: Leek soup");
    assertThat(ovenloom("explain", plan, "simmer at 25:00").err()).contains("\"25:00\" is no time",
        "at 16:00");
  }

  @Test
  void a_plan_that_breaks_a_rule_is_not_explained() throws IOException {
    var typed = ovenloom("explain", Kitchens.aPlanThatIsLate(folder));

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("is no plan: it breaks ");
  }
}
