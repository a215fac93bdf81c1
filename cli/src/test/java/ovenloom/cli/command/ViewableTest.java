package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.cli.command.Asked.For;
import ovenloom.cli.command.Asked.Wrong;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.Place;
import ovenloom.cli.sheet.View;

/** What places are called by those who ask for them. */
class ViewableTest {

  private static Viewable kitchen(String ovens) {
    return new Viewable(
        HandPlan
            .forProblem(
                """
                    ovenloom: 1
                    event: Supper
                    guests: 8
                    courses: [{name: supper, at: 2026-10-10 19:00}]
                    kitchen:
                      ovens: [OVENS]
                      cold: [{name: larder fridge, holds: 4 C, shelves: [{name: top, size: 50 x 35 x 20 cm}, {name: low, size: 50 x 35 x 20 cm}]}]
                      hot: [{name: hot cabinet, holds: 70 C, shelves: {size: 60 x 40 x 20 cm}}]
                      vessels: {bowl: 1}
                    cooks: [{name: Host, hours: {on the day: 8:00-21:00}}]
                    dishes: [{dish: Salad, steps: [{do: dress, takes: 10 min, hands: throughout, in: bowl}]}]
                    """
                    .replace("OVENS", ovens))
            .run("Salad/dress", HandPlan.at("18:00"))
            .plan()
            .event());
  }

  private static String oven(String name) {
    return "{name: " + name
        + ", dial: 60 C to 260 C, heats: 180 C in 12 min, racks: {count: 2, size: 55 x 38 cm, clear: 15 cm}}";
  }

  @ParameterizedTest
  @ValueSource(strings = {"larder fridge, top shelf", "Larder Fridge/Top", "the larder fridge, top shelf",
      "larder fridge top", "larder fridge  top shelf", "larder fridge, top"})
  void a_shelf_is_called_as_the_sheet_calls_it_or_as_a_file_does(String name) {
    var asked = kitchen(oven("range")).shelves().asked(name);

    assertThat(asked).isEqualTo(
        new For<>(new View.OfPlace(new Place("larder fridge", "top"), "the larder fridge, top shelf")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"larder fridge", "the Larder fridge"})
  void a_fridge_is_all_its_shelves(String name) {
    var asked = kitchen(oven("range")).shelves().asked(name);

    assertThat(asked).isEqualTo(
        new For<>(new View.OfPlace(new Place("larder fridge", ""), "the larder fridge")));
  }

  @Test
  void a_place_that_is_not_there_is_told_with_all_that_are() {
    var asked = kitchen(oven("range")).shelves().asked("cellar");

    assertThat(asked).isEqualTo(new Wrong<View>(List.of("there is no cold or hot place or shelf \"cellar\"",
        "There is: larder fridge (top and low shelves), hot cabinet")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"range", "oven", "the oven"})
  void an_only_oven_is_the_oven(String name) {
    var asked = kitchen(oven("range")).ovens().asked(name);

    assertThat(asked).isEqualTo(new For<>(new View.OfPlace(new Place("range", ""), "the oven")));
  }

  @Test
  void of_two_ovens_none_is_the_oven() {
    var two = kitchen(oven("range") + ", " + oven("deck")).ovens();

    assertThat(two.asked("deck"))
        .isEqualTo(new For<>(new View.OfPlace(new Place("deck", ""), "the deck")));
    assertThat(two.asked("oven")).isEqualTo(
        new Wrong<View>(List.of("there is no oven \"oven\"", "There is: range, deck")));
  }

  @Test
  void a_kitchen_without_an_oven_says_so() {
    assertThat(new Named<View>("oven", List.of()).asked("oven"))
        .isEqualTo(new Wrong<View>(List.of("there is no oven \"oven\"", "There is none.")));
  }
}
