package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.solver.supper.Suppers;

/** Suppers at seven with hardly more than one plan, each of which the search has to see. */
class NarrowSuppersTest {

  private static final String ANN = "{name: Ann, hours: {on the day: 12:00-19:30}}";

  private static final Budget A_SEARCH = new Budget(null, 3_000L, 1, 2);

  @TempDir
  private Path folder;

  private Plan planned(String cooks, String kitchen, String dishes) throws IOException {
    Event event = Suppers.read(folder, """
        ovenloom: 1
        event: Narrow
        guests: 4
        courses: [{name: supper, at: 2027-06-12 19:00}]
        cooks: [%s]
        kitchen: {from: home%s}
        dishes:
        """.formatted(cooks, kitchen) + dishes);
    Found found = Search.find(event, List.of(), A_SEARCH, (best, schedules, left) -> {}, () -> false);
    assertThat(found.breaks()).isEmpty();
    return found.plan();
  }

  @Test
  void a_salad_is_chopped_at_an_odd_minute_where_it_would_stand_too_long_else() throws IOException {
    Plan plan = planned("{name: Ann, hours: {on the day: 16:00-19:00}, breaks: {on the day: 18:36-18:50}}",
        "", """
            - dish: Salad
              steps:
                - {do: chop, takes: 3 min, hands: throughout}
                - {do: dress, takes: 10 min, hands: {first: 2 min}}
            """);

    assertThat(plan.placement("Salad", "chop", 1).when().from()).isEqualTo(18 * 60 + 33);
  }

  @Test
  void a_sauce_is_warmed_at_an_odd_minute_where_it_would_be_warm_too_soon_else() throws IOException {
    planned("""
        {name: Ann, hours: {on the day: 18:50-19:00}},
          {name: Tom, hours: {on the day: 16:00-19:00}, breaks: {on the day: 18:50-19:00}}
        """, "", """
        - dish: Sauce
          steps:
            - {do: warm, takes: 4 min, hands: {first: 1 min}}
            - {do: mix, takes: 10 min, hands: {first: 2 min}, after: nothing, alongside: Sauce/warm}
        """);
  }

  @Test
  void a_borrowed_pan_is_used_while_it_is_there() throws IOException {
    planned(ANN, ", vessels: {saucepan: {count: 1, hours: {on the day: 12:00-18:00}}, bowl: 2}", """
        - dish: Stew
          steps:
            - {do: simmer, takes: 30 min, burner: medium, in: saucepan, keeps: {counter: 3 h}}
            - {do: turn out, takes: 5 min, hands: throughout, in: bowl, keeps: {counter: 3 h}}
        """);
  }

  @Test
  void a_pan_that_others_had_at_noon_is_there_in_the_evening() throws IOException {
    planned(ANN, ", vessels: {saucepan: {count: 1, taken: {on the day: [{when: 12:00-13:00, count: 1}]}}}",
        """
            - dish: Stew
              steps: [{do: simmer, takes: 30 min, burner: medium, in: saucepan}]
            """);
  }

  @Test
  void pans_that_two_others_have_at_once_are_both_away() throws IOException {
    planned(ANN, """
        , vessels: {saucepan: {count: 3, taken: {on the day:
            [{when: 17:30-19:00, count: 1}, {when: 17:30-19:00, count: 1}]}}}
        """, """
        - dish: Stew
          steps: [{do: simmer, takes: 30 min, burner: medium, in: saucepan, keeps: {counter: 3 h}}]
        - dish: Sauce
          steps:
            - {do: simmer, takes: 30 min, burner: medium, in: saucepan, keeps: {counter: 3 h}}
            - {do: pour, takes: 5 min, hands: throughout, in: bowl, keeps: {counter: 3 h}}
        """);
  }

  @Test
  void food_without_a_vessel_leaves_a_fridge_that_closes() throws IOException {
    planned(ANN,
        """
            , cold: [{name: fridge, holds: 4 C, hours: {on the day: 12:00-18:00}, shelves: [{name: top, size: 50 x 35 x 20 cm}]}]
            """,
        """
            - dish: Jelly
              steps: [{do: set, takes: 60 min, cold: fridge, keeps: {counter: 3 h}}]
            """);
  }

  @Test
  void raw_food_without_a_vessel_keeps_to_a_shelf_of_its_own() throws IOException {
    planned(ANN, """
        , cold: [{name: fridge, holds: 4 C, shelves:
            [{name: top, size: 50 x 35 x 20 cm}, {name: bottom, size: 50 x 35 x 20 cm}]}]
        """, """
        - dish: Chicken
          tags: [raw poultry]
          steps:
            - {do: marinate, takes: 60 min, cold: fridge}
            - {do: fry, takes: 20 min, burner: medium}
        - dish: Fish
          tags: [raw fish]
          steps:
            - {do: marinate, takes: 60 min, cold: fridge}
            - {do: fry, takes: 20 min, burner: medium}
        """);
  }

  @Test
  void a_small_pot_takes_the_small_burner_beside_a_large_one() throws IOException {
    Plan plan = planned(ANN,
        ", burners: [small, large], vessels: {little: 1, big: {count: 1, burner: large}}", """
            - dish: Stew
              steps: [{do: simmer, takes: 30 min, burner: small, in: {little: 1, big: 1}}]
            """);

    assertThat(plan.placement("Stew", "simmer", 1).burners()).hasSize(2).doesNotHaveDuplicates();
  }

  @Test
  void a_soup_cooks_on_the_burner_on_which_it_may_stay() throws IOException {
    planned("{name: Ann, hours: {on the day: 16:00-19:00}, breaks: {on the day: 18:00-18:55}}", """
        , burners: [{name: left, size: medium, taken: {on the day: 18:30-19:00}}, {name: right, size: medium}]
        """,
        """
            - dish: Soup
              steps:
                - {do: simmer, takes: 30 min, burner: medium, in: saucepan, keeps: {burner: 1 h}, hands: {first: 3 min}}
                - {do: pass, takes: 5 min, hands: throughout, in: bowl}
            """);
  }

  @Test
  void the_baker_among_the_cooks_does_what_only_a_baker_can() throws IOException {
    planned(
        """
            {name: Ann, skills: pastry, hours: {on the day: 16:00-19:00}}, {name: Tom, hours: {on the day: 16:00-19:00}}
            """,
        "", """
            - dish: Tart
              steps: [{do: roll, takes: 20 min, hands: [{throughout: yes}, {first: 5 min, skill: pastry}]}]
            """);
  }

  @Test
  void somebody_is_still_up_when_a_roast_that_bakes_all_night_is_turned_down() throws IOException {
    Plan plan = planned("{name: Ann, hours: {day before: 20:00-23:30, on the day: 7:00-19:00}}", "",
        """
            - dish: Pork
              tags: [not tcs]
              steps:
                - {do: roast, takes: 12 h, unattended: yes, bake: [{at: 220 C, for: 1 h}, {at: 100 C}], in: roasting tin,
                   keeps: {counter: 12 h}}
            """);

    assertThat(plan.ovens().getFirst().spans()).filteredOn(span -> span.doing() == OvenLog.Doing.COOLING)
        .singleElement()
        .satisfies(span -> assertThat(span.when().from()).isLessThanOrEqualTo(-30));
  }

  @Test
  void who_sees_to_a_pie_at_the_last_takes_it_out_as_well() throws IOException {
    planned("{name: Ann, hours: {on the day: 16:00-19:00}, breaks: {on the day: 18:58-19:00}}", "",
        """
            - dish: Pie
              steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: baking tray, hands: [{at: 28 min, for: 2 min}]}]
            - dish: Tart
              steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: baking tray}]
            """);
  }

  @Test
  void a_tall_tin_gets_the_rack_under_the_high_roof_whatever_stands_beside_it() throws IOException {
    planned(ANN, """
        , ovens: [{name: oven, racks: [{size: 40 x 40 cm, clear: 20 cm}, {size: 40 x 40 cm, clear: 8 cm}]}],
          vessels: {flat: {count: 1, size: 35 x 35 x 5 cm}, tall: {count: 1, size: 35 x 35 x 15 cm}}
        """, """
        - dish: Brioche
          steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: {flat: 1, tall: 1}}]
        """);
  }

  @Test
  void a_roast_is_turned_down_to_where_the_beans_can_share_its_oven() throws IOException {
    Plan plan = planned("{name: Ann, hours: {on the day: 12:00-19:00}}", "", """
        - dish: Pork
          steps:
            - {do: roast, takes: 2 h, bake: [{at: 220 C, for: 30 min}, {at: 160 C, from: 150 C, to: 180 C}],
               in: baking tray, keeps: {counter: 30 min}}
        - dish: Beans
          steps: [{do: bake, takes: 80 min, bake: {at: 180 C}, in: baking tray}]
        """);

    assertThat(last(plan.placement("Pork", "roast", 1))).isEqualTo(last(plan.placement("Beans", "bake", 1)));
  }

  private static Setting last(Placement run) {
    return Objects.requireNonNull(run.baking()).stages().getLast().mark();
  }

  @Test
  void pork_stays_in_the_cabinet_in_which_it_was_warmed_while_nobody_is_there() throws IOException {
    planned("{name: Ann, hours: {on the day: [12:00-14:00, 18:30-19:00]}}", """
        , hot: [{name: cabinet, holds: 70 C, shelves: {count: 2, size: 60 x 50 x 15 cm}}],
          vessels: {pan: {count: 1, size: 30 x 20 x 6 cm}, dish: 1}
        """, """
        - dish: Pork
          steps:
            - {do: warm, takes: 2 h, hot: cabinet, in: pan, keeps: {hot: 6 h}}
            - {do: pull, takes: 5 min, hands: throughout, in: dish}
        """);
  }
}
