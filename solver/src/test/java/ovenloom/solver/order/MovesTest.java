package ovenloom.solver.order;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningSolutionMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.test.MoveTester;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.place.Decisions;

class MovesTest {

  private static final int STEPS = 5;
  private static final int SERVING = 4;

  private final PlanningSolutionMetaModel<Order> model = PlanningSolutionMetaModel
      .of(Order.class, Queue.class, Turn.class);
  private final PlanningListVariableMetaModel<Order, Queue, Turn> queue = model.genuineEntity(Queue.class)
      .listVariable("turns", Turn.class);
  private final List<Turn> turns = IntStream.range(0, STEPS)
      .mapToObj(step -> new Turn(step, kindOf(step), takerOf(step), step == SERVING, 1, 3, 2, 4))
      .toList();
  private final PlanningVariableMetaModel<Order, Turn, Integer> earlier = model.genuineEntity(Turn.class)
      .basicVariable("earlier", Integer.class);
  private final Order order = new Order(any -> 0, turns, 5, List.of());

  @ParameterizedTest
  @CsvSource({"1, 2, 0 2 3 1 4", "3, -2, 0 3 1 2 4", "4, -4, 4 0 1 2 3", "0, 4, 1 2 3 4 0"})
  void a_turn_is_shifted_so_many_places(int step, int places, String expected) {
    make(new Shift(places).of(queue, turns.get(step)));

    assertThat(queued()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"3, 2, 0 3 1 2 4", "1, -3, 0 2 3 4 1", "2, 20, 2 0 1 3 4"})
  void where_the_queue_ends_a_turn_is_shifted_the_other_way(int step, int places, String expected) {
    make(new Shift(places).of(queue, turns.get(step)));

    assertThat(queued()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0, 15, 15", "20, -15, 5", "10, -15, 0", "10, -1000000, 0", "20160, 5, 20160"})
  void a_wait_grows_and_shrinks_and_is_never_less_than_none(int before, int nudge, int after) {
    assertThat(nudged(2, before, nudge)).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource({"0, 5, 5", "10, -5, 5", "0, 15, 0", "10, 60, 0", "10, -60, 0", "10, -1000000, 0"})
  void what_is_served_waits_for_a_few_minutes_or_not_at_all(int before, int nudge, int after) {
    assertThat(nudged(SERVING, before, nudge)).isEqualTo(after);
  }

  private @Nullable Integer nudged(int step, int before, int nudge) {
    turns.get(step).setEarlier(before);
    make(new Nudge(nudge).of(earlier, turns.get(step)));
    return turns.get(step).getEarlier();
  }

  @ParameterizedTest
  @CsvSource({"0, 5 0 5 0 0", "2, 0 0 5 0 0"})
  void a_step_is_nudged_with_the_one_that_takes_its_food(int step, String expected) {
    make(new NudgeOfMore(queue, earlier).withTaker(turns.get(step), new Nudge(5)));

    assertThat(allEarlier()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0, 5 5 0 0 0", "4, 0 0 0 0 5"})
  void a_step_is_nudged_with_the_one_behind_it_in_the_queue(int step, String expected) {
    make(new NudgeOfMore(queue, earlier).withNext(turns.get(step), new Nudge(5)));

    assertThat(allEarlier()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"1, 0 5 0 5 0", "3, 0 5 0 5 0", "2, 0 0 5 0 0"})
  void all_batches_of_a_step_are_nudged_at_once(int step, String expected) {
    make(new NudgeOfMore(queue, earlier).withBatches(turns.get(step), new Nudge(5)));

    assertThat(allEarlier()).isEqualTo(expected);
  }

  @Test
  void a_batch_is_done_as_another_one_and_right_after_it() {
    turns.get(1).setEarlier(60);

    make(new AsABatch(queue, List.of(earlier)).of(turns.get(3), turns.get(1)));

    assertThat(queued()).isEqualTo("0 1 3 2 4");
    assertThat(allEarlier()).isEqualTo("0 60 0 60 0");
  }

  @Test
  void only_batches_of_one_step_with_as_much_to_choose_from_may_be_done_alike() {
    Turn fewerOvens = new Turn(7, 1, Turn.THE_TABLE, false, 1, 2, 2, 4);

    assertThat(turns.get(1).choices()).isEqualTo(turns.get(3).choices())
        .isNotEqualTo(turns.get(2).choices())
        .isNotEqualTo(fewerOvens.choices());
  }

  /** Of the steps 1 and 3 each is a batch of the same. */
  private static int kindOf(int step) {
    return step == 3 ? 1 : step;
  }

  private Turn amongThoseThatAreAmiss(int step, int... amiss) {
    Amiss search = new Amiss(STEPS);
    IntStream.of(amiss).forEach(search::add);
    turns.forEach(turn -> turn.watch(search));
    return turns.get(step);
  }

  @ParameterizedTest
  @CsvSource({"0, -2, 0 3 1 2 4", "1, 2, 0 1 4 2 3", "2, 20, 3 0 1 2 4"})
  void of_what_came_out_wrong_one_gets_a_turn_sooner(int any, int places, String expected) {
    make(new ToMend(queue, earlier).ahead(amongThoseThatAreAmiss(any, 3, 4), new Shift(places)));

    assertThat(queued()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0, 0 0 0 5 0", "2, 0 0 0 5 0", "1, 0 5 0 0 0"})
  void of_what_came_out_wrong_one_is_nudged(int any, String expected) {
    make(new ToMend(queue, earlier).nudge(amongThoseThatAreAmiss(any, 3, 1), new Nudge(5)));

    assertThat(allEarlier()).isEqualTo(expected);
  }

  @Test
  void where_nothing_came_out_wrong_any_is_nudged() {
    make(new ToMend(queue, earlier).nudge(amongThoseThatAreAmiss(2), new Nudge(5)));

    assertThat(allEarlier()).isEqualTo("0 0 5 0 0");
  }

  @ParameterizedTest
  @CsvSource({"0, 3, 1 2 3 0 4", "4, 1, 0 1 4 2 3", "2, 1, 0 1 2 3 4"})
  void a_bake_that_joins_another_goes_where_that_is_and_right_after_it(int step, int other, String expected) {
    PlanningVariableMetaModel<Order, Turn, Integer> bake = model.genuineEntity(Turn.class)
        .basicVariable(Option.BAKE, Integer.class);

    make(new Meeting(step, 2, other, 1).of(queue, bake, turns.get(step)));

    assertThat(queued()).isEqualTo(expected);
    assertThat(turns.get(step).getBake()).isEqualTo(2);
    assertThat(turns.get(other).getBake()).isEqualTo(1);
  }

  @Test
  void there_is_an_option_for_all_that_is_open_and_none_where_there_is_no_choice() {
    assertThat(Option.of(new Turn(7, 7, Turn.THE_TABLE, false, 1, 2, 0, 1))).containsExactly(
        new Option(7, Option.BAKE, Decisions.OPEN), new Option(7, Option.BAKE, 0),
        new Option(7, Option.BAKE, 1));
    assertThat(Option.of(new Turn(7, 7, Turn.THE_TABLE, false, 1, 1, 1, 3))).containsExactly(
        new Option(7, Option.TOGETHER, 1), new Option(7, Option.TOGETHER, 2),
        new Option(7, Option.TOGETHER, 3));
  }

  /** The food of the first step is taken by the third. */
  private static int takerOf(int step) {
    return step == 0 ? 2 : Turn.THE_TABLE;
  }

  private String allEarlier() {
    return String.join(" ", turns.stream().map(turn -> "" + turn.getEarlier()).toList());
  }

  private void make(Move<Order> move) {
    MoveTester.build(model).using(order).execute(move);
  }

  private String queued() {
    return String.join(" ",
        order.getQueue().getTurns().stream().map(turn -> "" + turn.getStep()).toList());
  }
}
