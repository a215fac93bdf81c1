package ovenloom.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Plan;

/** Which batches of a step an entry is of. */
class SomeTest {

  private static final Plan PLAN = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: Buns
          portions: 2
          steps:
            - {do: knead, once: yes, takes: 10 min, in: pot}
            - {do: glaze, takes: 10 min, in: tray, keeps: {counter: 2 h}}
      """)
      .run("Buns/knead", HandPlan.at("16:00"))
      .run("Buns/glaze", HandPlan.at("17:00"), run -> run.batches(1, 4))
      .plan();

  @ParameterizedTest
  @CsvSource({"glaze, 2, 2, ', batch 2 of 4'", "glaze, 2, 3, ', batches 2 and 3 of 4'",
      "glaze, 1, 3, ', batches 1 to 3 of 4'", "glaze, 1, 4, ''", "knead, 1, 4, ''"})
  void they_are_told_where_they_are_not_all(String step, int first, int last, String words) {
    assertThat(new Some(PLAN, "Buns", step, new Batches(first, last))).hasToString(words);
  }
}
