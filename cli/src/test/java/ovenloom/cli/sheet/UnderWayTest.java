package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.TWO;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/** What goes on at a minute. */
class UnderWayTest {

  private static final String PIE = """
      dishes:
        - dish: Pie
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {fridge: 2 days}}
            - {do: bake, takes: 40-45 min, bake: {at: 180 C}, keeps: {oven: 1 h, counter: 1 h}}
        - dish: Soup
          steps: [{do: simmer, takes: 30 min, burner: large, in: pot}]
        - dish: Buns
          portions: 4
          steps:
            - {do: shape, takes: 10 min, hands: throughout, in: tray}
            - {do: prove, takes: 60 min}
      """;

  private static final Where TOP = new Where.OnShelf("fridge", List.of("top"));

  private static HandPlan supper() {
    return HandPlan.forProblem(KITCHEN + TWO + PIE)
        .run("Pie/fill", at("12:00"))
        .waits("Pie/fill", TOP, at("18:00"))
        .run("Pie/bake", at("18:00"), run -> run.racks(1))
        .run("Soup/simmer", at("18:10"))
        .run("Buns/shape", at("17:00"), run -> run.by("Jonas"))
        .run("Buns/shape", at("17:00"), run -> run.batches(2, 2))
        .run("Buns/prove", at("17:10"))
        .run("Buns/prove", at("17:10"), run -> run.batches(2, 2));
  }

  private static List<String> goingOn(Plan plan, String time) {
    return new UnderWay(Book.of(plan), at(time)).all()
        .stream()
        .map(each -> each.thing() + " | " + each.words())
        .toList();
  }

  @Test
  void it_is_told_where_all_the_food_is_and_until_when() {
    assertThat(goingOn(supper().plan(), "18:15")).containsExactly("Oven | 180 C until 18:45.",
        "Oven | Upper rack: Pie (dish), bake until 18:45.",
        "Large burner | Soup (pot), simmer until 18:40.",
        "Counter | Buns (2 x tray) until 19:00.");
  }

  @Test
  void food_under_hands_is_told_with_them_and_what_proves_stands_on_the_counter() {
    assertThat(goingOn(supper().plan(), "17:05")).containsExactly(
        "Fridge, top shelf | Pie (dish) until 18:00.",
        "Mira | Buns, batch 2 (shape), hands-on until 17:10.",
        "Jonas | Buns, batch 1 (shape), hands-on until 17:10.");
    assertThat(goingOn(supper().plan(), "17:30"))
        .contains("Counter | Buns (2 x tray), prove until 18:10, there until 19:00.");
  }

  @Test
  void two_batches_of_three_under_hands_are_told_both() {
    var plan = HandPlan
        .forProblem(KITCHEN + HOST
            + """
                dishes:
                  - dish: Buns
                    portions: 3
                    steps: [{do: glaze, takes: 10 min, hands: throughout, together: 2, in: tray, keeps: {counter: 2 h}}]
                """)
        .run("Buns/glaze", at("17:00"), run -> run.batches(1, 2))
        .run("Buns/glaze", at("17:10"), run -> run.batches(3, 3))
        .plan();

    assertThat(goingOn(plan, "17:05"))
        .containsExactly("Host | Buns, batches 1 and 2 (glaze), hands-on until 17:10.");
  }

  @Test
  void what_ends_with_the_minute_is_still_there_and_what_begins_is_not_yet() {
    assertThat(goingOn(supper().plan(), "18:00")).containsExactly("Oven | Warming: 180 C at 18:00.",
        "Fridge, top shelf | Pie (dish) until 18:00.",
        "Counter | Buns (2 x tray), prove until 18:10, there until 19:00.");
    assertThat(goingOn(supper().plan(), "17:10")).contains("Counter | Buns (2 x tray) until 17:10.")
        .noneMatch(line -> line.contains("hands-on"));
  }

  @Test
  void an_oven_that_is_off_may_hold_food_and_one_that_is_on_none() {
    var off = supper().waits("Pie/bake", new Where.InOven("oven", null), at("19:00")).plan();
    var on = supper().oven(new OvenLog("oven", List.of(
        new Span(Doing.AT, Setting.celsius(180), "still", new Stretch(at("17:00"), at("17:10"))),
        new Span(Doing.AT, Setting.celsius(180), "still", new Stretch(at("17:10"), at("17:30"))),
        new Span(Doing.COOLING, Setting.celsius(90), "still", new Stretch(at("17:30"), at("17:50"))),
        new Span(Doing.AT, Setting.celsius(90), "still", new Stretch(at("17:50"), at("18:00"))))))
        .plan();

    assertThat(goingOn(off, "18:50")).contains("Oven | Off.", "Oven | Upper rack: Pie (dish) until 19:00.");
    assertThat(goingOn(on, "17:05")).contains("Oven | 180 C until 17:30.");
    assertThat(goingOn(on, "17:40")).contains("Oven | Cooling: 90 C at 17:50.");
  }

  @Test
  void what_a_share_was_taken_of_is_what_is_left() {
    var plan = HandPlan
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
        .plan();

    assertThat(goingOn(plan, "18:40")).containsExactly("Counter | What is left of Lamb (dish) until 18:50.",
        "Counter | Lamb (platter), rest until 19:00.");
  }

  @Test
  void who_washes_up_is_told() {
    assertThat(goingOn(supper().wash("dish", 2, at("17:30"), "Mira").plan(), "17:32"))
        .contains("Mira | Wash up 2 x dish until 17:35.");
  }

  @Test
  void before_all_and_after_all_nothing_goes_on() {
    assertThat(goingOn(supper().plan(), "12:00")).isEmpty();
    assertThat(goingOn(supper().plan(), "19:05")).isEmpty();
  }
}
