package ovenloom.solver.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.measure.Stretch;
import ovenloom.solver.supper.Suppers;

/** By hand: supper is at 19:00, food without {@code keeps} waits a quarter of an hour, and one cook is there from noon to 20:00. */
class WindowLoadsTest {

  private static final int SUPPER = 19 * 60;

  @TempDir
  private Path folder;

  private Optional<Clash> clash(String dishes) throws IOException {
    return WindowLoads.of(Suppers.withDishes(folder, dishes));
  }

  /** Both are at it from 18:30 to 18:45, whenever they begin. */
  @Test
  void two_dishes_whipped_for_half_an_hour_at_the_last_minute_want_two_pairs_of_hands() throws IOException {
    Optional<Clash> clash = clash("""
          - {dish: Foam, steps: [{do: whip, takes: 30 min, hands: throughout}]}
          - {dish: Sauce, steps: [{do: beat, takes: 30 min, hands: throughout}]}
        """);

    assertThat(clash).hasValueSatisfying(found -> {
      assertThat(found.what()).isEqualTo("hands");
      assertThat(found.when()).isEqualTo(new Stretch(SUPPER - 30, SUPPER - 15));
      assertThat(found.asked()).isEqualTo(30);
      assertThat(found.there()).isEqualTo(15);
      assertThat(found.steps()).extracting(Object::toString).containsExactly("Foam/whip", "Sauce/beat");
    });
  }

  /** One from 18:15 to 18:45, then the other. */
  @Test
  void half_an_hour_and_a_quarter_just_fit() throws IOException {
    String dishes = """
          - {dish: Foam, steps: [{do: whip, takes: 30 min, hands: throughout}]}
          - {dish: Sauce, steps: [{do: beat, takes: %d min, hands: throughout}]}
        """;

    assertThat(clash(dishes.formatted(15))).isEmpty();
    assertThat(clash(dishes.formatted(16))).isPresent();
  }

  @Test
  void work_before_it_counts_no_later_than_what_follows_lets_it() throws IOException {
    assertThat(clash("""
          - dish: Foam
            steps:
              - {do: chop, takes: 20 min, hands: throughout}
              - {do: whip, takes: 30 min, hands: throughout}
          - dish: Sauce
            steps:
              - {do: cut, takes: 20 min, hands: throughout}
              - {do: beat, takes: 30 min, hands: throughout}
        """)).hasValueSatisfying(found -> assertThat(found.asked()).isGreaterThan(found.there()));
  }

  @Test
  void two_pots_that_cannot_wait_want_two_large_burners() throws IOException {
    assertThat(clash("""
          - {dish: Soup, steps: [{do: simmer, takes: 40 min, burner: large}]}
          - {dish: Stew, steps: [{do: simmer, takes: 40 min, burner: large}]}
        """)).hasValueSatisfying(found -> {
      assertThat(found.what()).isEqualTo("large burners");
      assertThat(found.asked()).isEqualTo(2 * found.there());
    });
  }

  /** Two racks of 55 x 38 cm are 4180 cm2; a half sheet covers 46 x 33, a dish 33 x 23. */
  @Test
  void two_sheets_and_two_dishes_at_once_do_not_go_onto_two_racks() throws IOException {
    String one = "  - {dish: Bake %s, steps: [{do: bake, takes: 60 min, bake: {at: 350 F}, in: %s}]}\n";
    String three = one.formatted("one", "half sheet") + one.formatted("two", "half sheet")
        + one.formatted("three", "9x13 in dish");

    assertThat(clash(three)).isEmpty();
    assertThat(clash(three + one.formatted("four", "9x13 in dish")))
        .hasValueSatisfying(found -> assertThat(found.kind()).isEqualTo(Clash.Kind.ROOM));
  }

  /** Somebody is there from 17:00 to 21:00 the day before, and from noon on the day. */
  @Test
  void what_wants_somebody_for_longer_than_anyone_is_there_has_no_time() throws IOException {
    String jelly = """
          - dish: Jelly
            tags: [not tcs]
            steps:
              - {do: stir, takes: 30 min, hands: throughout, burner: large, in: mixing bowl}
              - {do: simmer, takes: %d min, burner: large}
              - {do: set, takes: 14 h, cold: fridge, keeps: {fridge: 1 day}}
        """;

    assertThat(clash(jelly.formatted(195))).isEmpty();
    assertThat(clash(jelly.formatted(230))).hasValueSatisfying(found -> {
      assertThat(found.kind()).isEqualTo(Clash.Kind.TIME);
      assertThat(found.steps()).extracting(Object::toString)
          .containsAnyOf("Jelly/stir", "Jelly/simmer", "Jelly/set");
    });
  }
}
