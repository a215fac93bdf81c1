package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/** Which pictures a plan has, and of when. */
class PicturesTest {

  private static List<String> pictures(Plan plan) {
    return Pictures.of(plan)
        .stream()
        .map(picture -> picture.name() + " " + picture.screen().window().when().from() + "-"
            + picture.screen().window().when().to())
        .toList();
  }

  /** Two batches set on the day before from 22:00 to 2:00, and stay where they are, batch by batch, until supper at 19:00. */
  private static Plan creams() {
    Where shelf = new Where.OnShelf("fridge", List.of("top"));
    return HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Creams
            portions: 4
            arrives: cold
            steps:
              - {do: set, takes: 4 h, cold: fridge, in: tray, together: 2, keeps: {fridge: 2 days}}
        """)
        .run("Creams/set", at("22:00") - 1440, run -> run.batches(1, 2))
        .batchWaits(1, "Creams/set", shelf, at("19:00"))
        .batchWaits(2, "Creams/set", shelf, at("19:00"))
        .plan();
  }

  @Test
  void a_day_begins_when_somebody_does_something_and_not_in_the_night_when_food_has_set_by_itself() {
    assertThat(pictures(creams())).containsExactly("last-hours 990-1170", "day-2026-10-09 -120--90");
  }
}
