package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;
import static ovenloom.cli.sheet.SheetLines.lines;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.StartState;

/** What a cook reads of a bake that is not as long as its card says. */
class BendTest {

  private static final String GRATIN = """
      dishes:
        - dish: Gratin
          steps:
            - {do: layer, takes: 20 min, hands: throughout, in: dish, keeps: {counter: 2 h, fridge: 1 day}}
            - {do: bake, takes: 45 min, bake: {at: 180 C, from: 160 C, to: 200 C}}
      """;

  private static String loaded(UnaryOperator<HandRun> how) {
    return lines(HandPlan.forProblem(KITCHEN + HOST + GRATIN)
        .run("Gratin/layer", at("17:00"))
        .run("Gratin/bake", at("17:45"), how::apply)
        .plan()).stream().filter(line -> line.contains("Into the oven")).findFirst().orElseThrow();
  }

  @Test
  void a_bake_that_takes_what_its_card_says_needs_no_word() {
    assertThat(loaded(run -> run)).doesNotContain("on the card");
  }

  @ParameterizedTest
  @CsvSource({"CHILLED, 57, 12 min more than on the card: still cold from the fridge.",
      "STRAIGHT_ON, 39, 6 min less than on the card: still hot."})
  void a_colder_or_warmer_start_is_named(StartState from, int minutes, String why) {
    assertThat(loaded(run -> run.minutes(minutes).from(from))).endsWith(" " + why);
  }

  @Test
  void what_is_neither_is_a_little_colder_or_warmer() {
    assertThat(loaded(run -> run.minutes(46)))
        .endsWith(" 1 min more than on the card: it goes in a little colder.");
    assertThat(loaded(run -> run.minutes(44)))
        .endsWith(" 1 min less than on the card: it goes in a little warmer.");
  }

  @Test
  void so_is_another_mark_than_the_cards() {
    assertThat(loaded(run -> run.minutes(41).hotter(20)))
        .endsWith(" 4 min less than on the card: the card says 180 C.");
  }
}
