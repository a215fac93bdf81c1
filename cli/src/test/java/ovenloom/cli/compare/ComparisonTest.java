package ovenloom.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.compare.Sides.noneFound;
import static ovenloom.cli.compare.Sides.pie;
import static ovenloom.cli.compare.Sides.planned;
import static ovenloom.cli.compare.Sides.proven;
import static ovenloom.cli.compare.Sides.with;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;

/** Figures and sentences of a pie and some rice at 19:00, in the oven and on the burner sooner or later. */
class ComparisonTest {

  private static final Plan EARLY = pie(at("17:30"), at("18:00"));
  private static final Plan LATE = pie(at("18:10"), at("18:40"));

  private static Comparison of(Contender... all) {
    return new Comparison("Pie", Arrays.asList(all));
  }

  /** What is said of the second of two. */
  private static List<String> said(Contender first, Contender other) {
    return of(first, other).said().getLast().sentences();
  }

  private static List<String> row(String label, Contender... all) {
    return of(all).rows().stream().filter(row -> row.label().equals(label)).findFirst().orElseThrow().cells();
  }

  @Test
  void work_begins_with_the_first_hands_and_what_no_plan_has_is_a_dash() {
    Contender[] all = {planned("early", EARLY), planned("late", LATE), proven("never", EARLY.event())};

    assertThat(row("Fits", all)).containsExactly("a plan", "a plan", "no plan, proven");
    assertThat(row("Work begins", all)).containsExactly("17:30", "18:10", "-");
    assertThat(row("On the day", all)).containsExactly("17:30", "18:10", "-");
    assertThat(row("Hands, last hour", all)).containsExactly("10 min", "15 min", "-");
  }

  @Test
  void the_hottest_minute_counts_hands_oven_and_burner_together() {
    assertThat(row("Hottest minute", planned("early", EARLY), planned("late", LATE)))
        .containsExactly("18:00, 3 at once", "18:40, 3 at once");
  }

  /** 80 points over 8 portions are 10 tenths of a degree each. */
  @Test
  void what_comes_too_cool_is_told_in_degrees_a_portion() {
    Plan cool = with(EARLY, Map.of("Pie", 80L, "Rice", 200L), 0, null);

    assertThat(row("Too cool or too warm", planned("warm", EARLY), planned("cool", cool)))
        .containsExactly("nothing", "Rice 2.5 degrees, Pie 1.0 degrees");
    assertThat(row("At the table", planned("warm", EARLY), planned("cool", cool)))
        .containsExactly("0", "280");
  }

  @Test
  void each_level_has_its_bound_and_where_none_is_proven_that_is_said() {
    Plan bounded = with(EARLY, Map.of("Pie", 1_200L), 34, new Bound(1_000, 5));

    assertThat(row("At the table, at least", planned("a", bounded), planned("b", LATE)))
        .containsExactly("1,000", "nothing");
    assertThat(row("Wishes, at least", planned("a", bounded), planned("b", LATE)))
        .containsExactly("5", "nothing");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "0, 40 | Better beyond doubt: no plan is as good with it as is.",
      "90, 60 | A tie, as far as proven: it is ahead as found, by 10 points at the table.",
      "100, 60 | A tie, as far as proven: it is ahead as found, by 20 points of wishes.",
      "100, 80 | A tie, as far as proven: as found, neither is ahead.",
      "100, 1080 | A tie, as far as proven: it is behind as found, by 1,000 points of wishes."})
  void better_is_said_only_of_what_is_beyond_doubt(String points, String sentence) {
    List<Long> all = Arrays.stream(points.split(", ")).map(Long::valueOf).toList();
    Plan first = with(EARLY, Map.of("Pie", 100L), 80, new Bound(90, 50));
    Plan other = with(EARLY, Map.of("Pie", all.getFirst()), all.getLast(), null);

    assertThat(said(planned("it as is", first), planned("other", other))).first().isEqualTo(sentence);
  }

  @Test
  void a_plan_that_no_plan_of_the_other_can_be_as_bad_as_is_worse_beyond_doubt() {
    Plan other = with(EARLY, Map.of("Pie", 100L), 80, new Bound(90, 50));

    assertThat(said(planned("two ovens", EARLY), planned("one", other))).first()
        .isEqualTo("Worse beyond doubt: no plan is as good as what was found with two ovens.");
  }

  @Test
  void that_it_fits_at_all_comes_first_and_is_all_that_is_said_of_a_gain() {
    assertThat(said(proven("one oven", EARLY.event()), planned("two", LATE))).containsExactly(
        "Better beyond doubt: it has a plan, and there is none with one oven.",
        "It buys a plan: with one oven there is none, proven.",
        "Nothing is short: the oven is busiest, in use 33 % of the last two hours.");
    assertThat(said(noneFound("one oven", EARLY), planned("two", LATE))).startsWith(
        "A tie, as far as proven: it is ahead, since no plan was found for the other.",
        "It buys a plan: with one oven there is none that was found.");
  }

  @Test
  void without_a_plan_the_reason_stands_in_its_place() {
    assertThat(said(planned("one", EARLY), proven("two", EARLY.event()))).containsExactly(
        "Worse beyond doubt: there is no plan.",
        "What must be done one after the other takes longer than there is.");
    assertThat(said(noneFound("one", EARLY), proven("two", EARLY.event()))).startsWith(
        "A tie, as far as proven: no plan was found for either.", "It buys no plan either.");
    assertThat(of(noneFound("one", EARLY), planned("two", LATE)).said()).extracting(Said::name)
        .containsExactly("one", "two");
  }

  @Test
  void gains_are_told_in_order_and_then_what_they_cost() {
    Plan first = with(EARLY, Map.of("Pie", 240L, "Rice", 40L), 100, null);
    Plan other = with(LATE, Map.of("Rice", 160L), 60, null);

    assertThat(said(planned("sooner", first), planned("later", other)).get(1)).isEqualTo(
        "It saves 40 min on the day, 3.0 degrees at the table (Pie) and 40 points of wishes,"
            + " and costs 1.5 degrees at the table (Rice) and 5 min of hands in the last hour.");
  }

  /** 5 min, a degree, 0.3 kWh and 10 points are worth saying, and nothing less is. */
  @Test
  void where_nothing_is_worth_saying_there_is_no_talk_of_gain() {
    Plan other = with(pie(at("17:34"), at("18:04")), Map.of(), 9, null);

    assertThat(said(planned("one", with(EARLY, Map.of("Pie", 72L), 18, null)), planned("two", other)).get(1))
        .isEqualTo("It buys nothing worth saying.");
    assertThat(said(planned("one", with(EARLY, Map.of("Pie", 80L), 19, null)), planned("two", other)).get(1))
        .isEqualTo("It saves 1.0 degrees at the table (Pie) and 10 points of wishes.");
  }

  @Test
  void energy_is_saved_by_an_oven_that_is_on_for_less() {
    Plan longer = HandPlan.forProblem(Sides.PIE)
        .run("Pie/bake", at("17:30"), run -> run.minutes(80))
        .run("Rice/cook", at("18:00"))
        .plan();

    assertThat(said(planned("longer", longer), planned("shorter", EARLY)).get(1))
        .matches("It saves 0\\.\\d kWh\\.");
  }

  @Test
  void what_is_short_is_said_with_how_busy_it_is_and_whether_it_was_before() {
    String busy = Sides.PIE.replace("hands: {first: 5 min}", "hands: throughout");
    Plan other = HandPlan.forProblem(busy).run("Pie/bake", at("17:30")).run("Rice/cook", at("18:15")).plan();
    Plan alone = HandPlan.forProblem(busy.replace("takes: 40 min", "takes: 80 min"))
        .run("Pie/bake", at("17:20"))
        .run("Rice/cook", at("18:40"))
        .plan();

    assertThat(said(planned("one", other), planned("two", alone)).getLast())
        .isEqualTo("Hands are now the limit: busy 75 % of the last two hours.");
    assertThat(said(planned("one", EARLY), planned("two", alone)).getLast())
        .isEqualTo("Hands are now the limit: busy 75 % of the last two hours.");
  }

  @Test
  void another_number_of_portions_is_told() {
    Plan more = HandPlan.forProblem(Sides.PIE.replace("guests: 8", "guests: 12"))
        .run("Pie/bake", at("17:30"))
        .run("Rice/cook", at("18:00"))
        .plan();

    assertThat(of(planned("8", EARLY), planned("12", more)).cautions()).singleElement()
        .asString()
        .contains("for how many, is not the same");
    assertThat(of(planned("8", EARLY), planned("12", more)).what()).isEmpty();
    assertThat(of(planned("a", EARLY), planned("b", LATE)).cautions()).isEmpty();
    assertThat(of(planned("a", EARLY), planned("b", LATE)).what()).startsWith("8 guests. ");
  }
}
