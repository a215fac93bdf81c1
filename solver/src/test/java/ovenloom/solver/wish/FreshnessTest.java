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

/** A point for ten minutes off the cold shelf beyond what a dish is best for, and one for six hours on it. */
class FreshnessTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} dish, {1} minutes on the counter: {2}")
  @CsvSource({"hot, 24, 0", "hot, 25, 1", "hot, 35, 2", "warm, 249, 0", "warm, 250, 1"})
  void a_hot_dish_is_best_for_a_quarter_of_an_hour_any_other_for_four(String arrives, int minutes,
      long points)
      throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Gratin
            tags: [not tcs]
            arrives: %s
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 5 h}}]
        """.formatted(arrives)).earlier("Gratin/bake", minutes);

    assertThat(supper.points(Wish.FRESHNESS)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0} minutes in the fridge: {1}")
  @CsvSource({"359, 0", "360, 1", "720, 2"})
  void six_hours_in_the_fridge_are_a_point(int minutes, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Custard
            arrives: cold
            steps: [{do: stir, takes: 10 min, hands: throughout, in: pot, keeps: {fridge: 1 day}}]
        """).earlier("Custard/stir", minutes);

    assertThat(supper.told().waits("Custard/stir")).singleElement().asString().startsWith("fridge");
    assertThat(supper.points(Wish.FRESHNESS)).isEqualTo(points);
  }

  /** 24 minutes out are 9 beyond 15, nine tenths of a point; 36 minutes cold are the last tenth. */
  @ParameterizedTest(name = "{0} minutes cold: {1}")
  @CsvSource({"35, 0", "36, 1"})
  void what_waited_out_and_what_waited_cold_make_a_point_together(int cold, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Salad
            arrives: cold
            best for: 15 min
            steps:
              - {do: cut, takes: 10 min, hands: throughout, in: tray, keeps: {counter: 1 h}}
              - {do: dress, takes: 10 min, hands: throughout, keeps: {fridge: 1 h}}
        """).earlier("Salad/cut", 24).earlier("Salad/dress", cold);

    assertThat(supper.points(Wish.FRESHNESS)).isEqualTo(points);
  }

  /** Each tray is 9 minutes over; 18 would be a point. */
  @Test
  void two_batches_that_are_each_a_little_old_cost_nothing() throws IOException {
    Decoded supper = WishedFor
        .supper(folder,
            """
                  - dish: Gratin
                    portions: 2
                    steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, together: 2, keeps: {counter: 1 h}}]
                """)
        .earlier("Gratin/bake", 24);

    assertThat(supper.points(Wish.FRESHNESS)).isZero();
  }
}
