package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Score;

class HowGoodTest {

  private static final String SUPPER = """
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2026-10-10 19:00}]
      cooks: [{name: Host, hours: {on the day: 8:00-20:00}}]
      dishes: [{dish: Bread, steps: [{do: slice, takes: 5 min, hands: throughout}]}]
      wishes: {calm: 3, energy: 0}
      """;

  private static List<String> goodness(Map<String, Long> atTheTable, Map<Wish, Long> points) {
    var weights = new Wishes(Map.of(Wish.CALM, 3, Wish.ENERGY, 0));
    var plan = HandPlan.forProblem(SUPPER)
        .run("Bread/slice", at("18:55"))
        .score(Score.of(0, atTheTable, points, weights, 12345))
        .plan();
    return RunSheet.of(plan, 400, false)
        .lines()
        .dropWhile(line -> !line.equals("How good it is"))
        .map(line -> line.replaceAll(" {2,}", " | "))
        .toList();
  }

  @Test
  void dishes_that_wait_for_the_table_are_named_with_what_they_lose() {
    assertThat(goodness(Map.of("Lamb", 1240L, "Beans", 60L, "Bread", 0L), Map.of()))
        .contains(
            "At the table | 1,300 | portions times tenths of a degree by which dishes are too cool, by longer waits than"
                + " their cards ask for, or too warm: Beans 60, Lamb 1,240.");
  }

  @Test
  void a_dish_that_cools_as_long_as_its_card_asks_costs_nothing_and_is_not_said_to_be_warm() {
    assertThat(goodness(Map.of(), Map.of()))
        .contains(
            "At the table | 0 | no points for dishes too cool, by longer waits than their cards ask for, or too warm.");
  }

  @Test
  void each_wish_shows_its_points_times_its_weight_and_those_of_no_weight_count_nothing() {
    var lines = goodness(Map.of(), Map.of(Wish.CALM, 400L, Wish.ENERGY, 50L, Wish.DIAL, 5L, Wish.STEADY, 0L));

    assertThat(lines).anyMatch(line -> line.startsWith("Wishes | 1,205 | "))
        .anyMatch(line -> line.startsWith(" | calm | 400 x 3 = 1,200 | "))
        .anyMatch(line -> line.startsWith(" | dial | 5 x 1 = 5 | "))
        .anyMatch(line -> line.startsWith(" | energy | 50 x 0 | "))
        .noneMatch(line -> line.contains("steady"))
        .anyMatch(line -> line.startsWith("Early | 12,345 | "));
  }

  @Test
  void what_a_plan_cannot_know_stands_under_it() {
    assertThat(goodness(Map.of(), Map.of()).getLast()).contains("temperatures are predicted",
        "probe thermometer",
        "Local food codes", "hot surfaces", "allergens");
  }
}
