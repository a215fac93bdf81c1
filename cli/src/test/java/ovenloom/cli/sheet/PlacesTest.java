package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/** Where what is to be done is done. */
class PlacesTest {

  private static final Place RACK = new Place("oven", "0");
  private static final Place TOP = new Place("fridge", "top");

  private static final String PIE = """
      dishes:
        - dish: Pie
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, starts: chilled, keeps: {fridge: 2 days}}
            - do: bake
              takes: 40-45 min
              bake: {at: 180 C}
              core: 74 C
              hands: [{at: 20 min, for: 2 min}]
              keeps: {counter: 1 h}
      """;

  private static Plan pie() {
    return HandPlan.forProblem(KITCHEN + HOST + PIE)
        .run("Pie/fill", at("12:00"))
        .waits("Pie/fill", new Where.OnShelf("fridge", List.of("top")), at("18:00"))
        .run("Pie/bake", at("18:00"))
        .plan();
  }

  private static List<String> doneAt(Place place) {
    Clock clock = new Clock(pie().event().calendar());
    return Acts.of(pie(), Life.of(pie(), 1))
        .stream()
        .filter(act -> act.places().touch(place))
        .map(act -> clock.column(act.at()) + " " + act.words().split("[.:]", 2)[0])
        .toList();
  }

  @Test
  void an_oven_is_where_its_dial_is_turned_and_where_food_is_put_in_looked_at_turned_probed_and_taken_out() {
    assertThat(doneAt(RACK)).containsExactly("17:50 Preheat", "18:00 Out of the fridge, top shelf",
        "18:20 Bake", "18:40 Look", "18:45 Probe the middle", "18:45 Out of the oven", "18:45 Switch off");
  }

  @Test
  void a_whole_oven_is_each_of_its_racks_and_another_rack_has_only_the_dial() {
    assertThat(doneAt(Place.all("oven"))).isEqualTo(doneAt(RACK));
    assertThat(doneAt(new Place("oven", "1"))).containsExactly("17:50 Preheat", "18:45 Switch off");
  }

  @Test
  void a_shelf_is_where_food_is_put_and_taken_from() {
    assertThat(doneAt(TOP)).containsExactly("12:20 Into the fridge, top shelf, until 18",
        "18:00 Out of the fridge, top shelf");
    assertThat(doneAt(new Place("fridge", "low"))).isEmpty();
  }

  @Test
  void what_comes_out_of_the_fridge_at_first_was_in_it_on_no_shelf_that_is_known() {
    assertThat(doneAt(Place.all("fridge"))).containsExactly("12:00 Out of the fridge",
        "12:20 Into the fridge, top shelf, until 18", "18:00 Out of the fridge, top shelf");
  }

  @Test
  void a_place_of_the_same_shelf_elsewhere_is_another() {
    assertThat(new Place("fridge", "top").touches(new Place("cellar", "top"))).isFalse();
    assertThat(new Place("fridge", "top").touches(new Place("fridge", "low"))).isFalse();
  }

  @Test
  void the_table_is_where_food_is_served() {
    assertThat(doneAt(Place.TABLE)).containsExactly("19:00 To the table (dish)");
  }
}
