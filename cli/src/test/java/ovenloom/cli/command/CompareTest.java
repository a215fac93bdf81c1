package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Kitchens.SOUP;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.file.PlanFile;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;

class CompareTest {

  /** Two bakes at marks that do not suit each other, for one evening, in one oven or in two. */
  private static final String OVENS = """
      ovenloom: 1
      what if: Would another oven help?
      event: two-marks.yaml
      axes:
        ovens:
          one oven: as it is
          two ovens: {kitchen: {from: home, ovens: {small oven: {dial: 80 C to 260 C, racks: [{size: 46 x 37 cm, clear: 20 cm}]}}}}
      """;

  @TempDir
  private Path folder;

  @BeforeEach
  void two_marks() throws IOException {
    Kitchens.twoMarksAtOnce(folder);
  }

  private Path put(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void one_oven_or_two_is_beyond_doubt_where_with_one_there_is_no_plan() throws IOException {
    Typed typed = ovenloom("compare", put("ovens.yaml", OVENS), "--tries", 50);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("Would another oven help?\n4 guests. ")
        .containsPattern("one oven +two ovens\nFits +no plan, proven +a plan\n");
    assertThat(typed.out().replaceAll("\\s+", " ")).contains("These cannot all be",
        "Better beyond doubt: it has a plan, and there is none with one oven.",
        "It buys a plan: with one oven there is none, proven.");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void plans_are_taken_as_they_are_and_problems_planned_now() throws IOException {
    Path plan = Kitchens.aPlan(folder);
    Path problem = put("soup.yaml",
        Files.readString(SOUP).replace("event: Soup for four", "event: Soup again"));

    Typed typed = ovenloom("compare", plan, problem, "--tries", 20);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("plan and soup\n")
        .containsPattern("\n +plan +soup\n")
        .contains("A tie, as far as proven: as found, neither is ahead.",
            "It buys nothing worth saying.");
  }

  @Test
  void the_same_words_give_the_same_comparison() throws IOException {
    Path whatIf = put("more.yaml",
        "{ovenloom: 1, what if: More guests?, event: soup.yaml, axes: {guests: [4, 8]}}");
    put("soup.yaml", Files.readString(SOUP));

    Typed once = ovenloom("compare", whatIf, "--tries", 30, "--seed", 7);

    assertThat(once.out()).containsPattern("\n +4 guests +8 guests\n");
    assertThat(ovenloom("compare", whatIf, "--tries", 30, "--seed", 7)).isEqualTo(once);
  }

  @Test
  void the_page_is_written_beside_what_is_printed() throws IOException {
    Path plan = Kitchens.aPlan(folder);
    Path page = folder.resolve("compare.html");

    Typed typed = ovenloom("compare", plan, SOUP, "--tries", 30, "-o", page);

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("Fits");
    assertThat(page).content()
        .startsWith("<!doctype html>")
        .contains("plan and first-soup")
        .endsWith("</html>\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare.pdf", "compare", "nowhere/compare.html"})
  void what_cannot_be_a_page_is_said_before_anything_is_planned(String name) {
    Typed typed = ovenloom("compare", SOUP, SOUP, "--for", "1h", "-o", folder.resolve(name));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("ovenloom: cannot ");
  }

  @Test
  void one_alone_cannot_be_compared() {
    Typed typed = ovenloom("compare", SOUP);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("ovenloom: there is nothing to compare ").contains("a what-if file");
  }

  @Test
  void more_than_six_are_for_batch() throws IOException {
    put("soup.yaml", Files.readString(SOUP));
    Path whatIf = put("seven.yaml",
        "{ovenloom: 1, what if: More?, event: soup.yaml, axes: {guests: [2, 3, 4, 5, 6, 7, 8]}}");

    Typed variations = ovenloom("compare", whatIf);
    Typed files = ovenloom(
        Stream.concat(Stream.of("compare"), Collections.nCopies(7, SOUP).stream()).toArray());

    assertThat(variations.code()).isEqualTo(2);
    assertThat(variations.err()).contains("has 7 variations", "ovenloom batch " + whatIf + " -o DIR");
    assertThat(files.code()).isEqualTo(2);
    assertThat(files.err()).contains("room for 6", "ovenloom batch");
  }

  @Test
  void a_what_if_file_is_compared_alone_and_with_more_than_one_variation() throws IOException {
    put("soup.yaml", Files.readString(SOUP));
    Path whatIf = put("one.yaml", "{ovenloom: 1, what if: It?, event: soup.yaml, axes: {guests: [4]}}");

    assertThat(ovenloom("compare", whatIf).err())
        .contains("has no two variations to compare that can be done");
    assertThat(ovenloom("compare", SOUP, whatIf).err()).contains("is compared alone");
    assertThat(ovenloom("compare", SOUP, whatIf).code()).isEqualTo(2);
  }

  @Test
  void a_mistake_in_any_of_them_is_shown_at_its_place() throws IOException {
    Path wrong = put("wrong.yaml", "ovenloom: 1\ngests: 4\n");

    Typed typed = ovenloom("compare", SOUP, wrong, "--for", "1h");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("wrong.yaml:2:1: \"gests\"");
  }

  @Test
  void a_plan_that_breaks_a_rule_is_not_compared() throws IOException {
    Typed typed = ovenloom("compare", SOUP, Kitchens.aPlanThatIsLate(folder), "--for", "1h");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("late.json is no plan: ");
  }

  @Test
  void what_a_plan_says_of_how_good_it_is_is_not_believed_but_proven_anew() throws IOException {
    Plan plan = Kitchens.read(Kitchens.aPlan(folder));
    Path boasting = put("boasting.json", PlanFile.json(plan.with(new Bound(0, plan.score().wishes() + 1))));
    Path modest = put("modest.json", PlanFile.json(plan.with(null)));

    Typed typed = ovenloom("compare", boasting, modest);

    assertThat(typed.code()).as(typed.err()).isZero();
    assertThat(typed.out()).contains("A tie, as far as proven: as found, neither is ahead.");
  }

  @Test
  void it_ends_with_a_proven_no_where_none_of_them_has_a_plan_and_with_none_found_where_that_is_not_proven()
      throws IOException {
    Path never = Kitchens.tooMuchForOne(folder);
    Path notFound = Kitchens.rawBesideReady(folder);

    Typed proven = ovenloom("compare", never, folder.resolve("two-marks.yaml"), "--tries", 20);
    Typed open = ovenloom("compare", never, notFound, "--tries", 20);

    assertThat(proven.code()).isEqualTo(1);
    assertThat(proven.out()).contains("A tie, as far as proven: neither has a plan.");
    assertThat(open.code()).isEqualTo(4);
    assertThat(open.out()).containsPattern("Fits +no plan, proven +none found\n")
        .contains("The best try is no plan");
  }

  @Test
  void who_watches_is_told_which_of_them_is_being_planned() throws IOException {
    put("soup.yaml", Files.readString(SOUP));
    Path whatIf = put("more.yaml",
        "{ovenloom: 1, what if: More guests?, event: soup.yaml, axes: {guests: [4, 8]}}");

    Typed typed = ovenloom(new Terminal(80, false, true, false), new Stop(), "compare", whatIf, "--tries",
        100);

    assertThat(typed.err()).contains("4 guests: a plan", "8 guests: a plan").endsWith("\r");
  }

  @Test
  void names_are_without_folders_where_that_tells_them_apart() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Path one = put("soup.yaml", Files.readString(SOUP));
    Path two = Files.writeString(other.resolve("soup.yaml"), Files.readString(SOUP));

    Typed typed = ovenloom(new Terminal(400, false, false, false), new Stop(), "compare", one, two, "--tries",
        5);

    assertThat(typed.out()).startsWith(one + " and " + two + "\n");
  }
}
