package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

class TallySheetTest {

  /** Of the club with a second oven: (340 + 461) / 2 = 400.5, (40 + 75) / 2 = 57.5, (10.4 + 13.5) / 2 = 11.95. */
  @Test
  void each_axis_is_a_table_of_its_choices_with_their_best_run_below() {
    assertThat(sheet(80)).isEqualTo("""
        Which kitchen?
        6 runs: 3 with a plan, 1 proven to have none, 1 without one found, 1 mistaken.

        kitchen                  runs  plan  no  open  wrong  table  wishes  hands   kWh
        club                        2     1   1     0      0  1,210     300     90   8.1
          best: 80 guests
        club with a second oven     2     2   0     0      0      0     401     58  12.0
          best: 80 guests
        hall                        2     0   0     1      1      -       -      -     -

        guests                   runs  plan  no  open  wrong  table  wishes  hands   kWh
        80                          3     2   0     1      0    605     320     65   9.3
          best: club with a second oven
        120                         3     1   1     0      1      0     461     75  13.5
          best: club with a second oven

        plan: with a plan; no: proven to have none; open: none found, and nothing
        proven; wrong: mistaken or failed, why is in runs.csv; table: points at the
        table; wishes: points of all wishes; hands: minutes of all cooks in the hour
        before each course; kWh: of ovens and burners. Points, minutes and kWh are means
        of those with a plan; fewer is better.

        Best of all: club with a second oven, 80 guests: at the table 0, wishes 340.
        """);
  }

  @Test
  void wide_paper_has_the_best_run_in_its_line() {
    assertThat(sheet(140)).contains("""
        kitchen                  runs  plan  no  open  wrong  table  wishes  hands   kWh  best
        club                        2     1   1     0      0  1,210     300     90   8.1  80 guests
        """);
  }

  @Test
  void on_narrow_paper_what_matters_least_gives_way() {
    assertThat(sheet(60)).contains("kitchen          plan  no  open  wrong  table  wishes  hands\n");
    assertThat(sheet(40)).contains("kitchen     plan  no  open  wrong  hands\n");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 110, 140})
  void no_line_is_wider_than_the_paper(int width) {
    assertThat(sheet(width).lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
  }

  @Test
  void a_batch_that_was_stopped_says_how_much_is_left() {
    List<Result> some = HandResults.all().subList(0, 5);

    assertThat(TallySheet.of(HandResults.tally(some), "Which kitchen?", 6, 80, false)).contains(
        "5 runs: 3 with a plan, 1 proven to have none, 1 without one found.\n1 run is left. The same command goes on from here.\n")
        .as("nothing is wrong yet")
        .doesNotContain("wrong");
  }

  @Test
  void one_that_was_stopped_at_once_says_no_more_than_that() {
    assertThat(TallySheet.of(new Tally(HandResults.AXES), "Which kitchen?", 6, 80, false)).isEqualTo("""
        Which kitchen?
        0 runs.
        6 runs are left. The same command goes on from here.
        """);
  }

  @Test
  void of_too_many_choices_those_that_fit_most_often_are_shown() {
    Axis tables = new Axis("tables", IntStream.range(0, 30).mapToObj(Integer::toString).toList());
    Tally tally = new Tally(List.of(tables));
    for (String choice : tables.choices().subList(0, 29)) {
      tally.add(HandResults.without(Map.of("tables", choice), Answer.NO_PLAN, "why"));
    }
    tally.add(HandResults.plan(Map.of("tables", "29"), 0, 1, 1, 1));

    String sheet = TallySheet.of(tally, "How many?", 30, 80, false);

    assertThat(sheet).containsPattern("(?m)^tables .*\n29 ").contains("18 more are in runs.html.");
  }

  @Test
  void a_choice_that_was_not_come_to_yet_is_not_shown() {
    List<Result> some = HandResults.all().subList(0, 2);

    assertThat(TallySheet.of(HandResults.tally(some), "Which kitchen?", 6, 80, false))
        .containsPattern("(?m)^club .*$")
        .doesNotContainPattern("(?m)^hall .*$");
  }

  @Test
  void a_name_from_a_stranger_cannot_give_orders_to_a_terminal() {
    String sheet = TallySheet.of(HandResults.tally(), "red \u001b[31m", 6, 80, false);

    assertThat(sheet).startsWith("red ?[31m\n");
  }

  private static String sheet(int width) {
    return TallySheet.of(HandResults.tally(), "Which kitchen?", 6, width, false);
  }
}
