package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.TWO;
import static ovenloom.cli.sheet.SheetLines.lines;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.plan.Where;

/** What a cook reads of where food is taken from, and where it goes. */
class WhereFoodGoesTest {

  private static final String TWO_COLD_PIES = """
      dishes:
        - dish: Pie
          portions: 4
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {counter: 8 h}}
            - {do: chill, takes: 60 min, together: 2, cold: fridge, keeps: {fridge: 2 days}}
            - {do: bake, takes: 45 min, together: 2, bake: {at: 180 C}}
      """;

  private static final String CAKE = """
      dishes:
        - dish: Cake
          steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: dish, keeps: {counter: 2 h}}]
      """;

  private static final String TWO_TRAYS = """
      dishes:
        - dish: Rolls
          portions: 4
          steps: [{do: bake, takes: 20 min, bake: {at: 200 C}, in: tray}]
      """;

  private static Where shelf(String name) {
    return new Where.OnShelf("fridge", List.of(name));
  }

  private static HandPlan chilled() {
    return HandPlan.forProblem(KITCHEN + HOST + TWO_COLD_PIES)
        .run("Pie/fill", at("10:00"))
        .run("Pie/fill", at("10:20"), run -> run.batches(2, 2))
        .run("Pie/chill", at("11:00"), run -> run.batches(1, 2).shelves(0, 1));
  }

  private static HandPlan chilledAndBaked() {
    return chilled().run("Pie/bake", at("18:15"), run -> run.batches(1, 2).racks(0, 1));
  }

  @Test
  void batches_that_stay_each_on_its_own_shelf_are_not_moved_when_they_are_cold() {
    var lines = lines(chilledAndBaked().batchWaits(1, "Pie/chill", shelf("top"), at("18:15"))
        .batchWaits(2, "Pie/chill", shelf("low"), at("18:15"))
        .plan());

    assertThat(lines).contains("11:00 | Pie | Both batches. Into the fridge, top and low shelves (2 x dish)."
        + " Chill until 12:00. Stays there until 18:15.");
    assertThat(lines).noneMatch(line -> line.startsWith("12:00"));
  }

  @Test
  void of_batches_that_stay_for_different_times_each_time_is_told() {
    var lines = lines(chilled().run("Pie/bake", at("17:15"))
        .run("Pie/bake", at("18:15"), run -> run.batches(2, 2))
        .batchWaits(1, "Pie/chill", shelf("top"), at("17:15"))
        .batchWaits(2, "Pie/chill", shelf("low"), at("18:15"))
        .plan());

    assertThat(lines).anyMatch(line -> line.startsWith("11:00 | Pie | Both batches.")
        && line.endsWith("Stays there: batch 1 until 17:15; batch 2 until 18:15."));
  }

  @Test
  void food_that_goes_to_another_shelf_of_the_same_fridge_is_not_taken_out_of_it() {
    var lines = lines(chilledAndBaked().batchWaits(1, "Pie/chill", shelf("low"), at("18:15"))
        .batchWaits(2, "Pie/chill", shelf("low"), at("18:15"))
        .plan());

    assertThat(lines)
        .contains("12:00 | Pie | Batch 1 of 2. In the fridge, from top shelf to low shelf, until 18:15.")
        .noneMatch(line -> line.startsWith("12:00 | Pie | Batch 2"));
  }

  @Test
  void where_batches_come_from_several_places_each_is_told() {
    var lines = lines(chilledAndBaked().batchWaits(1, "Pie/chill", shelf("top"), at("18:15")).plan());

    assertThat(lines).contains("18:15 | Pie | Both batches. Out of the fridge, top shelf: batch 1."
        + " From the counter: batch 2. Into the oven (2 x dish): both racks, 180 C. Out at 19:00.");
  }

  @Test
  void of_the_shelves_of_one_run_each_batch_is_taken_from_its_own() {
    var lines = lines(chilled().run("Pie/bake", at("12:00"))
        .run("Pie/bake", at("18:15"), run -> run.batches(2, 2))
        .batchWaits(2, "Pie/chill", shelf("low"), at("18:15"))
        .plan());

    assertThat(lines)
        .anyMatch(line -> line.startsWith("12:00 | Pie | Batch 1 of 2. Out of the fridge, top shelf. Into"))
        .anyMatch(line -> line.startsWith("18:15 | Pie | Batch 2 of 2. Out of the fridge, low shelf. Into"));
  }

  @Test
  void batches_taken_off_several_shelves_for_one_place_are_one_line() {
    var lines = lines(chilledAndBaked().batchWaits(1, "Pie/chill", new Where.Counter(), at("18:15"))
        .batchWaits(2, "Pie/chill", new Where.Counter(), at("18:15"))
        .plan());

    assertThat(lines)
        .contains("12:00 | Pie | Both batches. Out of the fridge, top and low shelves. Onto the counter until"
            + " 18:15.");
  }

  @Test
  void a_shelf_is_emptied_before_it_is_filled_in_the_same_minute() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Cream
            steps: [{do: whip, takes: 10 min, hands: throughout, in: pot, keeps: {fridge: 8 h}}]
          - dish: Pie
            steps:
              - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {fridge: 8 h}}
              - {do: glaze, takes: 10 min, hands: throughout, keeps: {counter: 8 h}}
        """)
        .run("Cream/whip", at("14:50"))
        .waits("Cream/whip", shelf("top"), at("19:00"))
        .run("Pie/fill", at("11:00"))
        .waits("Pie/fill", shelf("top"), at("15:00"))
        .run("Pie/glaze", at("15:00"))
        .plan());

    assertThat(lines).containsSubsequence(
        "15:00 | Pie | Out of the fridge, top shelf. Glaze: 10 min, until 15:10. On the counter until 19:00.",
        "15:00 | Cream | Into the fridge, top shelf, until 19:00.");
  }

  @Test
  void an_oven_is_emptied_before_it_is_filled_in_the_same_minute() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + CAKE + """
          - dish: Tart
            steps: [{do: bake, takes: 30 min, bake: {at: 200 C}, in: tray}]
        """).run("Cake/bake", at("18:00")).run("Tart/bake", at("18:30")).plan());

    assertThat(lines).containsSubsequence("18:30 | Cake | Out of the oven. Onto the counter until 19:00.",
        "18:30 | Tart | Into the oven (tray): lower rack, 200 C. Out at 19:00.");
  }

  @Test
  void what_comes_out_as_something_else_goes_in_is_told_to_come_out_then() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + CAKE + """
          - dish: Tart
            steps: [{do: bake, takes: 30 min, bake: {at: 200 C}, in: tray}]
        """).run("Cake/bake", at("18:00")).run("Tart/bake", at("18:29"), run -> run.racks(1)).plan());

    assertThat(lines).anyMatch(line -> line.startsWith("18:00 | Cake") && line.contains("Out at 18:29."))
        .anyMatch(line -> line.startsWith("18:29 | Cake | Out of the oven."));
  }

  @Test
  void trays_put_in_by_the_same_hands_in_the_same_minute_are_one_line() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + TWO_TRAYS)
        .run("Rolls/bake", at("18:40"), run -> run.racks(1))
        .run("Rolls/bake", at("18:40"), run -> run.batches(2, 2))
        .plan());

    assertThat(lines).contains(
        "18:40 | Rolls | Both batches. Into the oven (2 x tray): both racks, 200 C. Out at 19:00.",
        "19:00 | Rolls | Both batches. Out of the oven. To the table (2 x tray).");
  }

  @Test
  void what_comes_out_of_the_oven_waits_for_the_shelf_it_goes_onto() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Cake
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: dish, keeps: {fridge: 8 h}}]
          - dish: Soup
            steps:
              - {do: blend, takes: 10 min, hands: throughout, in: pot, keeps: {fridge: 8 h}}
              - {do: warm, takes: 60 min, burner: large}
          - dish: Cream
            steps: [{do: whip, takes: 10 min, hands: throughout, in: tray, keeps: {fridge: 8 h}}]
        """)
        .run("Cake/bake", at("17:30"))
        .waits("Cake/bake", shelf("top"), at("19:00"))
        .run("Soup/blend", at("10:00"))
        .waits("Soup/blend", shelf("low"), at("18:00"))
        .run("Soup/warm", at("18:00"))
        .run("Cream/whip", at("11:00"))
        .waits("Cream/whip", shelf("top"), at("18:00"), shelf("low"), at("19:00"))
        .plan());

    assertThat(lines).containsSubsequence(
        "18:00 | Soup | Out of the fridge, low shelf. Onto a large burner (pot). Warm until 19:00.",
        "18:00 | Cream | In the fridge, from top shelf to low shelf, until 19:00.",
        "18:00 | Cake | Out of the oven. Into the fridge, top shelf, until 19:00. It goes in hot: leave it uncovered, with air"
            + " around it.");
  }

  @Test
  void food_that_goes_into_another_dish_is_named_there() {
    var lines = lines(HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Sauce
                    steps: [{do: whisk, takes: 10 min, hands: throughout, in: pot, keeps: {fridge: 8 h}}]
                  - dish: Beans
                    steps: [{do: trim, takes: 10 min, hands: throughout, in: dish, keeps: {counter: 8 h}}]
                  - dish: Fish
                    steps:
                      - {do: poach, takes: 10 min, hands: throughout, in: tray, keeps: {counter: 8 h}}
                      - {do: plate, takes: 10 min, hands: throughout, in: platter, uses: {Sauce/whisk: {}, Beans/trim: {}}}
                """)
        .run("Sauce/whisk", at("10:00"))
        .waits("Sauce/whisk", shelf("top"), at("18:50"))
        .run("Beans/trim", at("18:00"))
        .run("Fish/poach", at("18:40"))
        .run("Fish/plate", at("18:50"))
        .plan());

    assertThat(lines).contains("18:50 | Fish | Out of the fridge, top shelf: Sauce. Plate (platter): 10 min,"
        + " until 19:00. With Sauce and Beans.");
  }

  @Test
  void trays_that_several_cooks_take_out_are_put_in_together() {
    var lines = lines(HandPlan.forProblem(KITCHEN + TWO + TWO_TRAYS)
        .run("Rolls/bake", at("18:40"), run -> run.racks(1).takenOutBy("Jonas"))
        .run("Rolls/bake", at("18:40"), run -> run.batches(2, 2))
        .plan());

    assertThat(lines).contains(
        "18:40 | Mira | Rolls | Both batches. Into the oven (2 x tray): both racks, 200 C. Out at 19:00.",
        "19:00 | Jonas | Rolls | Batch 1 of 2. Out of the oven. To the table (tray).");
  }

  @Test
  void runs_put_onto_a_shelf_together_may_be_wanted_at_different_times() {
    var lines = lines(
        HandPlan.forProblem(KITCHEN + HOST + TWO_COLD_PIES.replace("60 min, together: 2", "60 min"))
            .run("Pie/fill", at("10:00"))
            .run("Pie/fill", at("10:20"), run -> run.batches(2, 2))
            .run("Pie/chill", at("11:00"))
            .run("Pie/chill", at("11:00"), run -> run.batches(2, 2))
            .run("Pie/bake", at("17:15"))
            .run("Pie/bake", at("18:15"), run -> run.batches(2, 2))
            .batchWaits(1, "Pie/chill", shelf("top"), at("17:15"))
            .batchWaits(2, "Pie/chill", shelf("top"), at("18:15"))
            .plan());

    assertThat(lines)
        .contains("11:00 | Pie | Both batches. Into the fridge, top shelf (2 x dish). Chill until"
            + " 12:00. Stays there: batch 1 until 17:15; batch 2 until 18:15.");
  }

  @Test
  void trays_on_one_rack_stand_side_by_side() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + TWO_TRAYS)
        .run("Rolls/bake", at("18:40"))
        .run("Rolls/bake", at("18:40"), run -> run.batches(2, 2))
        .plan());

    assertThat(lines).contains("18:40 | Rolls | Both batches. Into the oven (2 x tray): side by side on the"
        + " lower rack, 200 C. Out at 19:00.");
  }

  @Test
  void food_that_changes_its_pan_on_the_way_into_the_oven_is_told_from_which() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Potatoes
            steps:
              - {do: parboil, takes: 20 min, burner: large, in: pot}
              - {do: roast, takes: 40 min, bake: {at: 200 C}, in: tray}
        """).run("Potatoes/parboil", at("18:00")).run("Potatoes/roast", at("18:20")).plan());

    assertThat(lines).contains("18:20 | Potatoes | Off the burner. From the pot into the tray. Into the oven:"
        + " lower rack, 200 C. Out at 19:00.");
  }

  @Test
  void what_a_file_says_is_cold_or_frozen_comes_out_of_the_cold() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Duck
            steps: [{do: thaw, takes: 9 h, cold: fridge, in: dish, starts: frozen}]
          - dish: Fish
            steps: [{do: season, takes: 10 min, hands: throughout, in: tray, starts: chilled}]
          - dish: Rice
            steps: [{do: rinse, takes: 10 min, hands: throughout, in: pot, starts: rested}]
        """)
        .run("Duck/thaw", at("10:00"))
        .run("Fish/season", at("18:40"))
        .run("Rice/rinse", at("18:50"))
        .plan());

    assertThat(lines).contains(
        "10:00 | Duck | Out of the freezer. Into the fridge, top shelf (dish). Thaw until 19:00.",
        "18:40 | Fish | Out of the fridge. Season (tray): 10 min, until 18:50. On the counter until 19:00.",
        "18:50 | Rice | Rinse (pot): 10 min, until 19:00.");
  }

  @Test
  void what_is_bought_cold_comes_from_the_shop_and_out_of_no_fridge() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Cheese
            steps: [{do: buy, takes: 45 min, hands: throughout, starts: chilled}]
        """).run("Cheese/buy", at("18:15")).plan());

    assertThat(lines).contains("18:15 | Cheese | Buy: 45 min, until 19:00.");
  }

  @Test
  void what_rests_by_itself_has_one_end_which_is_when_it_is_taken() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Loaf
            steps:
              - {do: prove, takes: 60 min, in: tray}
              - {do: bake, takes: 30 min, bake: {at: 200 C}}
        """).run("Loaf/prove", at("17:20")).run("Loaf/bake", at("18:30")).plan());

    assertThat(lines).contains("17:20 | Loaf | Prove (tray) until 18:30.");
  }

  @Test
  void an_oven_is_opened_once_for_what_comes_out_in_its_last_minute_and_for_what_goes_in() {
    var plan = HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Rolls
            portions: 4
            steps:
              - {do: bake, takes: 20 min, in: tray, bake: {at: 200 C}, core: 95 C, keeps: {counter: 1 h}}
        """)
        .run("Rolls/bake", at("18:01"))
        .run("Rolls/bake", at("18:20"), run -> run.batches(2, 2).racks(1));

    assertThat(lines(plan.plan())).containsSubsequence(
        "18:20 | Rolls | Batch 1 of 2. Probe the middle: 95 C or more. If it is less, leave it in and probe again every"
            + " 5 min.",
        "18:20 | Rolls | Batch 1 of 2. Out of the oven. Onto the counter until 19:00.",
        "18:20 | Rolls | Batch 2 of 2. Into the oven (tray): upper rack, 200 C. Out at 18:40, at 95 C inside.");
  }

  @Test
  void pans_that_go_into_a_machine_are_said_to_go_into_it() {
    var lines = lines(HandPlan.forProblem(KITCHEN + "  appliances: {kettle: 1}\n" + HOST + """
        dishes:
          - dish: Leeks
            steps: [{do: blanch, takes: 20 min, appliance: kettle, in: tray}]
        """).run("Leeks/blanch", at("18:40")).plan());

    assertThat(lines).contains("18:40 | Leeks | Into the kettle, in tray. Blanch until 19:00.");
  }

  @Test
  void what_is_carved_at_the_table_time_goes_to_the_table_when_it_is() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Ham
            steps: [{do: carve, takes: 10 min, hands: throughout, in: platter, serve: yes}]
        """).run("Ham/carve", at("19:00")).plan());

    assertThat(lines).contains("19:00 | Ham | Carve (platter): 10 min, until 19:10. To the table.");
  }

  @Test
  void a_share_left_for_other_batches_says_in_what_and_for_which() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Cream
            portions: 4
            steps:
              - {do: boil, once: yes, takes: 10 min, burner: large, in: pot, keeps: {counter: 1 h}}
              - {do: pour, takes: 5 min, hands: throughout, in: tray, keeps: {counter: 1 h}}
        """)
        .run("Cream/boil", at("18:00"))
        .run("Cream/pour", at("18:10"))
        .run("Cream/pour", at("18:20"), run -> run.batches(2, 2))
        .plan());

    assertThat(lines).contains(
        "18:10 | Cream | Pot with what is left in it: onto the counter until 18:20, for batch 2.");
  }

  @Test
  void meat_that_is_roasted_is_turned_or_basted_and_what_else_is_roasted_is_turned() {
    var lines = lines(HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Lamb
                    tags: [raw meat]
                    steps: [{do: roast, takes: 60 min, bake: {at: 180 C}, in: dish, hands: [{at: 20 min, for: 2 min}]}]
                  - dish: Roots
                    steps: [{do: roast, takes: 30 min, bake: {at: 180 C}, in: dish, hands: [{at: 10 min, for: 2 min}]}]
                  - dish: Tart
                    steps: [{do: bake blind, takes: 60 min, bake: {at: 180 C}, in: tray, hands: [{at: 40 min, for: 2 min}]}]
                """)
        .run("Lamb/roast", at("18:00"))
        .run("Roots/roast", at("18:30"))
        .run("Tart/bake blind", at("18:00"), run -> run.racks(1))
        .plan());

    assertThat(lines).contains("18:20 | Lamb | Turn or baste: 2 min.",
        "18:40 | Roots | Turn: 2 min.",
        "18:40 | Tart | Bake blind: hands-on until 18:42.");
  }

  @Test
  void a_course_of_which_nothing_is_made_here_is_named_and_no_more() {
    var soup = KITCHEN.replace("[{name: supper",
        "[{name: soup, at: 2026-10-10 18:30}, {name: supper");

    var lines = lines(
        HandPlan.forProblem(soup + HOST + CAKE.replace("dish: Cake\n", "dish: Cake\n    course: supper\n"))
            .run("Cake/bake", at("18:30"))
            .plan());

    assertThat(lines).contains(
        "8 guests. Saturday 10 October 2026: supper at 19:00. Nothing is made here for soup at 18:30.")
        .anyMatch(line -> line.startsWith("19:00 | SUPPER"))
        .noneMatch(line -> line.contains("SOUP"));
  }

  @Test
  void what_is_stirred_in_ice_is_covered_when_it_comes_out() {
    assertThat(inIce(", hands: [{at: 10 min, for: 1 min}]"))
        .anyMatch(line -> line.contains("Into the ice bath") && line.endsWith(" Cover it when it comes out."))
        .noneMatch(line -> line.contains("Cover it."));
    assertThat(inIce(""))
        .anyMatch(line -> line.contains("Into the ice bath") && line.endsWith(" Cover it."));
  }

  private static final String GOES_IN_HOT = "It goes in hot: ";

  private static List<String> stew(String kitchen, String more, int chilled) {
    return lines(HandPlan.forProblem(kitchen + HOST + """
        dishes:
          - dish: Stew
            arrives: cold
            steps:
              - {do: boil, takes: 30 min, burner: small, in: pot, keeps: {counter: 4 h}}
              - {do: chill, takes: 60 min, cold: fridge%s, keeps: {fridge: 1 day}}
        """.formatted(more))
        .run("Stew/boil", at("9:30"))
        .run("Stew/chill", chilled)
        .waits("Stew/chill", shelf("top"), at("19:00"))
        .plan());
  }

  /** FDA Food Code 3-501.15: set apart so that heat flows, and loosely covered or uncovered. */
  @Test
  void what_goes_in_hot_is_said_to_and_stands_open_with_air_around_it() {
    assertThat(stew(KITCHEN, "", at("10:00")))
        .contains("10:00 | Stew | Off the burner. Into the fridge, top shelf"
            + " (pot). Chill until 11:00. Stays there until 19:00. It goes in hot: leave it uncovered, with air around it.");
    assertThat(stew(KITCHEN, ", covered: yes", at("10:00")))
        .anyMatch(line -> line.endsWith(" Cover it. It goes in hot: leave air around it."));
  }

  @Test
  void what_has_cooled_on_the_counter_and_what_a_blast_chiller_cools_need_no_such_words() {
    String chiller = KITCHEN.replace("holds: 4 C,", "holds: 4 C, air: blast,");

    assertThat(stew(KITCHEN, "", at("13:50"))).noneMatch(line -> line.contains(GOES_IN_HOT));
    assertThat(stew(chiller, "", at("10:00"))).noneMatch(line -> line.contains(GOES_IN_HOT));
  }

  private static List<String> inIce(String stirred) {
    var plan = HandPlan
        .forProblem(
            KITCHEN.replace("cold: [",
                "cold: [{name: ice bath, holds: 1 C, air: ice water, shelves: {size: 50 x 40 x 25 cm}}, ")
                + HOST + """
                    dishes:
                      - dish: Soup
                        arrives: cold
                        steps:
                          - {do: boil, takes: 30 min, burner: small, in: pot}
                          - {do: chill, takes: 30 min, cold: ice bath, covered: yes%s, keeps: {fridge: 1 day}}
                    """.formatted(stirred))
        .run("Soup/boil", at("15:00"))
        .run("Soup/chill", at("15:30"))
        .waits("Soup/chill", shelf("top"), at("19:00"))
        .plan();
    return lines(plan);
  }
}
