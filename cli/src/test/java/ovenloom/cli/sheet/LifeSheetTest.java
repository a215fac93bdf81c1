package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.life.Life;
import ovenloom.model.menu.Dish;

/** A dish's life over midnight tells the day on which each place ends. */
class LifeSheetTest {

  private static final int A_DAY = 24 * 60;

  private static List<String> life(String chills) {
    var plan = HandPlan.forProblem("""
        ovenloom: 1
        event: Supper
        rules: us-home
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {day before: 8:00-23:00, on the day: 8:00-20:00}}]
        dishes:
          - dish: Soup
            arrives: cold
            steps:
              - {do: boil, takes: 30 min, burner: small, in: saucepan}
              - {do: chill, takes: %s, cold: fridge}
              - {do: season, takes: 5 min, hands: throughout}
        """.formatted(chills))
        .run("Soup/boil", at("21:30") - A_DAY)
        .run("Soup/chill", at("22:00") - A_DAY)
        .run("Soup/season", at("18:55"))
        .plan();
    Dish soup = plan.event().dish("Soup");
    return LifeSheet.of(plan, Objects.requireNonNull(Life.of(plan, 1).of(soup, 1)), soup, 1, 100, false)
        .lines()
        .toList();
  }

  @Test
  void what_ends_after_midnight_says_on_which_day() {
    assertThat(life("11 h")).containsSubsequence("Friday 9 October")
        .anyMatch(line -> line.startsWith("21:30 - 22:00 "))
        .anyMatch(line -> line.startsWith("22:00 - Saturday 09:00  "))
        .containsSubsequence("Saturday 10 October")
        .anyMatch(line -> line.startsWith("09:00 - 18:55 "));
  }

  @Test
  void what_ends_at_midnight_ends_that_night() {
    assertThat(life("2 h")).anyMatch(line -> line.startsWith("22:00 - midnight  "))
        .anyMatch(line -> line.startsWith("00:00 - 18:55 "));
  }
}
