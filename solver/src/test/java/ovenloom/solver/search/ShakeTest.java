package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ovenloom.solver.place.Decisions;

class ShakeTest {

  private static final int STEPS = 200;

  private static Decisions good() {
    Decisions good = Decisions.open(STEPS);
    for (int step = 0; step < STEPS; step++) {
      good.setEarlier(step, 15);
      good.setBake(step, 1);
      good.setTogether(step, 2);
    }
    return good;
  }

  private static List<Integer> queue(Decisions decisions) {
    return IntStream.range(0, STEPS).map(decisions::step).boxed().toList();
  }

  @Test
  void most_stays_as_it_was_and_every_step_keeps_a_turn() {
    Decisions good = good();

    Decisions shaken = Shake.of(good, new Random(1));

    assertThat(queue(shaken)).containsExactlyInAnyOrderElementsOf(queue(good)).isNotEqualTo(queue(good));
    assertThat(IntStream.range(0, STEPS).filter(step -> shaken.earlier(step) == 15).count()).isBetween(160L,
        195L);
    assertThat(IntStream.range(0, STEPS)).allMatch(
        step -> (shaken.earlier(step) == 0) == (shaken.bake(step) == Decisions.OPEN));
    assertThat(IntStream.range(0, STEPS)).allMatch(
        step -> (shaken.earlier(step) == 0) == (shaken.together(step) == Decisions.AS_MANY_AS_MAY));
  }

  @Test
  void the_good_ones_are_left_alone() {
    Decisions good = good();

    Shake.of(good, new Random(1));

    assertThat(queue(good)).isSorted();
    assertThat(IntStream.range(0, STEPS)).allMatch(step -> good.earlier(step) == 15);
  }

  @Test
  void the_same_lot_shakes_the_same_way() {
    assertThat(queue(Shake.of(good(), new Random(7)))).isEqualTo(queue(Shake.of(good(), new Random(7))));
  }
}
