package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.Harmless;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;

/** Pages of plans that nobody chose, without a browser. */
class PageOfAnythingTest {

  private static final Pattern WORDS = Pattern.compile("<span class=\"words\">(.*?)</span>", Pattern.DOTALL);

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_line_is_there_letter_by_letter(int seed) {
    Plan plan = RandomHandPlans.plan(RandomHandPlans.problem(seed), seed);

    String page = PlanPage.of(plan);

    List<String> expected = View.of(plan)
        .days()
        .stream()
        .flatMap(day -> day.lines().stream())
        .filter(line -> page.contains("data-key=\"" + line.key() + "\""))
        .map(line -> Harmless.words(line.act().words(), "\n\u200D"))
        .toList();
    assertThat(expected).isNotEmpty();
    assertThat(lines(page)).startsWith(expected.toArray(String[]::new));
    assertThat(page).endsWith("</html>\n").doesNotContain("NaN");
  }

  private static List<String> lines(String page) {
    return WORDS.matcher(page).results().map(found -> plain(found.group(1))).toList();
  }

  private static String plain(String html) {
    return html.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  @Test
  void a_name_is_never_more_than_words() {
    Plan plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: '<b onclick="x()">Stew & "Co"'
            steps: [{do: "simmer <script>alert(1)", takes: 60 min, burner: large, in: pot}]
        """).run("<b onclick=\"x()\">Stew & \"Co\"/simmer <script>alert(1)", at("18:00")).plan();

    String page = PlanPage.of(plan);

    assertThat(page).doesNotContain("><b onclick", "><script>alert", "=\"x()\"/", "Co\"/simmer")
        .contains(">&lt;b onclick");
    assertThat(page.lines().filter(line -> line.equals("<script>"))).hasSize(1);
  }

  @Test
  void a_plan_without_an_oven_for_one_cook_has_no_more_than_it_needs() {
    Plan plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Rice
            steps: [{do: cook, takes: 20 min, burner: small, in: pot}]
        """).run("Rice/cook", at("18:30")).plan();

    String page = PlanPage.of(plan);

    assertThat(page).contains("Rice").doesNotContain("id=\"who\"", "class=\"sheet paper\"", "id=\"places\"");
  }

  private static final String RICE = SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: "NAME"
          steps: [{do: cook, takes: 20 min, burner: small, in: pot}]
      """;

  @Test
  void a_name_turns_no_words_round() {
    String name = "Rice\u202eecir \uD83D\uDC69\u200D\uD83C\uDF73";
    Plan plan = HandPlan.forProblem(RICE.replace("NAME", name)).run(name + "/cook", at("18:30")).plan();

    String page = PlanPage.of(plan);

    assertThat(page).doesNotContain("\u202e").contains("Rice?ecir \uD83D\uDC69\u200D\uD83C\uDF73");
  }

  @Test
  void what_a_plans_file_says_is_proven_is_told_as_what_it_says() {
    Plan plan = HandPlan.forProblem(RICE.replace("NAME", "Rice")).run("Rice/cook", at("18:30")).plan();

    assertThat(PlanPage.of(plan)).contains("The plan's file does not say how much better a plan can be.")
        .doesNotContain("Proven");
    assertThat(PlanPage.of(plan.with(new Bound(0, 0))))
        .contains("Said by the plan's file, and not proven anew for this page: no plan is better")
        .doesNotContain("Proven");
  }
}
