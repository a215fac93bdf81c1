package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.cli.compare.Comparison;
import ovenloom.cli.compare.Sides;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/** Pages of comparisons, without a browser. */
class ComparePageTest {

  private static Comparison of(String title, Plan... plans) {
    return new Comparison(title, IntStream.range(0, plans.length)
        .mapToObj(each -> Sides.planned("plan " + each, plans[each]))
        .toList());
  }

  static IntStream seeds() {
    return IntStream.range(0, 30);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void all_that_is_said_is_on_it_and_every_picture_of_a_time_has_the_same_time(int seed) {
    Plan one = RandomHandPlans.plan(RandomHandPlans.problem(seed), seed);
    Plan other = RandomHandPlans.plan(RandomHandPlans.problem(seed), seed + 1_000);
    Comparison comparison = of("Which?", one, other);

    String page = ComparePage.of(comparison);

    assertThat(page).startsWith("<!doctype html>").endsWith("</html>\n").doesNotContain("NaN", "<script");
    comparison.rows().forEach(row -> assertThat(page).contains(">" + row.label() + "</th>"));
    assertThat(count(page, "<tr><th")).isEqualTo(comparison.rows().size() + comparison.differing().size());
    for (Stack stack : Stack.of(comparison.planned())) {
      assertThat(stack.layers()).hasSize(2);
      assertThat(stack.layers().stream().map(layer -> layer.panel().window().when()).distinct()).hasSize(1);
    }
  }

  @Test
  void a_time_is_as_long_as_the_longest_of_them_has_it() {
    Plan evening = supper("17:50");
    Plan morning = supper("9:20");

    List<Stack> stacks = Stack.of(of("Which?", evening, morning).planned());

    assertThat(stacks).extracting(Stack::heading)
        .containsExactly("The last hours", "Saturday 10 October, on the day");
    assertThat(stacks.getLast().layers().getFirst().panel().window().when())
        .isEqualTo(new Stretch(at("9:00"), at("18:00")));
  }

  private static Plan supper(String stew) {
    return HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Stew
            steps: [{do: simmer, takes: 10 min, burner: large, in: pot, keeps: {counter: 12 h}}]
        """).run("Stew/simmer", at(stew)).plan();
  }

  @Test
  void a_name_is_never_more_than_words() {
    Plan plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: '<b onclick="x()">Stew & "Co"'
            steps: [{do: "simmer <script>alert(1)", takes: 60 min, burner: large, in: pot}]
        """).run("<b onclick=\"x()\">Stew & \"Co\"/simmer <script>alert(1)", at("18:00")).plan();
    Plan later = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Stew
            steps: [{do: simmer, takes: 60 min, burner: large, in: pot}]
        """).run("Stew/simmer", at("18:00")).plan();

    String page = ComparePage.of(of("<i>Which?", plan, later));

    assertThat(page).doesNotContain("><b onclick", "<script", "<i>")
        .contains("&lt;i&gt;Which?", ">&lt;b onclick");
  }

  @Test
  void where_nothing_differs_and_where_there_is_no_plan_there_is_nothing_to_show() {
    Plan plan = supper("18:00");

    assertThat(ComparePage.of(of("Which?", plan, plan))).contains("id=\"pictures\"")
        .doesNotContain("id=\"differing\"", "#differing");
    assertThat(ComparePage.of(new Comparison("Which?", Stream.of("one", "two")
        .map(name -> Sides.proven(name, plan.event()))
        .toList()))).contains("neither has a plan").doesNotContain("id=\"pictures\"", "id=\"differing\"");
  }

  private static long count(String page, String words) {
    return Pattern.compile(Pattern.quote(words)).matcher(page).results().count();
  }
}
