package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.solver.place.InnerProblem.Link;
import ovenloom.solver.place.InnerProblem.Step;
import ovenloom.solver.timeline.Timeline;

class InnerDecoderTest {

  private static final int ROAST = 0;
  private static final int REST = 1;
  private static final int GRAVY = 2;

  private static Step step(int minutes, int burners) {
    return new Step(minutes, List.of(burners));
  }

  private static InnerProblem onBurners(int burners, List<Step> steps, Link... links) {
    return new InnerProblem(steps, List.of(burners), List.of(links));
  }

  private static void assertPlan(InnerProblem problem, int makespan, int[] order, int... starts) {
    var forward = InnerDecoder.forward(problem);
    assertThat(forward.decode(order)).isEqualTo(makespan);
    PlanCheck.holds(problem, forward, makespan);
    for (int i = 0; i < starts.length; i++) {
      assertThat(forward.start(i)).as("start of %s", i).isEqualTo(starts[i]);
    }
  }

  @Test
  void two_pots_that_need_three_burners_between_them_and_have_two_take_turns() {
    var problem = onBurners(2, List.of(step(10, 2), step(15, 1)));

    assertPlan(problem, 25, new int[]{0, 1}, 0, 10);
    assertPlan(problem, 25, new int[]{1, 0}, 15, 0);
  }

  @Test
  void two_pots_that_need_three_burners_between_them_and_have_three_cook_at_once() {
    assertPlan(onBurners(3, List.of(step(10, 2), step(15, 1))), 15, new int[]{0, 1}, 0, 0);
  }

  @Test
  void a_small_pot_finds_room_before_a_large_one_set_down_earlier_in_the_order() {
    var problem = onBurners(2, List.of(step(10, 0), step(20, 2), step(10, 1)), new Link(0, 1, 10));

    assertPlan(problem, 30, new int[]{0, 1, 2}, 0, 10, 0);
    assertPlan(
        onBurners(2, List.of(step(10, 0), step(20, 2), step(11, 1)), new Link(0, 1, 10)),
        41,
        new int[]{0, 1, 2},
        0,
        10,
        30);
  }

  @Test
  void a_step_brings_what_it_waits_for_with_it() {
    var problem = onBurners(1, List.of(step(10, 1), step(5, 1), step(7, 1)), new Link(ROAST, REST, 10));

    assertPlan(problem, 22, new int[]{REST, GRAVY, ROAST}, 0, 10, 15);
  }

  @Test
  void backward_each_step_ends_as_late_as_it_fits_before_the_table() {
    var problem = onBurners(1, List.of(step(10, 1), step(5, 1), step(7, 1)), new Link(ROAST, REST, 10));
    var backward = InnerDecoder.backward(problem);

    int makespan = backward.decode(new int[]{GRAVY, REST, ROAST});

    assertThat(makespan).isEqualTo(22);
    assertThat(backward.start(GRAVY)).isEqualTo(-7);
    assertThat(backward.start(REST)).isEqualTo(-12);
    assertThat(backward.start(ROAST)).isEqualTo(-22);
    PlanCheck.holds(problem, backward, makespan);
  }

  @Test
  void a_greatest_gap_holds_the_earlier_step_back_until_the_later_one_finds_room() {
    var steps = List.of(step(10, 0), step(5, 2), step(30, 2));
    var free = onBurners(2, steps, new Link(ROAST, REST, 10));
    var tied = onBurners(2, steps, new Link(ROAST, REST, 10), new Link(REST, ROAST, -12));
    int[] order = {ROAST, GRAVY, REST};

    assertPlan(free, 35, order, 0, 30, 0);
    assertPlan(tied, 35, order, 18, 30, 0);
  }

  @Test
  void a_greatest_gap_met_to_the_minute_is_kept_and_one_minute_less_is_not() {
    var steps = List.of(step(10, 0), step(5, 0));
    var exact = onBurners(1, steps, new Link(ROAST, REST, 12), new Link(REST, ROAST, -12));
    var never = onBurners(1, steps, new Link(ROAST, REST, 12), new Link(REST, ROAST, -11));

    assertPlan(exact, 17, new int[]{REST, ROAST}, 0, 12);
    var decoder = InnerDecoder.forward(never);
    assertThat(decoder.decode(new int[]{ROAST, REST})).isEqualTo(InnerDecoder.NO_PLAN);
    assertThat(decoder.stuck()).isIn(ROAST, REST);
  }

  @Test
  void steps_side_by_side_that_need_more_than_there_is_come_to_nothing_and_name_each_other() {
    var problem = onBurners(
        2,
        List.of(step(10, 1), step(10, 2)),
        new Link(ROAST, REST, 0),
        new Link(REST, ROAST, 0));
    var decoder = InnerDecoder.forward(problem);

    assertThat(decoder.decode(new int[]{ROAST, REST})).isEqualTo(InnerDecoder.NO_PLAN);
    assertThat(decoder.stuck()).isEqualTo(REST);
    assertThat(decoder.blocker()).isEqualTo(ROAST);
  }

  @Test
  void a_step_that_needs_more_than_the_kitchen_has_is_stuck_and_nobody_is_to_blame() {
    var decoder = InnerDecoder.forward(onBurners(2, List.of(step(10, 1), step(10, 3))));

    assertThat(decoder.decode(new int[]{0, 1})).isEqualTo(InnerDecoder.NO_PLAN);
    assertThat(decoder.stuck()).isEqualTo(1);
    assertThat(decoder.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void the_first_step_may_be_the_one_that_is_stuck() {
    var decoder = InnerDecoder.forward(onBurners(2, List.of(step(10, 3), step(10, 1))));

    assertThat(decoder.decode(new int[]{1, 0})).isEqualTo(InnerDecoder.NO_PLAN);
    assertThat(decoder.stuck()).isZero();
  }

  @Test
  void of_two_that_must_start_with_it_the_one_that_takes_the_burner_is_in_the_way() {
    var problem = onBurners(
        1,
        List.of(step(10, 0), step(10, 1), step(10, 1)),
        new Link(ROAST, REST, 0),
        new Link(REST, ROAST, 0),
        new Link(ROAST, GRAVY, 0),
        new Link(GRAVY, ROAST, 0));
    var decoder = InnerDecoder.forward(problem);

    assertThat(decoder.decode(new int[]{ROAST, REST, GRAVY})).isEqualTo(InnerDecoder.NO_PLAN);
    assertThat(decoder.stuck()).isEqualTo(GRAVY);
    assertThat(decoder.blocker()).isEqualTo(REST);
  }

  @Test
  void an_order_comes_out_the_same_whatever_was_decoded_before() {
    var steps = List.of(step(10, 0), step(5, 2), step(30, 2));
    var decoder = InnerDecoder.forward(
        onBurners(2, steps, new Link(ROAST, REST, 10), new Link(REST, ROAST, -12)));
    decoder.decode(new int[]{ROAST, GRAVY, REST});

    int makespan = decoder.decode(new int[]{ROAST, REST, GRAVY});

    assertThat(makespan).isEqualTo(45);
    assertThat(decoder.start(ROAST)).isZero();
    assertThat(decoder.start(GRAVY)).isEqualTo(15);
  }

  @Test
  void a_link_to_a_step_that_is_not_there_is_refused() {
    var steps = List.of(step(10, 1));

    assertThatThrownBy(() -> onBurners(1, steps, new Link(0, 1, 5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 steps");
    assertThatThrownBy(() -> onBurners(1, steps, new Link(-1, 0, 5)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> step(-1, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
