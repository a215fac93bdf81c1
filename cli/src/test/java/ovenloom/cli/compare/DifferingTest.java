package ovenloom.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.compare.Sides.pie;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.plan.Plan;

class DifferingTest {

  private static final Plan PIE = pie(at("17:30"), at("18:00"));

  private static final String BREAD = SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: Bread
          portions: 4
          steps: [{do: bake, takes: 30 min, bake: {at: 220 C}, in: tray, hands: {first: 5 min}}]
      """;

  private static List<String> told(Plan... plans) {
    return Differing.of(List.of(plans)).stream().map(DifferingTest::told).toList();
  }

  private static String told(Differing each) {
    return each.name() + " | "
        + String.join(" | ", each.doings().stream().map(DifferingTest::words).toList());
  }

  private static String words(@Nullable Doing doing) {
    return doing == null ? "-"
        : String.join("; ", doing.beside(null).stream().map(Doing.Part::words).toList());
  }

  @Test
  void of_the_same_plan_nothing_differs() {
    assertThat(told(PIE, PIE)).isEmpty();
    assertThat(told(PIE)).isEmpty();
  }

  @Test
  void another_start_differs_by_a_minute_and_what_is_the_same_is_left_out() {
    assertThat(told(PIE, pie(at("17:31"), at("18:00"))))
        .containsExactly("Pie: bake | 17:30; oven, 200 C; Host | 17:31; oven, 200 C; Host");
  }

  @Test
  void they_come_in_the_order_of_the_first_plan() {
    assertThat(Differing.of(List.of(pie(at("18:10"), at("17:50")), PIE))).extracting(Differing::dish)
        .containsExactly("Rice", "Pie");
  }

  @Test
  void another_mark_burner_or_cook_differs() {
    String other = Sides.PIE.replace("at: 200 C", "at: 180 C")
        .replace("[large, small]", "[medium, small]")
        .replace("name: Host", "name: Guest");
    Plan plan = HandPlan.forProblem(other).run("Pie/bake", at("17:30")).run("Rice/cook", at("18:00")).plan();

    assertThat(told(PIE, plan)).containsExactly(
        "Pie: bake | 17:30; oven, 200 C; Host | 17:30; oven, 180 C; Guest",
        "Rice: cook | 18:00; a large burner; Host | 18:00; a medium burner; Guest");
  }

  @Test
  void what_one_plan_alone_has_is_not_done_in_the_other() {
    Plan rice = HandPlan.forProblem(Sides.PIE.replaceAll("(?s)  - dish: Pie.*", ""))
        .run("Rice/cook", at("18:00"))
        .plan();

    assertThat(told(PIE, rice)).containsExactly("Pie: bake | 17:30; oven, 200 C; Host | -");
    assertThat(told(rice, PIE)).containsExactly("Pie: bake | - | 17:30; oven, 200 C; Host");
  }

  @Test
  void batches_that_are_done_alike_are_told_together() {
    Plan together = HandPlan.forProblem(BREAD)
        .run("Bread/bake", at("18:00"), run -> run.batches(1, 2))
        .plan();
    Plan apart = HandPlan.forProblem(BREAD)
        .run("Bread/bake", at("18:00"), run -> run.batches(1, 1))
        .run("Bread/bake", at("18:30"), run -> run.batches(2, 2))
        .plan();
    Plan sooner = HandPlan.forProblem(BREAD).run("Bread/bake", at("17:55"), run -> run.batches(1, 2)).plan();

    assertThat(told(together, apart))
        .containsExactly("Bread: bake, batch 2 | 18:00; oven, 220 C; Host | 18:30; oven, 220 C; Host");
    assertThat(told(together, sooner))
        .containsExactly(
            "Bread: bake, batches 1 and 2 | 18:00; oven, 220 C; Host | 17:55; oven, 220 C; Host");
  }

  @Test
  void what_is_other_than_in_the_first_plan_is_known() {
    Differing pie = Differing.of(List.of(PIE, pie(at("17:31"), at("18:00")))).getFirst();
    Doing first = pie.doings().getFirst();
    Doing other = pie.doings().getLast();

    assertThat(other).isNotNull();
    assertThat(other.beside(first)).extracting(Doing.Part::isOther).containsExactly(true, false, false);
    assertThat(other.beside(null)).extracting(Doing.Part::isOther).containsExactly(false, false, false);
  }
}
