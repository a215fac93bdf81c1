package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.TWO;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/** What one cook reads, or whoever stands before one oven. */
class PartSheetTest {

  private static final String MENU = """
      dishes:
        - dish: Pie
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {fridge: 2 days}}
            - do: bake
              takes: 40-45 min
              bake: {at: 180 C}
              core: 74 C
              hands: [{at: 20 min, for: 2 min}]
              keeps: {counter: 1 h}
        - dish: Salad
          steps:
            - {do: dress, takes: 10 min, hands: throughout, in: platter, serve: yes}
      """;

  private static Plan supper() {
    return HandPlan.forProblem(KITCHEN + TWO + MENU)
        .run("Pie/fill", at("12:00"), run -> run.by("Mira"))
        .waits("Pie/fill", new Where.OnShelf("fridge", List.of("top")), at("18:00"))
        .run("Pie/bake", at("18:00"), run -> run.by("Jonas"))
        .run("Salad/dress", at("19:00"), run -> run.by("Mira"))
        .plan();
  }

  private static List<String> lines(View view) {
    return SheetLines.lines(PartSheet.of(supper(), view, 400, false));
  }

  @Test
  void a_cook_sees_what_is_theirs_and_what_goes_to_the_table_whoever_brings_it() {
    var lines = lines(new View.OfCook("Jonas"));

    assertThat(lines).containsSubsequence("Supper", "Only what Jonas does, and what goes to the table.",
        "18:20 | Jonas | Pie | Bake: hands-on until 18:22.",
        "19:00 | SUPPER | AT THE TABLE. Served until 19:20.",
        "19:00 | Pie | To the table (dish).",
        "19:00 | Mira | Salad | Dress (platter): 10 min, until 19:10. To the table.");
    assertThat(lines).noneMatch(line -> line.startsWith("12:00"));
  }

  @Test
  void an_oven_shows_its_dial_and_what_happens_to_what_is_in_it() {
    var lines = lines(new View.OfPlace(Place.all("oven"), "the oven"));

    assertThat(lines).containsSubsequence("Only what concerns the oven.",
        "17:50 | Mira | Oven | Preheat: 180 C, ready at 18:00.",
        "18:20 | Jonas | Pie | Bake: hands-on until 18:22.",
        "18:45 | Jonas | Pie | Out of the oven. Onto the counter until 19:00.");
    assertThat(lines).noneMatch(line -> line.contains("Salad") || line.contains("SUPPER"));
  }

  @Test
  void a_shelf_shows_what_is_put_on_it_and_taken_off() {
    var lines = lines(new View.OfPlace(new Place("fridge", "top"), "the fridge, top shelf"));

    assertThat(lines.stream().filter(line -> line.startsWith("1"))).containsExactly(
        "12:20 | Jonas | Pie | Into the fridge, top shelf, until 18:00.",
        "18:00 | Jonas | Pie | Out of the fridge, top shelf. Into the oven (dish): lower rack, 180 C."
            + " Look from 18:40, out by 18:45, at 74 C inside.");
  }

  @Test
  void where_nothing_is_done_it_says_so() {
    assertThat(lines(new View.OfPlace(new Place("fridge", "low"), "the fridge, low shelf")))
        .contains(
            "Nothing is done there. This is a part. The whole sheet also says how warm each dish is at the table,"
                + " and what a plan cannot know.");
  }

  @Test
  void a_part_says_that_it_is_one() {
    assertThat(lines(new View.OfCook("Jonas")).getLast()).startsWith("This is a part.");
  }
}
