package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.TWO;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Stretch;
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
    return SheetLines.lines(PartSheet.of(supper(), new Part(view, null), 400, false));
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
        .contains("Nothing is done there.");
  }

  @Test
  void what_another_brings_once_all_sit_is_the_others() {
    var plan = HandPlan.forProblem(KITCHEN + TWO + MENU)
        .run("Pie/fill", at("17:00"))
        .run("Pie/bake", at("18:00"), run -> run.by("Jonas"))
        .run("Salad/dress", at("19:05"), run -> run.by("Mira"))
        .plan();

    var jonas = PartSheet.of(plan, new Part(new View.OfCook("Jonas"), null), 400, false);
    var mira = PartSheet.of(plan, new Part(new View.OfCook("Mira"), null), 400, false);

    assertThat(jonas).doesNotContain("Salad");
    assertThat(mira).contains("Salad");
  }

  @Test
  void a_part_says_that_it_is_one() {
    assertThat(lines(new View.OfCook("Jonas")).getLast()).startsWith("This is a part.");
  }

  private static List<String> lines(View view, String from, String to) {
    return SheetLines
        .lines(PartSheet.of(supper(), new Part(view, new Stretch(at(from), at(to))), 400, false));
  }

  @Test
  void the_next_hour_is_what_is_under_way_and_then_what_is_to_be_done() {
    assertThat(lines(new View.Whole(), "18:10", "19:00")).containsSubsequence(
        "Saturday 10 October 2026, 18:10 to 19:00.",
        "Under way at 18:10",
        "Oven | 180 C until 18:45.",
        "Saturday 10 October, on the day",
        "18:20 | Jonas | Pie | Bake: hands-on until 18:22.",
        "18:45 | Jonas | Pie | Out of the oven. Onto the counter until 19:00.")
        .noneMatch(line -> line.contains("AT THE TABLE"));
  }

  @Test
  void a_while_begins_with_its_first_minute_and_ends_before_its_last() {
    assertThat(lines(new View.Whole(), "19:00", "19:01")).contains("19:00 | Pie | To the table (dish).");
    assertThat(lines(new View.Whole(), "18:59", "19:00"))
        .noneMatch(line -> line.contains("To the table"));
  }

  @Test
  void of_a_fridge_it_is_first_told_what_stands_in_it() {
    assertThat(lines(new View.OfPlace(Place.all("fridge"), "the fridge"), "17:50", "18:50"))
        .containsSubsequence("Only what concerns the fridge.", "Saturday 10 October 2026, 17:50 to 18:50.",
            "Under way at 17:50", "Fridge, top shelf | Pie (dish) until 18:00.")
        .anyMatch(line -> line.startsWith("18:00 | Jonas | Pie | Out of the fridge, top shelf."))
        .noneMatch(line -> line.startsWith("Oven"));
  }

  @Test
  void a_cook_is_told_only_what_their_own_hands_are_at() {
    assertThat(lines(new View.OfCook("Mira"), "12:10", "12:15"))
        .contains("Mira | Pie (fill), hands-on until 12:20.");
    assertThat(lines(new View.OfCook("Jonas"), "12:10", "12:15"))
        .contains("Nothing is under way, and nothing is to be done before 12:20.");
  }

  @Test
  void an_hour_without_work_says_when_there_is_some() {
    assertThat(lines(new View.Whole(), "13:00", "14:00")).contains(
        "Fridge, top shelf | Pie (dish) until 18:00.", "Nothing is to be done before 17:50.");
    assertThat(lines(new View.Whole(), "9:00", "10:00"))
        .contains("Nothing is under way, and nothing is to be done before 12:00.");
  }

  @Test
  void when_all_is_over_it_says_so() {
    assertThat(lines(new View.Whole(), "20:00", "21:00")).contains("Nothing is under way, and all is done.");
    assertThat(lines(new View.Whole(), "19:05", "20:00")).contains("Nothing more is to be done.");
  }
}
