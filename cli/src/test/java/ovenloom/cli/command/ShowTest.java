package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Kitchens.SOUP;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowTest {

  @TempDir
  private Path folder;

  @Test
  void a_plan_is_shown_as_it_was_found() {
    var found = ovenloom("solve", SOUP, "--tries", 20);

    var shown = ovenloom("show", Kitchens.aPlan(folder));

    assertThat(shown.code()).isEqualTo(found.code());
    assertThat(found.out()).as("what is proven of it comes behind").startsWith(shown.out());
    assertThat(shown.err()).isEqualTo(found.err());
  }

  @Test
  void a_plan_that_breaks_a_rule_is_never_shown_as_one() throws IOException {
    var typed = ovenloom("show", Kitchens.aPlanThatIsLate(folder));

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ")
        .contains("late.json is no plan: it breaks ", "Off by 10 min.");
  }

  @Test
  void half_a_plan_is_a_wrong_file() throws IOException {
    var whole = Files.readString(Kitchens.aPlan(folder));
    var half = Files.writeString(folder.resolve("half.json"), whole.substring(0, whole.length() / 2));

    var typed = ovenloom("show", half);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: ").contains("half.json");
  }

  @Test
  void a_plan_is_kept_as_a_page() throws IOException {
    var page = folder.resolve("plan.html");

    var typed = ovenloom("show", Kitchens.aPlan(folder), "-o", page);

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEmpty();
    assertThat(Files.readString(page)).startsWith("<!doctype html>").contains("Soup");
  }

  @Test
  void a_plan_is_kept_as_a_calendar_and_so_is_one_cooks_own() throws IOException {
    var all = folder.resolve("plan.ics");
    var own = folder.resolve("own.ics");
    var plan = Kitchens.aPlan(folder);

    assertThat(ovenloom("show", plan, "-o", all).code()).isZero();
    var typed = ovenloom("show", plan, "-o", own, "--cook", "cook");

    assertThat(typed.code()).isZero();
    assertThat(typed.out() + typed.err()).isEmpty();
    assertThat(Files.readString(all)).startsWith("BEGIN:VCALENDAR").contains("SUMMARY:Leek soup: slice");
    assertThat(Files.readString(own)).startsWith("BEGIN:VCALENDAR").contains("SUMMARY:Leek soup: slice");
  }

  @Test
  void a_cook_who_is_not_there_is_a_wrong_command_and_the_nearest_is_offered() {
    var file = folder.resolve("plan.ics");
    var plan = Kitchens.aPlan(folder);

    var typed = ovenloom("show", plan, "-o", file, "--cook", "Cooc");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("ovenloom: there is no cook \"Cooc\"")
        .contains("Did you mean \"Cook\"?");
    assertThat(file).doesNotExist();
    assertThat(ovenloom("show", plan, "-o", file, "--cook", "Somebody else").err())
        .contains("There is: Cook");
  }

  @Test
  void a_page_is_for_all_cooks() {
    var typed = ovenloom("show", Kitchens.aPlan(folder), "--cook", "Cook", "-o", folder.resolve("plan.html"));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("would hold the whole plan", "--cook");
  }

  @Test
  void a_plan_is_kept_as_a_table() throws IOException {
    var table = folder.resolve("PLAN.CSV");

    var typed = ovenloom("show", Kitchens.aPlan(folder), "-o", table);

    assertThat(typed.code()).isZero();
    assertThat(Files.readString(table)).startsWith("kind,dish,step,").contains("Leek soup,simmer");
  }

  @Test
  void nobody_can_tell_what_to_make_of_a_name_that_says_nothing() {
    var typed = ovenloom("show", Kitchens.aPlan(folder), "-o", folder.resolve("plan"));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("cannot tell what to make of", ".html");
  }

  @Test
  void a_plan_that_breaks_a_rule_is_kept_as_nothing() throws IOException {
    var page = folder.resolve("plan.html");

    var typed = ovenloom("show", Kitchens.aPlanThatIsLate(folder), "-o", page);

    assertThat(typed.code()).isEqualTo(1);
    assertThat(page).doesNotExist();
  }

  @Test
  void bold_letters_are_for_terminals() {
    var plan = Kitchens.aPlan(folder);

    assertThat(ovenloom("show", plan).out()).doesNotContain("\u001b");
    assertThat(ovenloom(new Terminal(80, true, false, false), new Stop(), "show", plan).out())
        .contains("\u001b[1m");
  }

  @Test
  void a_fault_of_ours_is_owned_up_to_and_traced_only_where_asked() {
    var plan = Kitchens.aPlan(folder);

    assertThat(withABrokenPrinter("show", plan)).startsWith("3 ovenloom: this is our fault, not yours: ")
        .contains("out of ink", "--trace")
        .doesNotContain("\tat ");
    assertThat(withABrokenPrinter("show", plan, "--trace")).startsWith("3 ").contains("out of ink", "\tat ");
  }

  private static String withABrokenPrinter(Object... words) {
    var err = new StringWriter();
    var broken = new PrintWriter(new Writer() {
      @Override
      public void write(char[] letters, int from, int count) {
        throw new IllegalStateException("out of ink");
      }

      @Override
      public void flush() {}

      @Override
      public void close() {}
    });
    String[] typed = Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    int code = new Ovenloom(broken, new PrintWriter(err, true), Typed.PIPE, new Stop(),
        InstantSource.system())
        .run(typed);
    return code + " " + err;
  }
}
