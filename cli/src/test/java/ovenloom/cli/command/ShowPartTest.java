package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part of a plan, asked for by name. */
class ShowPartTest {

  @TempDir
  private static Path folder;

  private static Path plan;

  @BeforeAll
  static void a_plan() {
    plan = Kitchens.aPlan(folder);
  }

  @Test
  void a_cook_may_be_written_small() {
    var typed = ovenloom("show", plan, "--cook", "cook");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("Only what Cook does", "Slice the leeks", "This is a part.");
  }

  @Test
  void a_cook_whom_nobody_knows_is_told_with_the_nearest() {
    var typed = ovenloom("show", plan, "--cook", "Coko");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).isEqualTo("""
        ovenloom: there is no cook "Coko"
          Did you mean "Cook"?
          There is: Cook
        """);
  }

  @Test
  void one_asks_for_one_part_at_a_time() {
    var typed = ovenloom("show", plan, "--oven", "oven", "--shelf", "fridge");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err())
        .isEqualTo("ovenloom: --oven and --shelf show different parts of a plan\n  Ask for one.\n");
  }

  @Test
  void the_next_hour_begins_now() {
    var now = LocalDateTime.of(2026, 11, 6, 18, 20).atZone(ZoneId.systemDefault()).toInstant();

    var typed = ovenloom(() -> now, "show", plan, "--next", "1h");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("Friday 6 November 2026, 18:20 to 19:20.", "Under way at 18:20",
        "Leek soup (slice the leeks), hands-on until 18:30.", "18:30  Leek soup  Onto a large burner")
        .doesNotContain("18:15");
  }

  @Test
  void a_time_alone_asks_for_an_hour() {
    assertThat(ovenloom("show", plan, "--at", "17:40").out()).contains("17:40 to 18:40.", "18:15  Leek soup");
    assertThat(ovenloom("show", plan, "--at", "17:40", "--next", "2min").out()).contains("17:40 to 17:42.")
        .contains("Nothing is under way, and nothing is to be done before 18:15.");
  }

  @Test
  void what_is_no_time_is_a_wrong_command() {
    var typed = ovenloom("show", plan, "--at", "soon");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("ovenloom: \"soon\" is no time\n  Say 17:40");
  }

  @Test
  void strips_are_blocks_where_they_can_be_read_and_ascii_elsewhere() {
    var ascii = ovenloom("show", plan, "--strips");
    var blocks = ovenloom(new Terminal(80, false, false, true), new Stop(), "show", plan, "--strips");

    assertThat(ascii.code()).isZero();
    assertThat(ascii.out()).contains("What the letters are").matches("\\p{ASCII}+");
    assertThat(blocks.out()).contains("\u2500");
  }

  @Test
  void strips_are_of_all_of_a_plan() {
    var typed = ovenloom("show", plan, "--strips", "--oven", "oven", "--at", "17:00");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err())
        .isEqualTo("ovenloom: --strips shows all of a plan\n  Leave it out, or --oven and --at.\n");
    assertThat(ovenloom("show", plan, "--strips", "-o", folder.resolve("strips.html")).err())
        .contains("Leave out -o, or --strips.");
  }

  @Test
  void what_is_kept_is_kept_whole() {
    var page = folder.resolve("part.html");

    var typed = ovenloom("show", plan, "--cook", "Cook", "-o", page);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("would hold the whole plan", "Leave out -o, or --cook.");
    assertThat(page).doesNotExist();
  }

  @Test
  void no_part_is_shown_of_a_plan_that_breaks_a_rule() throws Exception {
    var typed = ovenloom("show", Kitchens.aPlanThatIsLate(folder), "--cook", "Cook");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
  }
}
