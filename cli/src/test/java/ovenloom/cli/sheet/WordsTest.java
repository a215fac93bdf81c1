package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {

  private static Words kitchen(String kitchen) {
    return new Words(HandPlan.read("""
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {on the day: 8:00-20:00}}]
        dishes: [{dish: Bread, steps: [{do: slice, takes: 5 min, hands: throughout}]}]
        kitchen:
        """ + kitchen.indent(2)).kitchen());
  }

  private static Words oven(int racks) {
    return kitchen("""
        ovens:
          - name: oven
            dial: 60 C to 260 C
            heats: 180 C in 12 min
            cools: 200 C to 150 C in 15 min
            racks: {count: %d, size: 55 x 38 cm, clear: 15 cm}
        """.formatted(racks));
  }

  private static String racks(int count, Integer... racks) {
    return oven(count).racks("oven", List.of(racks));
  }

  @Test
  void racks_are_pointed_at_in_words_as_long_as_there_are_few() {
    assertThat(racks(1, 0)).isEqualTo("only rack");
    assertThat(racks(2, 0)).isEqualTo("lower rack");
    assertThat(racks(2, 1)).isEqualTo("upper rack");
    assertThat(racks(2, 1, 0)).isEqualTo("both racks");
    assertThat(racks(3, 0)).isEqualTo("bottom rack");
    assertThat(racks(3, 1)).isEqualTo("middle rack");
    assertThat(racks(3, 0, 2)).isEqualTo("bottom and top racks");
  }

  @Test
  void many_racks_are_counted_from_the_bottom() {
    assertThat(racks(10, 0)).isEqualTo("bottom rack");
    assertThat(racks(10, 1)).isEqualTo("2nd rack from the bottom of 10");
    assertThat(racks(10, 2)).isEqualTo("3rd rack from the bottom of 10");
    assertThat(racks(10, 9)).isEqualTo("top rack");
    assertThat(racks(10, 1, 2, 3, 3)).isEqualTo("racks 2 to 4 of 10 from the bottom");
    assertThat(racks(10, 0, 4)).isEqualTo("racks 1 and 5 of 10 from the bottom");
    assertThat(racks(4, 0, 1, 2, 3)).isEqualTo("all 4 racks");
  }

  @Test
  void the_only_oven_needs_no_name() {
    assertThat(oven(2).oven("oven")).isEqualTo("the oven");
    assertThat(oven(2).ovenAlone("oven")).isEqualTo("Oven");
  }

  @Test
  void a_mode_is_told_where_an_oven_has_several() {
    var words = kitchen("""
        ovens:
          - name: combi
            dial: 60 C to 260 C
            modes: [still, fan, steam]
            heats: 180 C in 12 min
            cools: 200 C to 150 C in 15 min
            racks: {size: 55 x 38 cm, clear: 15 cm}
        """);

    assertThat(words.mode("combi", "still")).isEqualTo("fan off, ");
    assertThat(words.mode("combi", "fan")).isEqualTo("fan on, ");
    assertThat(words.mode("combi", "steam")).isEqualTo("steam, ");
    assertThat(oven(1).mode("oven", "still")).isEmpty();
  }

  @Test
  void any_burner_of_its_size_will_do_unless_it_has_a_name() {
    var words = kitchen("burners: [large, large, small, {name: wok ring, size: large}]");

    assertThat(words.burners(List.of("large burner 2"))).isEqualTo("a large burner");
    assertThat(words.burners(List.of("large burner 1", "large burner 2"))).isEqualTo("2 x large burner");
    assertThat(words.burners(List.of("wok ring"))).isEqualTo("the wok ring");
    assertThat(kitchen("burners: [large, large]").burners(List.of("large burner 1"))).isEqualTo("a burner");
  }

  @Test
  void shelves_are_named_with_their_fridge() {
    var words = kitchen("""
        cold:
          - name: fridge
            holds: 4 C
            shelves: [{name: top, size: 50 x 35 x 20 cm}, {name: salad drawer, size: 50 x 35 x 20 cm}]
          - {name: walk-in, holds: 3 C, shelves: {count: 6, size: 50 x 35 x 20 cm}}
          - {name: chest, holds: 3 C, shelves: {size: 50 x 35 x 20 cm}}
        """);

    assertThat(words.shelves("fridge", List.of("top"))).isEqualTo("the fridge, top shelf");
    assertThat(words.shelves("fridge", List.of("salad drawer"))).isEqualTo("the fridge, salad drawer");
    assertThat(words.shelves("walk-in", List.of("shelf 2", "shelf 3", "shelf 4")))
        .isEqualTo("the walk-in, shelves 2 to 4");
    assertThat(words.shelves("walk-in", List.of("shelf 2", "shelf 2"))).isEqualTo("the walk-in, shelf 2");
    assertThat(words.shelves("chest", List.of("shelf 1"))).isEqualTo("the chest");
  }

  @Test
  void shelves_that_only_have_numbers_are_counted_from_the_top_where_food_goes_in() {
    var words = kitchen("""
        cold:
          - name: fridge
            holds: 4 C
            shelves: [{name: shelf 2, size: 50 x 35 x 20 cm}, {name: shelf 1, size: 50 x 35 x 20 cm}]
          - {name: walk-in, holds: 3 C, shelves: {count: 6, size: 50 x 35 x 20 cm}}
          - {name: chest, holds: 3 C, shelves: {size: 50 x 35 x 20 cm}}
        """);

    assertThat(words.ontoShelves("walk-in", List.of("shelf 6")))
        .isEqualTo("the walk-in, shelf 6 from the top");
    assertThat(words.ontoShelves("walk-in", List.of("shelf 2", "shelf 3", "shelf 4")))
        .isEqualTo("the walk-in, shelves 2 to 4 from the top");
    assertThat(words.ontoShelves("fridge", List.of("shelf 1")))
        .as("a number that its owner gave it")
        .isEqualTo("the fridge, shelf 1");
    assertThat(words.ontoShelves("chest", List.of("shelf 1"))).isEqualTo("the chest");
  }
}
