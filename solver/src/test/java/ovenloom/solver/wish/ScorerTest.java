package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Score;
import ovenloom.solver.supper.Decoded;

/** Wishes are added up by weight; being early comes last. */
class ScorerTest {

  @TempDir
  private Path folder;

  /** Calm 10 x 1 + 10 x 2 for laying from 18:50, and 1 of energy for the sauce. */
  private Score tableAndSauce(String wishes) throws IOException {
    return WishedFor.supper(folder,
        "wishes: %s\ncooks: [{name: Cook, hours: {on the day: 8:00-20:00}}]\n".formatted(wishes), """
              - {dish: Table, food: no, steps: [{do: lay, takes: 10 min, hands: throughout}]}
              - {dish: Sauce, steps: [{do: warm, takes: 4 min, burner: small, in: pot}]}
            """).score();
  }

  @Test
  void each_wish_weighs_one_where_nothing_is_said() throws IOException {
    assertThat(tableAndSauce("{}").wishes()).isEqualTo(30 + 1);
  }

  @Test
  void a_wish_counts_as_often_as_it_weighs() throws IOException {
    assertThat(tableAndSauce("{calm: 2, energy: 10}").wishes()).isEqualTo(2 * 30 + 10 * 1);
  }

  @Test
  void a_wish_of_weight_0_is_listed_and_left_out_of_the_sum() throws IOException {
    Score score = tableAndSauce("{calm: 0}");

    assertThat(score.wishes()).isEqualTo(1);
    assertThat(score.points()).containsExactlyInAnyOrderEntriesOf(Map.of(Wish.CALM, 30L, Wish.ENERGY, 1L,
        Wish.FRESHNESS, 0L, Wish.SETTING, 0L, Wish.DIAL, 0L, Wish.SESSIONS, 0L, Wish.STEADY, 0L));
  }

  /** The table is laid from 18:50, the sauce warmed from 18:56. */
  @Test
  void early_adds_the_minutes_from_each_start_to_the_table() throws IOException {
    assertThat(tableAndSauce("{}").early()).isEqualTo(10 + 4);
  }

  /** Cut at 18:30; the second plates, from 19:10, would take 10 off, were they counted. */
  @Test
  void serving_is_neither_early_nor_late() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Table, food: no, steps: [{do: lay, takes: 10 min, hands: throughout}]}
          - dish: Salad
            portions: 2
            steps:
              - {do: cut, once: yes, takes: 20 min, hands: throughout, in: tray, keeps: {counter: 1 h}}
              - {do: plate, takes: 10 min, hands: throughout, serve: yes}
        """);

    assertThat(supper.told().when("Salad/cut")).containsExactly("18:30-18:50");
    assertThat(supper.score().early()).isEqualTo(10 + 30);
  }
}
