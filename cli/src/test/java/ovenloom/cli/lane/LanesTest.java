package ovenloom.cli.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

class LanesTest {

  private static final String GRATIN = SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: Gratin
          steps:
            - {do: slice, takes: 20 min, hands: throughout, in: dish}
            - {do: bake, takes: 40 min, bake: {at: 180 C}, after: slice}
      """;

  private static List<String> lane(Plan plan, String name) {
    return Lanes.of(plan)
        .stream()
        .filter(lane -> lane.name().equals(name))
        .flatMap(lane -> lane.boxes().stream())
        .map(LanesTest::words)
        .toList();
  }

  private static String words(Box box) {
    return box.use() + " " + box.when().from() + "-" + box.when().to() + " " + box.dish() + "/" + box.step()
        + " row "
        + box.row();
  }

  @Test
  void a_bake_is_on_its_racks_and_in_the_hands_of_who_loads_it() {
    var plan = HandPlan.forProblem(GRATIN)
        .run("Gratin/slice", at("17:00"))
        .run("Gratin/bake", at("17:20"), run -> run.racks(1))
        .plan();

    assertThat(lane(plan, "oven")).containsExactly("WORK 1040-1080 Gratin/bake row 0");
    assertThat(lane(plan, "Host")).contains("WORK 1020-1040 Gratin/slice row 0");
    assertThat(lane(plan, "dish")).as("until supper has been served")
        .containsExactly("FULL 1020-1160 Gratin/slice row 0");
  }

  @Test
  void two_on_one_rack_lie_above_each_other_and_below_what_is_on_the_next() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - {dish: Buns, steps: [{do: bake, takes: 30 min, in: tray, bake: {at: 180 C}}]}
          - {dish: Rolls, steps: [{do: bake, takes: 40 min, in: tray, bake: {at: 180 C}}]}
          - {dish: Pie, steps: [{do: bake, takes: 50 min, in: dish, bake: {at: 180 C}}]}
        """)
        .run("Pie/bake", at("18:00"), run -> run.racks(1))
        .run("Rolls/bake", at("18:10"), run -> run.racks(0))
        .run("Buns/bake", at("18:20"), run -> run.racks(0))
        .plan();

    assertThat(lane(plan, "oven")).containsExactly(
        "WORK 1080-1130 Pie/bake row 2", "WORK 1090-1130 Rolls/bake row 0", "WORK 1100-1130 Buns/bake row 1");
  }

  @Test
  void what_waits_on_a_shelf_is_there_as_long_as_it_waits() {
    var plan = HandPlan.forProblem(GRATIN)
        .run("Gratin/slice", at("15:00"))
        .waits("Gratin/slice", new Where.OnShelf("fridge", List.of("top")), at("17:20"))
        .run("Gratin/bake", at("17:20"))
        .plan();

    assertThat(lane(plan, "top")).containsExactly("WAIT 920-1040 Gratin/slice row 0");
    assertThat(lane(plan, "low")).isEmpty();
  }

  @Test
  void what_is_there_at_the_same_time_lies_in_rows_of_its_own() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Rice
            steps: [{do: cook, takes: 20 min, burner: small, in: pot}]
          - dish: Stew
            steps: [{do: simmer, takes: 60 min, burner: large, in: pot}]
        """)
        .run("Rice/cook", at("18:30"))
        .run("Stew/simmer", at("18:00"))
        .wash("pot", 2, at("19:30"), "Host")
        .plan();

    assertThat(lane(plan, "pot")).containsExactly(
        "FULL 1080-1160 Stew/simmer row 0", "FULL 1110-1160 Rice/cook row 1", "WASH 1170-1175 pot/ row 0");
    assertThat(lane(plan, "Host")).contains("WASH 1170-1175 pot/ row 0");
  }

  @Test
  void a_batch_more_in_the_same_pot_fills_it_once() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Soup
            portions: 4
            steps: [{do: simmer, takes: 60 min, burner: large, in: pot, together: 2, one vessel: yes}]
        """).run("Soup/simmer", at("18:00"), run -> run.batches(1, 2)).plan();

    assertThat(lane(plan, "pot")).containsExactly("FULL 1080-1160 Soup/simmer row 0");
  }
}
