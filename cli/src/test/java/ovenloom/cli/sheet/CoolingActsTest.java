package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.lines;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.plan.Where;

/**
 * Where the sheet says to probe what cools. FDA Food Code 2017, 3-501.14(A): 135 F (57 C) to 70 F (21 C) in 2 h, and to 41 F (5 C) in 6 h in
 * all; 3-403.11(A): heated again to 165 F (74 C). 63 C to 8 C in 90 min is cook-chill practice of the trade. Soup done at 57 C begins
 * to count as it comes off the heat.
 */
class CoolingActsTest {

  private static final String SOUP = """
      dishes:
        - dish: Soup
          kind: liquid
          thick: 2 cm
          steps: [{do: simmer, takes: 30 min, burner: large, in: pot, core: 57 C, keeps: {fridge: 2 days}}]
      """;

  private static final String TWO_HOURS = "14:30 | Soup | Probe the middle: 21 C or less. If it is warmer,"
      + " heat it to 74 C again and cool it faster, in smaller pans, or throw it away.";
  private static final String SIX_HOURS = "18:30 | Soup | Probe the middle: 5 C or less."
      + " If it is warmer, throw it away.";

  private static List<String> cooled(String head, String cooks, String dishes, int from) {
    return lines(HandPlan.forProblem(head + KITCHEN + cooks + dishes)
        .run("Soup/simmer", from)
        .waits("Soup/simmer", fridge(), at("19:00"))
        .plan());
  }

  private static List<String> cooled(String head, String dishes) {
    return cooled(head, HOST, dishes, at("12:00"));
  }

  private static Where.OnShelf fridge() {
    return new Where.OnShelf("fridge", List.of("top"));
  }

  private static String hours(String day, String hours) {
    return "cooks: [{name: Host, hours: {" + day + ": " + hours + ", on the day: [18:00-21:00]}}]\n";
  }

  @Test
  void what_cools_is_probed_when_two_hours_are_over_and_when_six_are() {
    var lines = cooled("rules: us-service\n", SOUP);

    assertThat(lines).containsSubsequence(TWO_HOURS, SIX_HOURS);
  }

  @Test
  void where_no_rules_are_named_the_limits_hold_too() {
    assertThat(cooled("", SOUP)).contains(TWO_HOURS, SIX_HOURS);
  }

  @Test
  void the_two_hours_begin_when_it_is_predicted_to_be_at_57_and_not_as_it_boils() {
    var lines = cooled("rules: us-service\n", SOUP.replace("core: 57 C", "core: 95 C"));

    assertThat(lines).doesNotContain(TWO_HOURS)
        .filteredOn(line -> line.contains("Probe the middle: 21 C or less."))
        .singleElement()
        .matches(line -> line.compareTo("14:31") > 0 && line.compareTo("16:30") < 0);
  }

  @Test
  void cook_chill_practice_has_one_limit_and_no_second_try() {
    assertThat(cooled("rules: uk\n", SOUP))
        .filteredOn(line -> line.contains("If it is warmer"))
        .containsExactly("14:00 | Soup | Probe the middle: 8 C or less. If it is warmer, throw it away.");
  }

  @Test
  void rules_without_limits_of_cooling_and_food_that_need_not_be_cold_ask_for_no_thermometer() {
    var home = cooled("rules: us-home\n", SOUP);
    var jam = cooled("rules: us-service\n",
        SOUP.replace("kind: liquid", "kind: liquid\n    tags: [not tcs]"));

    assertThat(home).noneMatch(line -> line.contains("If it is warmer"));
    assertThat(jam).noneMatch(line -> line.contains("If it is warmer"));
  }

  /** USDA-FSIS charts for homes say how long food may be left out, and not how fast it is to cool. */
  @Test
  void rules_without_limits_of_cooling_say_so_where_others_would_ask_for_a_thermometer() {
    String home = "What is safe is held against the rules us-home";
    String noLimit = home + ", which set no limit to how fast cooked food cools.";

    assertThat(cooled("rules: us-home\n", SOUP)).contains(noLimit);
    assertThat(cooled("rules: us-home\n", HOST, SOUP, at("16:50"))).contains(home + ".");
    assertThat(cooled("rules: us-service\n", SOUP)).noneMatch(line -> line.contains("no limit"));
  }

  @Test
  void what_is_eaten_before_the_time_is_over_is_not_probed() {
    var inTime = cooled("rules: us-service\n", HOST, SOUP, at("16:50"));
    var aMinuteOver = cooled("rules: us-service\n", HOST, SOUP, at("16:49"));

    assertThat(inTime).noneMatch(line -> line.contains("If it is warmer"));
    assertThat(aMinuteOver).filteredOn(line -> line.contains("Probe the middle"))
        .as("a quarter of an hour before it is served")
        .singleElement()
        .asString()
        .startsWith("18:45 | Soup | Probe the middle: ")
        .doesNotContain("nobody is here");
  }

  @Test
  void what_is_heated_again_before_the_six_hours_are_over_is_probed_after_two_alone() {
    String warmed = SOUP
        .replace("}}]", "}}, {do: warm, takes: 10 min, burner: large, keeps: {counter: 9 h}}]");

    var lines = lines(HandPlan.forProblem("rules: us-service\n" + KITCHEN + HOST + warmed)
        .run("Soup/simmer", at("15:30"))
        .waits("Soup/simmer", fridge(), at("18:30"))
        .run("Soup/warm", at("18:30"))
        .plan());

    assertThat(lines).filteredOn(line -> line.contains("If it is warmer"))
        .singleElement()
        .asString()
        .startsWith("18:00 | Soup | Probe the middle: 21 C or less.");
  }

  @Test
  void what_is_frozen_before_the_time_is_over_is_not_probed() {
    String kitchen = KITCHEN.replace("cold: [",
        "cold: [{name: freezer, holds: -30 C, air: blast, shelves: [{name: only, size: 50 x 35 x 20 cm}]}, ");

    var lines = lines(HandPlan.forProblem("rules: us-service\n" + kitchen + HOST + SOUP)
        .run("Soup/simmer", at("12:00"))
        .waits("Soup/simmer", new Where.OnShelf("freezer", List.of("only")), at("19:00"))
        .plan());

    assertThat(lines).contains("12:30 | Soup | Off the burner. Into the freezer, until 19:00.")
        .noneMatch(line -> line.contains("If it is warmer"));
  }

  @Test
  void it_is_probed_before_the_last_cook_leaves_against_how_warm_it_is_predicted() {
    var lines = cooled("rules: us-service\n", hours("day before", "[8:00-13:30, 17:00-21:00]"), SOUP,
        at("12:00") - 1440);

    assertThat(lines)
        .anyMatch(line -> line.matches("13:30 \\| Soup \\| Probe the middle: (2[2-9]|[34]\\d) C or less\\."
            + " If it is warmer, cool it faster, in smaller pans or ice water\\. Must be 21 C or less by 14:30, when"
            + " nobody is here\\."))
        .contains("17:00 | Soup | Probe the middle: 21 C or less. If it is warmer, throw it away.",
            SIX_HOURS);
  }

  @Test
  void limits_that_are_over_when_nobody_is_there_are_told_in_one_line() {
    var lines = cooled("rules: us-service\n", hours("day before", "[8:00-13:30]"), SOUP, at("12:00") - 1440);

    assertThat(lines).filteredOn(line -> line.contains("If it is warmer"))
        .satisfiesExactly(
            told -> assertThat(told).startsWith("13:30 | ")
                .endsWith("Must be 21 C or less by 14:30 and 5 C or less by 18:30, when nobody is here."),
            back -> assertThat(back)
                .isEqualTo("18:00 | Soup | Probe the middle: 5 C or less. If it is warmer, throw it away."));
  }

  @Test
  void the_first_limit_is_read_and_the_second_is_told_where_the_last_cook_leaves_at_the_first() {
    var lines = cooled("rules: us-service\n", hours("day before", "[8:00-14:30]"), SOUP, at("12:00") - 1440);

    assertThat(lines).contains(TWO_HOURS + " Must be 5 C or less by 18:30, when nobody is here.",
        "18:00 | Soup | Probe the middle: 5 C or less. If it is warmer, throw it away.");
  }

  @Test
  void food_that_is_still_hot_as_the_last_cook_leaves_is_not_read() {
    var lines = cooled("rules: us-service\n", hours("day before", "[8:00-12:30]"),
        SOUP.replace("core: 57 C", "core: 95 C"), at("12:00") - 1440);

    assertThat(lines).anyMatch(line -> line.startsWith("12:30 | Soup | Must be 21 C or less by "))
        .noneMatch(line -> line.contains("Probe the middle: 21 C"));
  }

  @Test
  void batches_that_are_predicted_to_be_there_together_are_probed_together() {
    assertThat(twoBatches("2 cm")).filteredOn(line -> line.contains("Probe the middle: 21 C"))
        .singleElement()
        .asString()
        .startsWith("14:30 | Soup | Both batches. Probe the middle");
  }

  @Test
  void batches_that_are_not_are_probed_each_in_its_time() {
    assertThat(twoBatches("10 cm")).filteredOn(line -> line.contains("Probe the middle: 21 C"))
        .extracting(line -> line.substring(0, line.indexOf(" Probe")))
        .containsExactly("14:30 | Soup | Batch 1 of 2.", "14:40 | Soup | Batch 2 of 2.");
  }

  private static List<String> twoBatches(String thick) {
    String soup = SOUP.replace("thick: 2 cm", "thick: " + thick + "\n    portions: 4");
    return lines(HandPlan.forProblem("rules: us-service\n" + KITCHEN + HOST + soup)
        .run("Soup/simmer", at("12:00"))
        .run("Soup/simmer", at("12:10"), run -> run.batches(2, 2))
        .batchWaits(1, "Soup/simmer", fridge(), at("19:00"))
        .batchWaits(2, "Soup/simmer", fridge(), at("19:00"))
        .plan());
  }
}
