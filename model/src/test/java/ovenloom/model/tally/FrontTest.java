package ovenloom.model.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.plan.Score;

class FrontTest {

  private static final Score SCORE = new Score(0, Map.of(), Map.of(), 0, 0);

  @Test
  void a_run_with_fewer_hands_and_no_more_energy_takes_the_place_of_another() {
    assertThat(front(point(60, 50), point(60, 40), point(50, 40)).points()).containsExactly(point(50, 40));
  }

  @Test
  void less_of_one_for_more_of_the_other_beats_nobody() {
    assertThat(front(point(60, 50), point(40, 80), point(50, 70)).points()).containsExactly(point(40, 80),
        point(50, 70), point(60, 50));
  }

  @Test
  void who_comes_late_with_more_of_one_and_as_much_of_the_other_is_beaten() {
    assertThat(front(point(40, 80), point(41, 80), point(40, 81)).points()).containsExactly(point(40, 80));
  }

  @Test
  void runs_alike_stand_at_one_point_under_the_name_of_the_first() {
    var second = new Front.Point(40, 80, "second", SCORE, 0);

    assertThat(front(point(40, 80), second, second).points())
        .containsExactly(new Front.Point(40, 80, "run", SCORE, 2));
  }

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void on_it_are_all_that_none_beats_and_no_others(long seed) {
    Random random = new Random(seed);
    List<Front.Point> all = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      all.add(point(random.nextInt(12), random.nextInt(12)));
    }

    List<Front.Point> front = front(all.toArray(Front.Point[]::new)).points();

    assertThat(front).allSatisfy(point -> assertThat(all).noneMatch(other -> beats(other, point)));
    for (Front.Point point : all) {
      boolean isOn = front.stream()
          .anyMatch(each -> each.hands() == point.hands() && each.energy() == point.energy());
      assertThat(isOn).isEqualTo(all.stream().noneMatch(other -> beats(other, point)));
    }
  }

  private static boolean beats(Front.Point one, Front.Point other) {
    return one.hands() <= other.hands() && one.energy() <= other.energy()
        && (one.hands() < other.hands() || one.energy() < other.energy());
  }

  private static Front front(Front.Point... points) {
    Front front = new Front();
    List.of(points).forEach(front::add);
    return front;
  }

  private static Front.Point point(long hands, long energy) {
    return new Front.Point(hands, energy, "run", SCORE, 0);
  }
}
