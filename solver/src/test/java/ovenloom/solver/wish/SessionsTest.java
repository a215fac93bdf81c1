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

/** Before the day, ten points each time somebody starts work after an hour's pause; a point a wash. */
class SessionsTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "ten minutes from 17:00, ten from {0}: {1}")
  @CsvSource({"18:09-18:19, 10", "18:10-18:20, 20"})
  void a_pause_of_59_minutes_is_none_and_one_of_60_is(String second, long points) throws IOException {
    assertThat(twoErrands("day before: [17:00-17:10, " + second + "]").points(Wish.SESSIONS))
        .isEqualTo(points);
  }

  @Test
  void work_on_the_day_itself_is_free() throws IOException {
    assertThat(twoErrands("on the day: [10:00-10:10, 15:00-15:10]").points(Wish.SESSIONS)).isZero();
  }

  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"4, 0", "5, 10"})
  void four_minutes_are_hardly_work_and_five_are(int minutes, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, "cooks: [{name: Cook, hours: {day before: 17:00-18:00}}]\n",
        "  - {dish: Errand, food: no, steps: [{do: buy, takes: %d min, hands: throughout}]}\n"
            .formatted(minutes));

    assertThat(supper.points(Wish.SESSIONS)).isEqualTo(points);
  }

  /** Three minutes and two more half an hour later are five in one sitting. */
  @Test
  void short_bits_of_work_within_the_hour_add_up() throws IOException {
    Decoded supper = WishedFor.supper(folder,
        "cooks: [{name: Cook, hours: {day before: [17:00-17:03, 17:33-17:35]}}]\n", """
              - {dish: Bread, food: no, steps: [{do: order, takes: 3 min, hands: throughout}]}
              - {dish: Wine, food: no, steps: [{do: chill, takes: 2 min, hands: throughout}]}
            """);

    assertThat(supper.points(Wish.SESSIONS)).isEqualTo(10);
  }

  /** 23:56 to 0:06 has four minutes before the day; 23:55 to 0:05 has five. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"23:56-00:06, 0", "23:55-00:05, 10"})
  void the_day_begins_at_midnight(String hours, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder,
        "cooks: [{name: Cook, hours: {day before: %s}}]\n".formatted(hours),
        "  - {dish: Errand, food: no, steps: [{do: buy, takes: 10 min, hands: throughout}]}\n");

    assertThat(supper.points(Wish.SESSIONS)).isEqualTo(points);
  }

  @Test
  void two_cooks_at_work_at_once_are_one_sitting() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
        cooks:
          - {name: First, hours: {day before: 17:00-17:10}}
          - {name: Second, hours: {day before: 17:00-17:10}}
        """, ERRANDS);

    assertThat(supper.points(Wish.SESSIONS)).isEqualTo(10);
  }

  @ParameterizedTest(name = "{0} trays: {1}")
  @CsvSource({"1, 1", "2, 0"})
  void a_wash_is_a_point(int trays, long points) throws IOException {
    Decoded supper = Decoded.of(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        kitchen: {landing: 9, vessels: {tray: %d, plate: 8}}
        cooks: [{name: Cook, hours: {on the day: 8:00-20:00}}]
        dishes:
          - {dish: Salad, steps: [{do: cut, takes: 10 min, hands: throughout, in: tray}, %s]}
          - {dish: Fruit, steps: [{do: cut, takes: 10 min, hands: throughout, in: tray}, %s]}
        """.formatted(trays, ON_PLATES, ON_PLATES));

    assertThat(supper.told().washes()).hasSize((int) points);
    assertThat(supper.points(Wish.SESSIONS)).isEqualTo(points);
  }

  private static final String ON_PLATES = "{do: arrange, takes: 5 min, hands: throughout, in: {plate: 4}, keeps: {counter: 2 h}}";

  private static final String ERRANDS = """
        - {dish: Bread, food: no, steps: [{do: buy, takes: 10 min, hands: throughout}]}
        - {dish: Wine, food: no, steps: [{do: buy, takes: 10 min, hands: throughout}]}
      """;

  private Decoded twoErrands(String hours) throws IOException {
    return WishedFor.supper(folder, "cooks: [{name: Cook, hours: {%s}}]\n".formatted(hours), ERRANDS);
  }
}
