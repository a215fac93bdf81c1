package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.TWO;
import static ovenloom.cli.sheet.SheetLines.lines;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;
import ovenloom.model.plan.Where;

/** What a cook reads. */
class RunSheetTest {

  private static final String PIE = """
      dishes:
        - dish: Pie
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {fridge: 2 days, counter: 1 h}}
            - do: bake
              takes: 40-45 min
              bake: {at: 180 C}
              hands: [{at: 20 min, for: 2 min}]
              keeps: {oven: 1 h, counter: 1 h}
      """;

  private static HandPlan pie() {
    return HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("18:00"));
  }

  @Test
  void a_pie_is_filled_waits_is_baked_and_goes_to_the_table() {
    var lines = lines(pie().plan());

    assertThat(lines).containsSubsequence(
        "Supper",
        "8 guests. Saturday 10 October 2026: supper at 19:00.",
        "Saturday 10 October, on the day",
        "17:00 | Pie | Fill (dish): 20 min, until 17:20. On the counter until 18:00.",
        "17:50 | Oven | Preheat: 180 C, ready at 18:00.",
        "18:00 | Pie | Into the oven (dish): lower rack, 180 C. Look from 18:40, out by 18:45.",
        "18:20 | Pie | Bake: hands-on until 18:22.",
        "18:45 | Pie | Out of the oven. Onto the counter until 19:00.",
        "18:45 | Oven | Switch off.",
        "19:00 | SUPPER | AT THE TABLE. Served until 19:20.",
        "19:00 | Pie | To the table (dish).");
  }

  @Test
  void what_must_be_hot_inside_is_probed_before_it_comes_out() {
    var lines = lines(HandPlan
        .forProblem(
            KITCHEN + HOST + PIE.replace("bake: {at: 180 C}", "bake: {at: 180 C}\n        core: 165 F"))
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(lines).containsSubsequence(
        "18:40 | Pie | Look: at 74 C inside it is done, and may come out.",
        "18:45 | Pie | Probe the middle: 74 C or more. If it is less, leave it in and probe again every 5 min.",
        "18:45 | Pie | Out of the oven. Onto the counter until 19:00.");
  }

  /** 165 F for poultry: FDA Food Code 2017, 3-401.11(A). */
  @Test
  void raw_poultry_is_probed_though_its_card_says_nothing() {
    String pie = PIE.replace("- dish: Pie", "- dish: Pie\n    tags: [raw poultry]");
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + pie)
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(lines).anyMatch(line -> line.startsWith("18:45 | Pie | Probe the middle: 74 C or more."));
  }

  @Test
  void a_card_that_cooks_poultry_too_little_is_not_believed() {
    String pie = PIE.replace("bake: {at: 180 C}", "bake: {at: 180 C}\n        core: 62 C")
        .replace("- dish: Pie", "- dish: Pie\n    tags: [raw poultry]");
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + pie)
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(lines).anyMatch(line -> line.startsWith("18:45 | Pie | Probe the middle: 74 C or more."))
        .anyMatch(line -> line.contains("out by 18:45, at 74 C inside."));
  }

  @Test
  void how_warm_it_is_at_the_table_and_what_is_not_safe_stand_at_the_end() {
    var lines = lines(HandPlan
        .forProblem("rules: us-home\n" + KITCHEN + HOST
            + PIE.replace("keeps: {oven: 1 h, counter: 1 h}", "keeps: {counter: 5 h}"))
        .run("Pie/fill", at("13:00"))
        .run("Pie/bake", at("14:00"))
        .plan());

    assertThat(lines)
        .anyMatch(line -> line.matches("Pie \\| \\d+ C \\(\\d+ to \\d+\\): hot is 60 C or more\\."));
    assertThat(lines)
        .anyMatch(
            line -> line.startsWith("Pie | Bake: Neither kept cold nor hot, between 4 C and 60 C for "));
  }

  @Test
  void whose_rules_say_what_is_safe_is_said() {
    HandPlan home = HandPlan.forProblem("rules: us-home\n" + KITCHEN + HOST + PIE);

    assertThat(lines(pie().plan()))
        .contains("No rules are named, so the strictest of us-home, us-service, uk hold for what is safe.");
    assertThat(lines(home.run("Pie/fill", at("17:00")).run("Pie/bake", at("18:00")).plan()))
        .contains("What is safe is held against the rules us-home.");
  }

  @Test
  void what_is_only_on_burners_is_stirred_before_it_is_probed() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Soup
            steps: [{do: simmer, takes: 20 min, burner: large, in: pot, core: 74 C}]
        """).run("Soup/simmer", at("18:40")).plan());

    assertThat(lines).contains(
        "19:00 | Soup | Stir, then probe: 74 C or more. If it is less, leave it on and probe again every 5 min.");
  }

  @Test
  void dishes_of_which_nobody_says_how_warm_they_are_say_why() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Leeks
            steps: [{do: stew, takes: 20 min, burner: large, in: pot, keeps: {counter: 1 h}}]
          - dish: Fish
            steps: [{do: plate, takes: 10 min, hands: throughout, in: platter, uses: Leeks/stew}]
        """)
        .run("Leeks/stew", at("18:30"))
        .run("Fish/plate", at("18:50"))
        .plan());

    assertThat(lines).contains("Leeks | goes into Fish.");
  }

  @Test
  void a_wait_of_a_few_minutes_under_the_same_hands_is_not_told() {
    var four = lines(HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("17:36"))
        .run("Pie/bake", at("18:00"))
        .plan());
    var five = lines(HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("17:35"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(four).contains("17:36 | Pie | Fill (dish): 20 min, until 17:56.");
    assertThat(five).contains("17:35 | Pie | Fill (dish): 20 min, until 17:55. On the counter until 18:00.");
  }

  @Test
  void what_was_made_two_days_before_stands_in_the_fridge_until_a_day_and_a_time() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("17:00") - 2880)
        .waits("Pie/fill", new Where.Counter(), at("17:30") - 2880,
            new Where.OnShelf("fridge", List.of("top")),
            at("17:40"), new Where.Counter(), at("18:00"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(lines).containsSubsequence(
        "Thursday 8 October, two days before",
        "17:00 | Pie | Fill (dish): 20 min, until 17:20. On the counter until 17:30.",
        "17:30 | Pie | Into the fridge, top shelf, until Saturday 17:40.",
        "Saturday 10 October, on the day",
        "17:40 | Pie | Out of the fridge, top shelf. Onto the counter until 18:00.",
        "18:00 | Pie | Into the oven (dish): lower rack, 180 C. Look from 18:40, out by 18:45.");
  }

  @Test
  void food_taken_out_of_the_fridge_into_the_oven_is_one_line() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("12:00"))
        .waits("Pie/fill", new Where.OnShelf("fridge", List.of("top")), at("18:00"))
        .run("Pie/bake", at("18:00"), run -> run.racks(1))
        .plan());

    assertThat(lines).contains("12:20 | Pie | Into the fridge, top shelf, until 18:00.",
        "18:00 | Pie | Out of the fridge, top shelf. Into the oven (dish): upper rack, 180 C."
            + " Look from 18:40, out by 18:45.");
  }

  @Test
  void food_that_waits_in_the_oven_is_left_in_it() {
    var off = lines(pie().waits("Pie/bake", new Where.InOven("oven", null), at("19:00")).plan());
    var held = lines(
        pie().waits("Pie/bake", new Where.InOven("oven", Setting.celsius(80)), at("19:00")).plan());

    assertThat(off).contains("18:45 | Pie | Leave in the oven, switched off, until 19:00.",
        "19:00 | Pie | Out of the oven. To the table (dish).");
    assertThat(held).contains("18:45 | Pie | Leave in the oven at 80 C until 19:00.");
  }

  @Test
  void names_of_cooks_are_told_only_where_there_are_several() {
    var alone = lines(pie().plan());
    var together = lines(HandPlan.forProblem(KITCHEN + TWO + PIE)
        .run("Pie/fill", at("17:00"), run -> run.by("Jonas"))
        .run("Pie/bake", at("18:00"))
        .plan());

    assertThat(alone).noneMatch(line -> line.contains("Host"));
    assertThat(together).contains(
        "17:00 | Jonas | Pie | Fill (dish): 20 min, until 17:20. On the counter until 18:00.",
        "18:45 | Mira | Pie | Out of the oven. Onto the counter until 19:00.");
  }

  private static final String LOAF = """
      dishes:
        - dish: Loaf
          steps:
            - {do: shape, takes: 10 min, hands: throughout, in: tray, keeps: {fridge: 1 day}}
            - {do: prove, takes: 20 min}
            - {do: bake, takes: 20 min, bake: {at: 180 C}}
            - {do: cool, takes: 10 min}
      """;

  private static HandPlan loafAnd(String dishes) {
    return HandPlan.forProblem(KITCHEN + TWO + LOAF + dishes)
        .run("Loaf/shape", at("17:00"))
        .waits("Loaf/shape", new Where.OnShelf("fridge", List.of("top")), at("18:00"), new Where.Counter(),
            at("18:10"))
        .run("Loaf/prove", at("18:10"))
        .run("Loaf/bake", at("18:30"))
        .run("Loaf/cool", at("18:50"));
  }

  @Test
  void of_several_cooks_the_one_with_fewest_lines_does_what_nobody_is_booked_for() {
    assertThat(lines(pie().plan())).noneMatch(line -> line.contains("Host"));
    assertThat(lines(loafAnd("").plan())).contains(
        "17:00 | Mira | Loaf | Shape (tray): 10 min, until 17:10.",
        "17:10 | Jonas | Loaf | Into the fridge, top shelf, until 18:00.",
        "18:00 | Mira | Loaf | Out of the fridge, top shelf. Onto the counter until 18:10.",
        "18:20 | Jonas | Oven | Preheat: 180 C, ready at 18:30.",
        "18:10 | Loaf | Prove until 18:30.",
        "18:50 | Mira | Oven | Switch off.",
        "19:00 | SUPPER | AT THE TABLE. Served until 19:20.",
        "19:00 | Loaf | To the table (tray).");
  }

  @Test
  void who_is_in_the_middle_of_something_is_asked_only_where_nobody_else_is_free() {
    String knots = """
          - {dish: Knots, steps: [{do: knead, takes: 70 min, hands: throughout, in: dish}]}
          - {dish: Buns, steps: [{do: shape, takes: 70 min, hands: throughout, in: dish}]}
        """;
    HandPlan one = loafAnd(knots).run("Knots/knead", at("17:20"), run -> run.by("Mira"));
    assertThat(lines(one.run("Buns/shape", at("16:00"), run -> run.by("Jonas")).plan()))
        .contains("18:10 | Loaf | Prove until 18:30.",
            "18:00 | Jonas | Loaf | Out of the fridge, top shelf. Onto the counter until 18:10.");

    HandPlan both = loafAnd(knots).run("Knots/knead", at("17:20"), run -> run.by("Mira"));
    assertThat(lines(both.run("Buns/shape", at("17:20"), run -> run.by("Jonas")).plan()))
        .contains(
            "18:00 | Mira | Loaf | Out of the fridge, top shelf. Onto the counter until 18:10. Leave your work for it.");
  }

  @Test
  void who_has_other_work_as_the_bake_ends_takes_it_out_in_its_last_minute() {
    String knots = """
          - {dish: Knots, steps: [{do: knead, takes: 10 min, hands: throughout, in: dish}]}
        """;

    assertThat(lines(loafAnd(knots).run("Knots/knead", at("18:50"), run -> run.by("Mira")).plan()))
        .contains("18:49 | Mira | Loaf | Out of the oven.",
            "18:50 | Mira | Knots | Knead (dish): 10 min, until 19:00.");
  }

  @Test
  void a_hot_cabinet_is_switched_on_for_its_food_and_off_after_it() {
    String kitchen = KITCHEN.replace("kitchen:",
        "kitchen:\n  hot: [{name: hot cabinet, holds: 70 C, shelves: {size: 60 x 40 x 20 cm}}]");
    var lines = lines(HandPlan
        .forProblem(
            kitchen + HOST + PIE.replace("keeps: {oven: 1 h, counter: 1 h}", "keeps: {hot cabinet: 60 min}"))
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("17:45"))
        .waits("Pie/bake", new Where.OnShelf("hot cabinet", List.of("shelf 1")), at("19:00"))
        .plan());

    assertThat(lines).containsSubsequence("18:00 | Hot cabinet | Switch on: 70 C, for 18:30.",
        "18:30 | Pie | Out of the oven. Into the hot cabinet, until 19:00.",
        "19:00 | Hot cabinet | Switch off.");
  }

  @Test
  void what_one_takes_out_and_another_carries_on_with_is_two_lines() {
    var lines = lines(HandPlan.forProblem(KITCHEN + TWO + """
        dishes:
          - dish: Roast
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: dish}
              - {do: carve, takes: 10 min, hands: throughout, in: platter}
        """)
        .run("Roast/roast", at("17:50"), run -> run.takenOutBy("Jonas"))
        .run("Roast/carve", at("18:50"))
        .plan());

    assertThat(lines).containsSubsequence("18:50 | Jonas | Roast | Out of the oven.",
        "18:50 | Mira | Roast | Carve (platter): 10 min, until 19:00.");
  }

  @Test
  void a_step_that_many_hands_share_names_them_all() {
    var lines = lines(HandPlan.forProblem(KITCHEN + TWO + """
        dishes:
          - dish: Pie
            steps: [{do: plate, takes: 10 min, hands: throughout, cooks: 2, in: platter, serve: yes}]
        """).run("Pie/plate", at("19:00")).plan());

    assertThat(lines)
        .contains("19:00 | Mira, Jonas | Pie | Plate (platter): 10 min, until 19:10. To the table.");
  }

  @Test
  void batches_are_told_where_there_are_several_and_those_that_do_the_same_together() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Pie
            portions: 4
            steps:
              - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {counter: 2 h}}
              - {do: bake, takes: 45 min, together: 2, bake: {at: 180 C}}
        """)
        .run("Pie/fill", at("17:00"))
        .run("Pie/fill", at("17:20"), run -> run.batches(2, 2))
        .run("Pie/bake", at("18:15"), run -> run.batches(1, 2).racks(0, 1))
        .plan());

    assertThat(lines).contains(
        "17:20 | Pie | Batch 2 of 2. Fill (dish): 20 min, until 17:40. On the counter until 18:15.",
        "18:15 | Pie | Both batches. Into the oven (2 x dish): both racks, 180 C. Out at 19:00.",
        "19:00 | Pie | Both batches. Out of the oven. To the table (2 x dish).");
  }

  @Test
  void a_pot_is_put_on_a_burner_stirred_kept_warm_on_it_and_taken_off() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Soup
            steps:
              - do: simmer
                takes: 25-30 min
                burner: large
                in: pot
                hands: [{at: 10 min, for: 1 min}]
                keeps: {burner: 30 min}
        """)
        .run("Soup/simmer", at("18:15"))
        .waits("Soup/simmer", new Where.OnBurner(List.of("large burner 1")), at("19:00"))
        .plan());

    assertThat(lines).contains(
        "18:15 | Soup | Onto a large burner (pot). Simmer until 18:45, look from 18:40.",
        "18:25 | Soup | Stir: 1 min.",
        "18:45 | Soup | Turn the burner low. Keep warm on it until 19:00.",
        "19:00 | Soup | Off the burner. To the table (pot).");
  }

  @Test
  void a_pot_that_cooks_on_where_it_stands_is_not_put_on_again() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Soup
            steps:
              - {do: simmer, takes: 25 min, burner: large, in: pot}
              - {do: thicken, takes: 5 min, burner: large, hands: throughout}
        """).run("Soup/simmer", at("18:30")).run("Soup/thicken", at("18:55")).plan());

    assertThat(lines).contains("18:55 | Soup | Stays on the burner. Thicken: 5 min, until 19:00.");
  }

  @Test
  void the_dial_is_turned_under_a_roast_that_stays_in() {
    var lines = lines(HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Lamb
                    steps: [{do: roast, takes: 90 min, in: dish, core: 63 C, bake: [{at: 220 C, for: 20 min}, {at: 160 C}]}]
                """)
        .run("Lamb/roast", at("17:30"))
        .oven(new OvenLog("oven", List.of(
            new Span(Doing.WARMING, Setting.celsius(220), "still", new Stretch(at("17:15"), at("17:30"))),
            new Span(Doing.AT, Setting.celsius(220), "still", new Stretch(at("17:30"), at("17:50"))),
            new Span(Doing.COOLING, Setting.celsius(160), "still", new Stretch(at("17:50"), at("18:08"))),
            new Span(Doing.AT, Setting.celsius(160), "still", new Stretch(at("18:08"), at("19:00"))))))
        .plan());

    assertThat(lines).containsSubsequence(
        "17:15 | Oven | Preheat: 220 C, ready at 17:30.",
        "17:30 | Lamb | Into the oven (dish): lower rack, 220 C until 17:50, then 160 C."
            + " Out at 19:00, at 63 C inside.",
        "17:50 | Oven | Turn down to 160 C: ready at 18:08. Lamb stays in.",
        "19:00 | Oven | Switch off.");
  }

  @Test
  void a_roast_whose_drippings_wait_for_the_gravy_is_told_in_two_lines() {
    var lines = lines(HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Lamb
                    steps:
                      - {do: roast, takes: 90 min, in: dish, bake: {at: 180 C}, keeps: {counter: 1 h}}
                      - {do: rest, takes: 30 min, in: platter}
                  - dish: Gravy
                    steps: [{do: make gravy, takes: 10 min, hands: throughout, burner: large, in: dish, uses: {Lamb/roast: {}}}]
                """)
        .run("Lamb/roast", at("17:00"))
        .run("Lamb/rest", at("18:30"))
        .run("Gravy/make gravy", at("18:50"))
        .plan());

    assertThat(lines).containsSubsequence(
        "18:30 | Lamb | Out of the oven. Rest (platter) until 19:00.",
        "18:30 | Lamb | Dish with what is left in it: onto the counter until 18:50, for Gravy.",
        "18:50 | Gravy | Onto a large burner (dish). Make gravy: 10 min, until 19:00. With what Lamb left in it.");
  }

  @Test
  void things_that_come_together_are_told_by_their_pans() {
    var lines = lines(HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Pie
                    steps:
                      - {do: make the sauce, takes: 20 min, burner: large, in: pot, after: nothing, keeps: {fridge: 1 day}}
                      - {do: roll the dough, takes: 10 min, hands: throughout, in: dish, after: nothing, keeps: {fridge: 1 day}}
                      - {do: fill, takes: 10 min, hands: throughout, in: dish, after: {make the sauce: {}, roll the dough: {}}}
                """)
        .run("Pie/make the sauce", at("12:00"))
        .waits("Pie/make the sauce", new Where.OnShelf("fridge", List.of("low")), at("18:50"))
        .run("Pie/roll the dough", at("13:00"))
        .waits("Pie/roll the dough", new Where.OnShelf("fridge", List.of("top")), at("18:50"))
        .run("Pie/fill", at("18:50"))
        .plan());

    assertThat(lines).contains(
        "12:20 | Pie | Off the burner. Into the fridge, low shelf, until 18:50. It goes in hot: leave it uncovered, with air around it.",
        "18:50 | Pie | Out of the fridge, low shelf: pot (make the sauce). Out of the fridge, top shelf: dish"
            + " (roll the dough). Fill: 10 min, until 19:00.");
  }

  @Test
  void hands_on_a_bake_from_its_beginning_are_told() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Flatbread
            steps: [{do: bake, takes: 20 min, in: dish, bake: {at: 180 C}, hands: throughout}]
          - dish: Nuts
            steps: [{do: toast, takes: 12 min, in: dish, bake: {at: 180 C}, hands: {first: 4 min}}]
        """).run("Flatbread/bake", at("18:00")).run("Nuts/toast", at("18:40")).plan());

    assertThat(lines).anyMatch(line -> line.startsWith("18:00 | Flatbread | Into the oven")
        && line.endsWith("Hands-on until 18:20."));
    assertThat(lines).anyMatch(line -> line.startsWith("18:40 | Nuts | Into the oven")
        && line.endsWith("Hands-on until 18:44."));
  }

  @Test
  void hands_at_the_beginning_and_at_the_end_of_a_run_are_told() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - dish: Rice
            steps: [{do: boil, takes: 20 min, burner: small, in: pot, hands: {first: 3 min}}]
          - dish: Peas
            steps: [{do: boil, takes: 10 min, burner: small, in: pot, hands: {last: 3 min}}]
        """).run("Rice/boil", at("18:20")).run("Peas/boil", at("18:50")).plan());

    assertThat(lines).contains(
        "18:20 | Rice | Onto a large burner (pot). Boil until 18:40, hands-on until 18:23.",
        "18:50 | Peas | Onto a large burner (pot). Boil until 19:00.",
        "18:57 | Peas | Boil: hands-on until 19:00.");
  }

  @Test
  void washing_up_without_a_pause_is_one_line() {
    var lines = lines(pie().wash("dish", 2, at("17:30"), "Host").wash("pot", 1, at("17:35"), "Host").plan());

    assertThat(lines).contains("17:30 | Wash up | 2 x dish and pot: 10 min, until 17:40.");
  }

  @Test
  void what_happens_after_midnight_stands_under_its_own_day() {
    var lines = lines(HandPlan.forProblem(KITCHEN + """
        cooks: [{name: Host, hours: {day before: 20:00-24:00, on the day: 0:00-20:00}}]
        """ + PIE).run("Pie/fill", -30).run("Pie/bake", at("0:10")).plan());

    assertThat(lines).containsSubsequence(
        "Friday 9 October, the day before",
        "23:30 | Pie | Fill (dish): 20 min, until 23:50. On the counter until Saturday 00:10.",
        "Saturday 10 October, on the day",
        "00:00 | Oven | Preheat: 180 C, ready at 00:10.");
  }

  @Test
  void a_chore_is_work_like_any_other_and_nothing_of_it_goes_to_the_table() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + """
        dishes:
          - {dish: Table, food: no, steps: [{do: lay the table, takes: 25 min, hands: throughout}]}
        """).run("Table/lay the table", at("15:00")).plan());

    assertThat(lines).contains("15:00 | Table | Lay the table: 25 min, until 15:25.");
    assertThat(lines).noneMatch(line -> line.contains("Table | To the table"));
  }

  @Test
  void a_pause_of_half_an_hour_is_a_blank_line_and_so_is_sitting_down() {
    assertThat(RunSheet.of(pie().plan(), 80, false))
        .containsPattern("17:00 .*\\R\\R17:50 ")
        .doesNotContainPattern("17:50 .*\\R\\R18:00 ")
        .containsPattern("Switch off.\\R\\R19:00  SUPPER");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 140})
  void no_line_is_longer_than_the_page_is_wide(int width) {
    assertThat(RunSheet.of(pie().plan(), width, false).lines()).allMatch(line -> line.length() <= width);
  }

  @Test
  void bold_letters_are_for_terminals_and_change_no_word() {
    var plain = RunSheet.of(pie().plan(), 80, false);
    var bold = RunSheet.of(pie().plan(), 80, true);

    assertThat(plain).doesNotContain("\u001b");
    assertThat(bold).contains("\u001b[1mSupper").isNotEqualTo(plain);
    assertThat(bold.replaceAll("\u001b\\[[0-9;]+m", "")).isEqualTo(plain);
  }

  @Test
  void times_the_table_and_cautions_have_a_colour_each_and_the_rest_has_none() {
    var coloured = RunSheet.of(pie().plan(), 80, true);

    assertThat(coloured).contains("\u001b[36m17:50\u001b[0m  ", "\u001b[1;32mSUPPER\u001b[0m",
        "\u001b[1;32mAT THE TABLE. Served until 19:20.\u001b[0m", "\u001b[32mTo the table (dish).\u001b[0m",
        "  Preheat: 180 C, ready at 18:00.");
  }

  @Test
  void on_a_narrow_page_cooks_who_share_work_stand_one_below_the_other() {
    var plan = HandPlan.forProblem(KITCHEN + TWO + """
        dishes:
          - dish: Pie
            steps: [{do: plate, takes: 10 min, hands: throughout, cooks: 2, in: platter, serve: yes}]
        """).run("Pie/plate", at("19:00")).plan();

    assertThat(RunSheet.of(plan, 80, false)).contains("\n       Mira, Jonas  Pie     Plate");
    assertThat(RunSheet.of(plan, 79, false)).containsPattern("\n {7}Mira,  Pie +Plate .*\\R {7}Jonas");
  }

  @Test
  void a_name_cannot_give_orders_to_the_terminal() {
    var lines = lines(HandPlan.forProblem(KITCHEN + HOST + PIE.replace("dish: Pie", "dish: \"Pie\\e[2J\""))
        .run("Pie\u001b[2J/fill", at("17:00"))
        .run("Pie\u001b[2J/bake", at("18:00"))
        .plan());

    assertThat(lines).anyMatch(line -> line.contains("Pie?[2J")).noneMatch(line -> line.contains("\u001b"));
  }

  @Test
  void every_minute_is_told_once_and_in_order() {
    var times = RunSheet.of(pie().plan(), 80, false)
        .lines()
        .filter(line -> line.matches("\\d\\d:\\d\\d .*"))
        .map(line -> line.substring(0, 5))
        .toList();

    assertThat(times).hasSize(6).isSorted().doesNotHaveDuplicates();
  }
}
