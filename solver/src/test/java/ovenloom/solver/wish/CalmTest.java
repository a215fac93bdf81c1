package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.Wish;
import ovenloom.solver.supper.Decoded;

/**
 * A point a minute of hands in the last hour, two a minute in which nobody is free in the last two, and one for twenty
 * minutes of hands on the day.
 */
class CalmTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} minutes ending {1} before the table: {2}")
  @CsvSource({
      "30, 0, 91", // 30 in the last hour, 30 of the last two with no hand free, 1 for the day
      "30, 60, 61", // 17:30 to 18:00: none in the last hour
      "30, 45, 76", // 17:45 to 18:15: 15 in the last hour
      "30, 119, 3", // 16:31 to 17:01: one minute of the last two hours
      "30, 120, 1", "20, 120, 1", "19, 120, 0", "40, 120, 2"})
  void one_cook_at_work(int minutes, int before, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Table, food: no, steps: [{do: lay, takes: %d min, hands: throughout}]}
        """.formatted(minutes)).earlier("Table/lay", before);

    assertThat(supper.points(Wish.CALM)).isEqualTo(points);
  }

  /** 30 for the last hour and 1 for the day: the other's hands were free. */
  @Test
  void a_second_cook_with_free_hands_saves_two_points_a_minute() throws IOException {
    assertThat(layTheTable("{on the day: 8:00-20:00}").points(Wish.CALM)).isEqualTo(31);
  }

  /** The last ten minutes have no free hand: 30 and 2 x 10 and 1. */
  @Test
  void a_second_cook_on_a_break_is_no_free_hand() throws IOException {
    Decoded supper = layTheTable("{on the day: 8:00-20:00}, breaks: {on the day: 18:50-19:20}");

    assertThat(supper.points(Wish.CALM)).isEqualTo(51);
  }

  /** Gone for the last ten minutes: the same. */
  @Test
  void a_second_cook_who_has_gone_home_is_no_free_hand() throws IOException {
    assertThat(layTheTable("{on the day: 8:00-18:50}").points(Wish.CALM)).isEqualTo(51);
  }

  private Decoded layTheTable(String secondCooksHours) throws IOException {
    return WishedFor.supper(folder, """
        cooks:
          - {name: First, skills: [linen], hours: {on the day: 8:00-20:00}}
          - {name: Second, hours: %s}
        """.formatted(secondCooksHours), """
          - {dish: Table, food: no, steps: [{do: lay, takes: 30 min, hands: throughout, skill: linen}]}
        """);
  }

  /** Four hands for ten minutes: 20 in the last hour, 2 x 10 with nobody free, 1 for 20 minutes of the day. */
  @Test
  void two_cooks_at_one_thing_are_two_cooks() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
        cooks:
          - {name: First, hours: {on the day: 8:00-20:00}}
          - {name: Second, hours: {on the day: 8:00-20:00}}
        """, """
          - {dish: Table, food: no, steps: [{do: carry, takes: 10 min, hands: throughout, cooks: 2}]}
        """);

    assertThat(supper.points(Wish.CALM)).isEqualTo(20 + 20 + 1);
  }

  /** Only the cutting, done before 17:00, counts: 20 minutes of the day. */
  @Test
  void serving_is_free() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Salad
            steps:
              - {do: cut, takes: 20 min, hands: throughout, in: tray, keeps: {fridge: 1 day}}
              - {do: plate, takes: 20 min, hands: throughout, serve: yes}
        """).earlier("Salad/cut", 120);

    assertThat(supper.points(Wish.CALM)).isEqualTo(1);
  }

  /** 19:00 is before both courses, and 18:40 to 19:00 still counts once: 20, 2 x 20 and 1. */
  @Test
  void a_minute_before_two_courses_counts_once_and_a_course_without_a_dish_not_at_all() throws IOException {
    Decoded supper = Decoded.of(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        clock: 1 min
        courses:
          - {name: nothing yet, at: 2026-11-20 12:00}
          - {name: supper, at: 2026-11-20 19:00}
          - {name: sweet, at: 2026-11-20 19:30}
        cooks: [{name: Cook, hours: {on the day: [11:30-11:40, 18:40-19:00]}}]
        dishes:
          - {dish: Table, course: supper, food: no, steps: [{do: lay, takes: 20 min, hands: throughout}]}
          - {dish: Flowers, course: sweet, food: no, steps: [{do: cut, takes: 10 min, hands: throughout}]}
        """);

    assertThat(supper.told().when("Flowers/cut")).containsExactly("11:30-11:40");
    assertThat(supper.points(Wish.CALM)).isEqualTo(20 + 2 * 20 + 1);
  }

  /** 18 minutes from 19:00, before the sweet's own two hours, and one in the morning: under 20 for the day. */
  @Test
  void once_a_course_is_on_the_table_its_hour_is_over() throws IOException {
    Decoded supper = Decoded.of(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        clock: 1 min
        courses: [{name: supper, at: 2026-11-20 19:00}, {name: sweet, at: 2026-11-20 22:00}]
        cooks: [{name: Cook, hours: {on the day: [9:00-9:01, 19:00-19:18]}}]
        dishes:
          - {dish: Table, course: supper, food: no, steps: [{do: look, takes: 1 min, hands: throughout}]}
          - {dish: Flowers, course: sweet, food: no, steps: [{do: cut, takes: 18 min, hands: throughout}]}
        """);

    assertThat(supper.told().when("Flowers/cut")).containsExactly("19:00-19:18");
    assertThat(supper.points(Wish.CALM)).isZero();
  }
}
