package ovenloom.cli.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.menu.Batches;
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

  @Test
  void a_bowl_is_out_of_use_as_soon_as_its_food_is_in_the_pot_however_long_it_simmers() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Soup
            steps:
              - {do: soak, takes: 30 min, in: dish}
              - {do: simmer, takes: 60 min, burner: large, in: pot, hands: {first: 5 min}}
          - dish: Jelly
            steps:
              - {do: stir, takes: 10 min, hands: throughout, in: tray}
              - {do: set, takes: 30 min, in: platter, after: stir}
        """)
        .run("Soup/soak", at("17:00"))
        .run("Soup/simmer", at("17:40"))
        .run("Jelly/stir", at("17:00"))
        .run("Jelly/set", at("17:20"))
        .plan();

    assertThat(lane(plan, "dish")).as("until who pours has done so")
        .containsExactly("FULL 1020-1065 Soup/soak row 0");
    assertThat(lane(plan, "tray")).as("nobody's hands are asked for")
        .containsExactly("FULL 1020-1040 Jelly/stir row 0");
  }

  @Test
  void a_tray_is_in_use_until_all_that_is_shaped_is_off_it() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Buns
            steps:
              - {do: prove, takes: 30 min, in: dish}
              - {do: shape, takes: 20 min, hands: throughout, in: tray}
        """).run("Buns/prove", at("17:00")).run("Buns/shape", at("17:30")).plan();

    assertThat(lane(plan, "dish")).containsExactly("FULL 1020-1070 Buns/prove row 0");
  }

  @Test
  void batches_that_go_in_with_one_armful_are_one_box_in_a_cooks_hands_and_what_else_does_lies_beside_it() {
    var plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Buns
            portions: 4
            steps: [{do: bake, takes: 30 min, in: tray, bake: {at: 180 C}}]
          - {dish: Pie, steps: [{do: bake, takes: 50 min, in: dish, bake: {at: 180 C}}]}
        """)
        .run("Buns/bake", at("18:00"), run -> run.batches(1, 1).racks(0))
        .run("Buns/bake", at("18:00"), run -> run.batches(2, 2).racks(1))
        .run("Pie/bake", at("18:00"), run -> run.racks(1))
        .plan();

    assertThat(lane(plan, "Host")).containsExactly(
        "WORK 1080-1081 Buns/bake row 0", "WORK 1080-1081 Pie/bake row 1",
        "WORK 1109-1110 Buns/bake row 0", "WORK 1129-1130 Pie/bake row 0");
    assertThat(Lanes.of(plan)
        .stream()
        .filter(lane -> lane.name().equals("Host"))
        .flatMap(lane -> lane.boxes().stream())
        .map(Box::batches)).startsWith(new Batches(1, 2));
  }
}
