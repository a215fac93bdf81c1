package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.solver.place.ACook.aCook;
import static ovenloom.solver.place.ACook.withBreak;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Cook;
import ovenloom.solver.timeline.Timeline;

/** Pots that take five minutes to wash, and Ines, who is there for ten hours. */
class VesselPoolTest {

  private static final int POT = 3;

  private static final int SOUP = 0;
  private static final int STEW = 1;
  private static final int SAUCE = 2;

  private final Crew crew = crewOf(aCook("Ines", 0, 600));

  private static Crew crewOf(Cook... cooks) {
    return new Crew(List.of(cooks), 0, 600);
  }

  private VesselPool pots(int count) {
    return new VesselPool(POT, count, 5, 8, crew, List.of(), List.of());
  }

  @Test
  void the_stew_waits_until_the_soup_is_out_of_the_only_pot() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 200);

    assertThat(pots.latestStart(200, 30, STEW, 1)).isEqualTo(200);
    assertThat(pots.latestStart(199, 30, STEW, 1)).isEqualTo(70);
    assertThat(pots.latestStart(70, 30, STEW, 1)).isEqualTo(70);
    assertThat(pots.latestStart(71, 30, STEW, 1)).isEqualTo(70);
  }

  @Test
  void a_second_pot_is_free_until_the_last_that_fill_them_both() {
    var pots = pots(2);
    pots.take(SOUP, 1, 100, 200);
    pots.take(STEW, 1, 150, 300);

    assertThat(pots.latestStart(200, 30, SAUCE, 1)).isEqualTo(200);
    assertThat(pots.latestStart(199, 30, SAUCE, 1)).as("out as the stew goes in").isEqualTo(120);
    assertThat(pots.latestStart(199, 30, SAUCE, 2)).isEqualTo(70);
  }

  @Test
  void more_pots_than_there_are_nobody_has() {
    assertThat(pots(1).latestStart(200, 30, SAUCE, 2)).isEqualTo(Timeline.NONE);
    assertThat(pots(1).take(SAUCE, 2, 200, 230)).isFalse();
  }

  @Test
  void food_keeps_its_pot_from_its_first_step_to_its_last() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 120);
    pots.take(STEW, 1, 150, 200);

    assertThat(pots.latestStart(130, 20, SOUP, 1)).isEqualTo(130);
    assertThat(pots.latestStart(131, 20, SOUP, 1)).as("still in it as the stew goes in").isEqualTo(130);
    assertThat(pots.latestStart(300, 20, SOUP, 1)).isEqualTo(130);
    assertThat(pots.latestStart(50, 20, STEW, 1)).as("the soup is in it in between").isEqualTo(Timeline.NONE);
    assertThat(pots.latestStart(120, 20, STEW, 1)).isEqualTo(120);
    assertThat(pots.latestStart(119, 20, STEW, 1)).isEqualTo(Timeline.NONE);
  }

  @Test
  void between_two_dishes_the_pot_is_washed_as_late_as_can_be() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 200);

    assertThat(pots.take(STEW, 1, 230, 300)).isTrue();

    assertThat(pots.washes()).isEqualTo(1);
    assertThat(pots.wash(0)).isEqualTo(new VesselPool.Done(POT, 1, 225, 230, 0));
  }

  @Test
  void five_minutes_are_enough_to_wash_it_and_four_are_not() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 200);
    assertThat(pots.take(STEW, 1, 205, 300)).isTrue();

    var others = new VesselPool(POT, 1, 5, 8, crewOf(aCook("Tom", 0, 600)), List.of(), List.of());
    others.take(SOUP, 1, 100, 200);
    assertThat(others.take(STEW, 1, 204, 300)).isFalse();
  }

  @Test
  void a_clean_pot_needs_no_wash() {
    var pots = pots(2);
    pots.take(SOUP, 1, 100, 200);

    assertThat(pots.take(STEW, 1, 200, 300)).isTrue();

    assertThat(pots.washes()).isZero();
  }

  @Test
  void one_wash_takes_all_the_dirty_pots_and_serves_whoever_comes_next() {
    var pots = pots(2);
    pots.take(SOUP, 1, 100, 200);
    pots.take(STEW, 1, 100, 210);
    pots.take(SAUCE, 1, 300, 350);

    assertThat(pots.take(SAUCE + 1, 1, 320, 350)).isTrue();

    assertThat(pots.washes()).isEqualTo(1);
    assertThat(pots.wash(0)).isEqualTo(new VesselPool.Done(POT, 2, 295, 300, 0));
  }

  @Test
  void whoever_washes_up_is_free_to_and_not_on_a_break() {
    var busy = crewOf(withBreak(aCook("Ines", 0, 600), 216, 240));
    var pots = new VesselPool(POT, 1, 5, 8, busy, List.of(), List.of());
    pots.take(SOUP, 1, 100, 200);

    assertThat(pots.take(STEW, 1, 230, 300)).isTrue();

    assertThat(pots.wash(0).from()).isEqualTo(211);
    assertThat(busy.latestWash(230, 5)).isEqualTo(206);
  }

  @Test
  void with_nobody_to_wash_up_there_is_no_clean_pot() {
    var pots = new VesselPool(POT, 1, 5, 8, crewOf(aCook("Ines", 0, 204)), List.of(), List.of());
    pots.take(SOUP, 1, 100, 200);

    assertThat(pots.take(STEW, 1, 230, 300)).isFalse();
  }

  @Test
  void a_pot_that_is_used_for_longer_than_was_thought_is_washed_later() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 200);
    pots.take(STEW, 1, 230, 300);

    assertThat(pots.take(SOUP, 1, 190, 225)).as("out as it is washed").isTrue();
    assertThat(pots.washes()).isEqualTo(1);
    assertThat(pots.take(SOUP, 1, 190, 226)).isFalse();
  }

  @Test
  void a_pool_goes_back_to_what_it_was() {
    var pots = pots(1);
    pots.take(SOUP, 1, 100, 200);
    var before = pots.state();
    pots.take(STEW, 1, 230, 300);

    pots.back(before);

    assertThat(pots.washes()).isZero();
    assertThat(pots.latestStart(250, 30, SAUCE, 1)).isEqualTo(250);
    assertThat(pots.latestStart(150, 30, SAUCE, 1)).isEqualTo(70);
    pots.clear();
    assertThat(pots.latestStart(150, 30, SAUCE, 1)).isEqualTo(150);
  }
}
