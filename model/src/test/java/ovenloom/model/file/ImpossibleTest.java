package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Event;

/** What cannot be is told before any search, at its place, with names and figures. */
class ImpossibleTest {

  private static final String KITCHEN = """
      kitchen:
        ovens:
          - {name: oven, dial: 100 C to 250 C, racks: [{size: 46 x 37 cm, clear: 10 cm}, {size: 46 x 37 cm, clear: 15 cm}]}
        burners: [small, large]
        cold: [{name: larder, holds: 4 C, shelves: [{name: top, size: 40 x 30 x 12 cm}]}]
        hot: [{name: drawer, holds: 65 C, shelves: [{name: only, size: 50 x 40 x 6 cm}]}]
        vessels:
          tin: {count: 2, size: 30 x 20 x 8 cm}
          long tin: {count: 1, size: 50 x 20 x 8 cm}
          tall tin: {count: 1, size: 30 x 30 x 20 cm}
          pot: {count: 2, size: 25 x 25 x 30 cm, burner: large}
          crock: 1
          plate: 8
        circuits: {ring: 2 kW}
      """;

  @TempDir
  Path folder;

  @Test
  void a_ring_of_steps_is_written_out() {
    String said = soup("""
        - {do: chop, takes: 5 min, after: stir}
        - {do: stir, takes: 5 min}
        """);

    assertThat(said).contains("it.yaml:23:41: these steps wait for each other:"
        + " \"Soup/chop\" waits for \"Soup/stir\" waits for \"Soup/chop\"");
  }

  @Test
  void a_ring_may_go_through_two_dishes_and_is_told_once() {
    String said = said("""
        dishes:
          - dish: Stock
            steps: [{do: simmer, takes: 5 min, uses: Soup/chop}]
          - dish: Soup
            steps: [{do: chop, takes: 5 min, uses: Stock/simmer}]
        """);

    assertThat(said).containsOnlyOnce("wait for each other")
        .contains("\"Stock/simmer\" waits for \"Soup/chop\" waits for \"Stock/simmer\"");
  }

  @Test
  void a_step_that_waits_for_itself_is_a_ring_of_one() {
    assertThat(soup("- {do: chop, takes: 5 min, after: chop}\n")).contains("\"Soup/chop\" waits for itself");
  }

  @Test
  void a_bake_at_270_is_beyond_a_dial_to_250_and_one_at_252_is_not() {
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: {at: 270 C}}\n"))
        .contains("it.yaml:23:49: no oven has a mark at 270 C in mode \"still\"");
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: {at: 252 C}}\n")).isEmpty();
  }

  @Test
  void a_fan_bake_at_160_is_a_still_one_at_180_and_steam_is_nothing_else() {
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: {at: 240 C, mode: fan}}\n"))
        .contains("no oven has a mark");
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: {at: 230 C, mode: fan}}\n")).isEmpty();
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: {at: 180 C, mode: steam}}\n"))
        .contains("\"steam\"");
  }

  @Test
  void a_stage_no_oven_has_is_counted() {
    String said = soup("- {do: bake, takes: 9 min, in: tin, bake: [{at: 200 C, for: 5 min}, {at: 90 C}]}\n");

    assertThat(said).contains("no oven has a mark at 90 C in mode \"still\", as stage 2 asks");
  }

  @Test
  void stages_leave_a_minute_for_the_last_though_they_slip() {
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: [{at: 200 C, for: 12 min}, {at: 180 C}]}\n"))
        .contains("all stages but the last take 12 min of a step of 9 min");
    assertThat(notes("- {do: bake, takes: 9 min, in: tin, bake: [{at: 200 C, for: 11 min}, {at: 180 C}]}\n"))
        .contains("all stages but the last take 11 min of a step of 9 min");
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, bake: [{at: 200 C, for: 8 min}, {at: 180 C}]}\n"))
        .isEmpty();
    assertThat(soup(
        "- {do: bake, takes: 9 min, up to: 10 min, in: tin, bake: [{at: 200 C, for: 12 min}, {at: 180 C}]}\n"))
        .isEmpty();
  }

  @Test
  void a_bake_says_what_it_is_in_and_its_size_is_known() {
    assertThat(soup("- {do: bake, takes: 9 min, bake: {at: 180 C}}\n"))
        .contains("it.yaml:23:40: nothing says what this is baked in");
    assertThat(soup("- {do: bake, takes: 9 min, in: crock, bake: {at: 180 C}}\n"))
        .contains("nobody knows how large \"crock\" is");
  }

  @Test
  void a_bake_without_a_vessel_of_its_own_goes_on_in_the_one_before() {
    assertThat(
        soup("- {do: fill, takes: 5 min, in: long tin}\n- {do: bake, takes: 9 min, bake: {at: 180 C}}\n"))
        .contains("it.yaml:24:40: \"long tin\" (50 x 20 x 8 cm) fits on no rack");
  }

  @Test
  void a_tall_tin_closes_the_rack_above_and_so_fits_only_low() {
    assertThat(soup("- {do: bake, takes: 9 min, in: tall tin, bake: {at: 180 C, rack: high}}\n"))
        .contains("\"tall tin\" (30 x 30 x 20 cm) fits on no high rack");
    assertThat(soup("- {do: bake, takes: 9 min, in: tall tin, bake: {at: 180 C, rack: low}}\n")).isEmpty();
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, stands: 26 cm, bake: {at: 180 C}}\n"))
        .contains("stands 26 cm");
    assertThat(soup("- {do: bake, takes: 9 min, in: tin, stands: 25 cm, bake: {at: 180 C}}\n")).isEmpty();
  }

  @Test
  void a_batch_in_five_tins_does_not_go_into_an_oven_for_four() {
    String many = KITCHEN.replace("tin: {count: 2", "tin: {count: 9");

    assertThat(said(many, dish("- {do: bake, takes: 9 min, in: {tin: 5}, bake: {at: 180 C}}\n")))
        .contains("5 of \"tin\" at once fit into no oven");
    assertThat(said(many, dish("- {do: bake, takes: 9 min, in: {tin: 4}, bake: {at: 180 C}}\n"))).isEmpty();
  }

  @Test
  void a_pot_too_tall_for_the_larder_cannot_chill_there() {
    assertThat(soup("- {do: chill, takes: 9 min, in: pot, cold: larder}\n"))
        .contains("it.yaml:23:50: \"pot\" (25 x 25 x 30 cm) fits on no shelf of \"larder\"");
    assertThat(soup("- {do: chill, takes: 9 min, in: tin, cold: larder}\n")).isEmpty();
  }

  @Test
  void a_place_to_keep_that_is_too_small_is_a_note_while_another_will_do() {
    String steps = "- {do: boil, takes: 9 min, in: pot, keeps: {larder: 1 day, counter: 2 h}}\n";
    String later = "- {do: serve up, takes: 5 min, after: {boil: {least: 1 h}}}\n";

    Reading<Event> read = desk(KITCHEN, dish(steps + later)).read("it.yaml");

    assertThat(read).isInstanceOfSatisfying(Reading.Understood.class, fine -> {
      List<?> notes = fine.notes();
      assertThat(notes).singleElement().asString().contains("NoShelf[vessel=pot");
    });
  }

  @Test
  void a_gap_longer_than_food_keeps_where_it_fits_is_a_mistake() {
    String boil = "- {do: boil, takes: 9 min, in: pot, keeps: {larder: 1 day, counter: 2 h}}\n";

    assertThat(soup(boil + "- {do: serve up, takes: 5 min, after: {boil: {least: 3 h}}}\n")).contains(
        "what \"boil\" makes must wait at least 3 h and keeps 2 h 15 min at most (its vessel does not fit into \"larder\")");
    assertThat(
        soup(boil.replace("pot", "tin") + "- {do: serve up, takes: 5 min, after: {boil: {least: 3 h}}}\n"))
        .isEmpty();
    assertThat(soup("- {do: rub, takes: 5 min}\n- {do: fry, takes: 5 min, after: {rub: {least: 16 min}}}\n"))
        .contains("keeps 15 min at most");
  }

  @Test
  void two_pots_that_need_large_burners_need_two_of_them() {
    assertThat(soup("- {do: boil, takes: 9 min, burner: small, in: {pot: 2}}\n"))
        .contains("it.yaml:23:42: this needs 2 burners of size \"large\" or larger, and there is 1");
    assertThat(soup("- {do: boil, takes: 9 min, burner: small, in: pot}\n")).isEmpty();
    assertThat(soup("- {do: boil, takes: 9 min, burner: medium}\n")).isEmpty();
  }

  @Test
  void a_pot_and_a_crock_need_one_large_burner_between_them() {
    assertThat(soup("- {do: boil, takes: 9 min, burner: small, in: [pot, crock]}\n")).isEmpty();
    assertThat(soup("- {do: boil, takes: 9 min, burner: small, in: [pot, crock, tin]}\n"))
        .contains("this needs 3 burners of size \"small\" or larger, and there are 2");
  }

  @Test
  void work_is_no_longer_than_anyone_is_there_without_a_break() {
    String said = said(KITCHEN.replace("kitchen:", "clock: 5 min\nkitchen:"),
        dish("- {do: peel, takes: 301 min, hands: throughout}\n"));

    assertThat(said).contains("this needs hands for 5 h 1 min, and nobody works for longer than 5 h on end");
    assertThat(soup("- {do: peel, takes: 300 min, hands: throughout}\n")).isEmpty();
  }

  @Test
  void a_break_cuts_a_cooks_hours_in_two() {
    String host = Desktop.SUPPER.replace("14:00-20:00}", "14:00-20:00}, breaks: {on the day: 16:00-16:30}");

    assertThat(
        desk(host + KITCHEN, dish("- {do: peel, takes: 151 min, hands: throughout}\n")).mistakes("it.yaml"))
        .contains("longer than 2 h 30 min on end");
    assertThat(
        desk(host + KITCHEN, dish("- {do: peel, takes: 150 min, hands: throughout}\n")).mistakes("it.yaml"))
        .isEmpty();
  }

  @Test
  void two_cooks_together_are_there_only_while_both_are() {
    String two = Desktop.SUPPER.replace("cooks: [",
        "cooks: [{name: Aunt, hours: {on the day: 17:00-20:00}}, ");
    String lift = "- {do: lift, takes: %s, hands: throughout, cooks: 2}\n";

    assertThat(desk(two, dish(lift.formatted("121 min"))).mistakes("it.yaml"))
        .contains("no 2 cooks work together");
    assertThat(desk(two, dish(lift.formatted("120 min"))).mistakes("it.yaml")).isEmpty();
    assertThat(soup(lift.formatted("5 min"))).contains("this needs 2 cooks, and there is 1");
  }

  @Test
  void someone_is_there_as_food_goes_to_the_table() {
    String cut = dish("- {do: cut, takes: 5 min, keeps: {counter: 3 h}}\n");

    assertThat(desk(Desktop.SUPPER.replace("14:00-20:00", "14:00-18:59"), cut).mistakes("it.yaml"))
        .contains("nobody is in hours as \"Soup\" goes to the table");
    assertThat(desk(Desktop.SUPPER.replace("14:00-20:00", "14:00-19:00"), cut).mistakes("it.yaml")).isEmpty();
    String pause = Desktop.SUPPER.replace("14:00-20:00}", "14:00-20:00}, breaks: {on the day: 18:50-19:10}");
    assertThat(desk(pause, cut).mistakes("it.yaml")).isEmpty();
  }

  @Test
  void what_cooks_longer_than_anyone_is_about_is_said_to_be_unattended_or_wrong() {
    assertThat(soup("- {do: braise, takes: 6 h, in: tin, bake: {at: 150 C}}\n"))
        .contains("someone is there for 5 h on end");
    assertThat(soup("- {do: braise, takes: 5 h, in: tin, bake: {at: 150 C}}\n")).isEmpty();
    String longer = Desktop.SUPPER + "calendar: {from: day before}\n" + KITCHEN;
    assertThat(desk(longer, dish("- {do: braise, takes: 6 h, in: tin, bake: {at: 150 C}, unattended: yes}\n"))
        .mistakes("it.yaml")).isEmpty();
  }

  @Test
  void nine_plates_are_not_to_be_had_from_eight() {
    String roomy = KITCHEN + "  landing: 20\n";

    assertThat(said(roomy, dish("- {do: plate, takes: 5 min, in: {plate: 9}}\n")))
        .contains("this takes 9 of \"plate\", and there are 8");
    assertThat(said(roomy, dish("- {do: plate, takes: 5 min, in: {plate: 8}}\n"))).isEmpty();
    assertThat(said(KITCHEN, dish("- {do: plate, takes: 5 min, in: {plate: 8}}\n")))
        .contains("this puts 8 vessels down at once, and there is room for 6");
  }

  @Test
  void three_batches_at_the_table_are_in_three_tins() {
    assertThat(said(dish("- {do: fill, takes: 5 min, in: tin}\n").replace("steps:",
        "portions: 2\n    for: 6\n    steps:")))
        .contains("3 of \"tin\" are at the table together, and there are 2");
    assertThat(
        said(dish("- {do: fill, takes: 5 min, in: tin}\n").replace("steps:", "portions: 2\n    steps:")))
        .isEmpty();
  }

  @Test
  void steps_one_after_the_other_have_the_time_they_take() {
    assertThat(soup("- {do: prove, takes: 4 h}\n- {do: rest, takes: 61 min}\n"))
        .contains(
            "this and all it waits for take 5 h 1 min, and there are 5 h from the first hour to the table");
    assertThat(soup("- {do: prove, takes: 4 h}\n- {do: rest, takes: 60 min}\n")).isEmpty();
  }

  @Test
  void a_course_is_not_before_anyone_begins() {
    assertThat(said("calendar: {from: day after}\n" + dish("- {do: rest, takes: 5 min}\n")))
        .contains("it.yaml:4:30: this is 5 h before anyone begins");
  }

  @Test
  void serving_takes_no_longer_than_the_dish_is_served_over() {
    assertThat(soup("- {do: carve, takes: 21 min, serve: yes}\n"))
        .contains("this takes 21 min, and the dish is served over 20 min");
    assertThat(soup("- {do: carve, takes: 20 min, serve: yes}\n")).isEmpty();
    assertThat(soup("- {do: carve, takes: 9 min, serve: yes}\n- {do: dress, takes: 5 min}\n"))
        .contains("comes after \"carve\", which begins then");
  }

  @Test
  void nobody_turns_what_is_behind_a_shut_door() {
    String bake = "- {do: bake, takes: 40 min, in: tin, bake: {at: 180 C}, door shut: 20 min, hands: [{at: %s, for: 1 min}]}\n";

    assertThat(soup(bake.formatted("17 min"))).contains("the door stays shut until minute 21");
    assertThat(soup(bake.formatted("18 min"))).isEmpty();
    assertThat(soup(bake.formatted("17 min").replace("40 min", "40 min, up to: 42 min"))).isEmpty();
  }

  @Test
  void what_must_be_used_draws_no_more_than_its_circuit_gives() {
    String ring = KITCHEN.replace("{name: oven,", "{name: oven, circuit: ring,")
        + "  appliances: {mixer: {count: 1, draws: 2100 W, circuit: ring}}\n";

    assertThat(said(ring, dish("- {do: bake, takes: 9 min, in: tin, bake: {at: 180 C}}\n")))
        .contains("this draws 3 kW, and \"ring\" gives 2 kW");
    assertThat(said(ring, dish("- {do: mix, takes: 9 min, appliance: mixer}\n")))
        .contains("this draws 2.1 kW, and \"ring\" gives 2 kW");
    assertThat(desk(ring, dish("- {do: rest, takes: 5 min}\n")).read("it.yaml")).isInstanceOfSatisfying(
        Reading.Understood.class, fine -> assertThat((List<?>) fine.notes()).hasSize(2));
  }

  @Test
  void an_oven_that_trips_its_circuit_is_no_matter_where_another_bakes_as_well() {
    String two = KITCHEN.replace("  burners:",
        "    - {name: other, dial: 100 C to 250 C, circuit: ring, racks: [{size: 46 x 37 cm, clear: 10 cm}]}\n  burners:");

    assertThat(said(two, dish("- {do: bake, takes: 9 min, in: tin, bake: {at: 180 C}}\n"))).isEmpty();
  }

  @Test
  void raw_food_that_nobody_knows_is_noted_and_raw_chicken_is_not() {
    String soup = "- {do: chop, takes: 5 min}\n";
    String said = notes(soup, "tags: [raw otter, milk]\n    steps:");

    assertThat(said)
        .contains("it.yaml:22:11: \"raw otter\" may be any raw food, and counts as the one that must be")
        .contains("\"raw poultry\"");
    assertThat(notes(soup, "tags: [raw poultry, rare tea]\n    steps:").strip()).isEmpty();
  }

  @Test
  void an_allergen_that_nothing_contains_and_nobody_knows_is_noted_with_the_one_that_may_be_meant() {
    String soup = "- {do: chop, takes: 5 min}\n";

    assertThat(notes(soup, "tags: free of nutz\n    steps:"))
        .contains(
            "it.yaml:22:11: \"free of nutz\" keeps nothing apart: no dish \"contains nutz\"; did you mean"
                + " \"free of nuts\"?");
    assertThat(notes(soup, "tags: free of otter hair\n    steps:")).contains("keeps nothing apart")
        .doesNotContain("did you mean");
    assertThat(notes(soup, "tags: free of nuts\n    steps:").strip()).isEmpty();
  }

  @Test
  void an_allergen_that_some_dish_contains_is_known_by_any_name_and_a_slip_is_nearest_to_that() {
    String jam = """
        dishes:
          - {dish: Jam, tags: contains kiwi, steps: [{do: boil, takes: 5 min}]}
          - {dish: Soup, tags: free of %s, steps: [{do: chop, takes: 5 min}]}
        """;

    assertThat(notesOf(jam.formatted("kiwi")).strip()).isEmpty();
    assertThat(notesOf(jam.formatted("kiwis"))).contains("did you mean \"free of kiwi\"?");
  }

  private static String cake(String tags, String link) {
    return "dishes:\n"
        + "  - {dish: Praline, tags: contains nuts, steps: [{do: grind, takes: 5 min}]}\n"
        + "  - {dish: Cream, steps: [{do: whip, takes: 5 min, uses: Praline/grind}]}\n"
        + "  - {dish: Cake, tags: [" + tags + "], steps: [{do: fill, takes: 5 min" + link + "}]}\n";
  }

  @Test
  void what_must_be_free_of_nuts_is_made_of_nothing_that_has_them_not_even_by_way_of_another_dish() {
    assertThat(said(cake("free of nuts", ", uses: Cream/whip")))
        .contains(
            "it.yaml:23:24: this is \"free of nuts\", and \"Praline\", which goes into it, \"contains nuts\"");
    assertThat(said(cake("free of milk", ", uses: Cream/whip"))).isEmpty();
    assertThat(said(cake("free of nuts", ", order only: Cream/whip"))).isEmpty();
    assertThat(said(cake("free of nuts", ""))).isEmpty();
  }

  @Test
  void a_cake_that_contains_nuts_is_not_free_of_them() {
    assertThat(said(cake("Free of Nuts, contains nuts", "")))
        .contains("it.yaml:23:24: this is said to be \"free of nuts\" and \"contains nuts\"");
  }

  @Test
  void a_tin_and_another_tin_are_two_tins() {
    assertThat(soup("- {do: fill, takes: 5 min, in: [tin, tin, tin]}\n"))
        .contains("this takes 3 of \"tin\", and there are 2");
    assertThat(soup("- {do: fill, takes: 5 min, in: [tin, tin]}\n")).isEmpty();
  }

  @Test
  void three_batches_that_are_put_together_come_in_three_tins() {
    String stir = "- {do: fill, takes: 5 min, in: tin}\n- {do: mix, once: yes, takes: 5 min, in: pot}\n";
    String six = dish(stir).replace("steps:", "portions: 2\n    for: 6\n    steps:");
    String four = dish(stir).replace("steps:", "portions: 2\n    steps:");

    assertThat(said(six)).contains("this has its food in 3 of \"tin\" at once, and there are 2");
    assertThat(said(four)).isEmpty();
    assertThat(said(six.replace("in: tin}", "in: tin, together: 2, one vessel: yes}"))).isEmpty();
  }

  @Test
  void what_follows_a_serving_waits_nowhere() {
    assertThat(soup(
        "- {do: carve, takes: 1 min, serve: yes}\n- {do: dress, takes: 1 min, serve: yes, after: {carve: {least: 16 min}}}\n"))
        .isEmpty();
  }

  @Test
  void a_course_before_anyone_begins_may_still_be_served_later() {
    String late = "calendar: {from: 2026-10-10 19:10}\n";

    assertThat(said(late + KITCHEN, dish("- {do: carve, takes: 10 min, serve: yes}\n"))).isEmpty();
    assertThat(said(late + KITCHEN, dish("- {do: carve, takes: 11 min, serve: yes}\n")))
        .contains("before anyone begins");
  }

  @Test
  void what_has_a_mistake_in_it_is_not_blamed_for_more() {
    String said = soup(
        "- {do: bake, takes: 9, bake: {at: 999 C}}\n- {do: rest, takes: 5 min, after: rest}\n");

    assertThat(said).contains("\"9\" is not a time")
        .doesNotContain("no oven has a mark")
        .contains("\"Soup/rest\" waits for itself");
  }

  /** FDA Food Code 2017, 3-401.11(A)(3). */
  @Test
  void what_no_plan_makes_safe_is_told_at_its_place_with_limit_source_and_help() {
    String chicken = "rules: us-service\n" + KITCHEN;
    String poach = dish("- {do: poach, takes: 30 min, burner: large, in: pot, core: 60 C}\n")
        .replace("steps:", "tags: raw poultry\n    steps:");

    assertThat(said(chicken, poach))
        .contains("it.yaml:25:66: Cooked to 60 C at most, at least 74 C or as long at less as the table says"
            + " (FDA Food Code 2017, 3-401.11(A)(3))")
        .contains("Longer, hotter, or from warmer; a higher \"core:\" on the card.");
    assertThat(said(chicken, poach.replace("60 C", "74 C"))).isEmpty();
  }

  /** FSIS Danger Zone: two hours. */
  @Test
  void a_dish_that_is_served_over_too_long_is_told_there_and_one_that_needs_no_cold_is_not() {
    String salad = dish("- {do: mix, takes: 5 min}\n")
        .replace("steps:", "tags: tcs\n    served over: 4 h\n    steps:");

    assertThat(said("rules: us-home\n" + KITCHEN, salad))
        .contains("it.yaml:24:18: Neither kept cold nor hot");
    assertThat(said("rules: us-home\n" + KITCHEN, salad.replace("tcs", "not tcs"))).isEmpty();
  }

  @Test
  void limits_are_not_held_against_a_menu_whose_rules_nobody_can_read() {
    String salad = dish("- {do: mix, takes: 5 min}\n")
        .replace("steps:", "tags: tcs\n    served over: 4 h\n    steps:");

    assertThat(said("rules: us-hom\n" + KITCHEN, salad)).contains("us-home").doesNotContain("kept cold");
  }

  private String soup(String steps) {
    return said(dish(steps));
  }

  /** What is worth a look in a menu that reads. */
  private String notes(String steps) {
    return notes(steps, "steps:");
  }

  private String notes(String steps, String before) {
    return notesOf(dish(steps).replace("steps:", before));
  }

  private String notesOf(String menu) {
    return switch (desk(KITCHEN, menu).read("it.yaml")) {
      case Reading.Understood<Event>(Event event, var sources, var notes) ->
        MistakeText.of(notes).replace(folder + "/", "");
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private String said(String menu) {
    return said(KITCHEN, menu);
  }

  private String said(String kitchen, String menu) {
    return desk(Desktop.SUPPER + kitchen, menu).mistakes("it.yaml");
  }

  private Desktop desk(String before, String menu) {
    String all = before.startsWith("ovenloom") ? before : Desktop.SUPPER + before;
    return new Desktop(folder).put("it.yaml", all + menu);
  }

  private static String dish(String steps) {
    return "dishes:\n  - dish: Soup\n    steps:\n" + steps.indent(6);
  }
}
