package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

class SearchTest {

  private static final Break A_BREAK = new Break("rule", "The cook minds.", List.of("Salad/dress"), null, 1,
      Break.Unit.TIMES, "it will not do");

  @TempDir
  private Path folder;

  private Event salad;

  @BeforeEach
  void a_salad() throws IOException {
    salad = Suppers.withDishes(folder, """
          - dish: Salad
            steps: [{do: dress, takes: 20 min, hands: throughout, in: mixing bowl, keeps: {counter: 3 h}}]
        """);
  }

  /** Large enough that nobody is through with it in a second. */
  private static Event aSupperFor120() throws IOException {
    Path file = Path.of("../problems/boathouse-supper.yaml");
    return switch (ProblemFile.read(file, Path.of("..").toAbsolutePath(), null)) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new IllegalArgumentException(mistakes.toString());
    };
  }

  private static final Judge AUDIT = plan -> Audit.of(plan.event(), plan);

  private static Found found(Event event, Budget budget, Judge judge, BooleanSupplier stop) {
    return Search.find(Runs.of(event), List.of(), budget, judge, (best, schedules, left) -> {}, stop);
  }

  private static Budget tries(long tries, int seeds) {
    return new Budget(null, tries, 1, seeds);
  }

  /** When the one run of the salad starts. */
  private static int start(Plan plan) {
    return plan.placements().getFirst().when().from();
  }

  @Test
  void a_search_whose_time_is_over_at_once_tries_one_schedule_a_seed() throws IOException {
    Budget hardlyAny = new Budget(Duration.ofMillis(1), null, 1, 2);

    Found found = found(aSupperFor120(), hardlyAny, AUDIT, () -> false);

    assertThat(found.schedules()).isEqualTo(2);
  }

  @Test
  void nobody_pleads_any_more_once_the_time_is_over() throws IOException {
    Runs runs = Runs.of(aSupperFor120());
    Trial trial = new Trial(runs, AUDIT);

    new Pleas(trial, new Random(1)).hear(FirstOrder.of(runs), 400, () -> true);

    assertThat(trial.decoded()).isEqualTo(1);
  }

  @Test
  void nothing_is_tidied_any_more_once_the_time_is_over() {
    Trial trial = new Trial(Runs.of(salad), AUDIT);
    trial.of(early(30));

    trial.tidy(() -> true);
    assertThat(trial.best().decisions().earlier(0)).isEqualTo(30);

    trial.tidy(() -> false);
    assertThat(trial.best().decisions().earlier(0)).isZero();
  }

  private static Decisions early(int minutes) {
    Decisions early = Decisions.open(1);
    early.setEarlier(0, minutes);
    return early;
  }

  /** Less early is better, and all are plans. */
  @Test
  void after_a_plan_that_passed_only_the_best_of_the_next_ones_is_judged() {
    AtomicInteger judged = new AtomicInteger();
    Trial trial = new Trial(Runs.of(salad), plan -> {
      judged.incrementAndGet();
      return List.of();
    });
    for (int minutes : List.of(170, 150, 130, 140)) {
      trial.of(early(minutes));
    }

    assertThat(judged).hasValue(1);
    assertThat(trial.best().decisions().earlier(0)).isEqualTo(170);

    for (int tries = 0; tries < 100; tries++) {
      trial.of(early(140));
    }

    assertThat(judged).hasValue(2);
    assertThat(trial.best().decisions().earlier(0)).isEqualTo(130);
  }

  @Test
  void once_a_plan_was_refused_the_next_one_is_judged_at_once() {
    Deque<List<Break>> answers = new ArrayDeque<>(List.of(List.of(), List.of(A_BREAK), List.of()));
    AtomicInteger refused = new AtomicInteger();
    Trial trial = new Trial(Runs.of(salad), plan -> answers.pop());
    trial.onTurn(refused::incrementAndGet);
    trial.of(early(170));
    trial.of(early(130));
    trial.settle();
    assertThat(trial.best().decisions().earlier(0)).as("the other was refused").isEqualTo(170);
    assertThat(refused).hasValue(1);

    trial.of(early(150));

    assertThat(trial.best().decisions().earlier(0)).isEqualTo(150);
  }

  @Test
  void a_lane_ends_with_all_it_hoped_for_judged() {
    List<Plan> judged = new ArrayList<>();
    Lane lane = new Lane(Runs.of(salad), 1, plan -> {
      judged.add(plan);
      return List.of();
    }, new Deadline(null), new Elite(), true, false);

    lane.search(60);

    assertThat(judged).hasSizeBetween(2, 60);
    assertThat(judged.getLast().score()).isEqualTo(lane.trial().best().score());
  }

  @Test
  void batches_go_together_again_where_it_pays_nothing_to_keep_them_apart() throws IOException {
    Event buns = Suppers.withDishes(folder,
        """
              - dish: Buns
                portions: 4
                portions a guest: 2
                steps: [{do: bake, takes: 20 min, bake: {at: 375 F}, in: half sheet, together: 2, keeps: {counter: 4 h}}]
            """);
    Trial trial = new Trial(Runs.of(buns), AUDIT);
    Decisions apart = Decisions.open(2);
    apart.setTogether(0, 1);
    trial.of(apart);

    trial.tidy(() -> false);

    assertThat(trial.best().decisions().together(0)).isEqualTo(Decisions.AS_MANY_AS_MAY);
  }

  @Test
  void a_stop_is_heard_while_there_is_no_plan_yet() throws IOException {
    Found found = found(aSupperFor120(), tries(400, 2), AUDIT, () -> true);

    assertThat(found.schedules()).isBetween(2L, 600L);
  }

  @Test
  @Timeout(20)
  void an_interrupted_caller_gets_the_best_so_far_and_is_told_of_it_again() {
    Thread.currentThread().interrupt();

    Found found = found(salad, new Budget(Duration.ofHours(1), null, 1, 2), AUDIT, () -> false);

    assertThat(Thread.interrupted()).isTrue();
    assertThat(found.isAPlan()).isTrue();
  }

  @Test
  void so_many_schedules_are_tried_as_were_asked_for_and_then_the_best_is_tidied() {
    assertThat(found(salad, tries(1, 1), AUDIT, () -> false).schedules()).isEqualTo(1);
    assertThat(found(salad, tries(2, 1), AUDIT, () -> false).schedules()).isEqualTo(2);
    assertThat(found(salad, tries(1, 3), AUDIT, () -> false).schedules()).isEqualTo(3);
    assertThat(found(salad, tries(50, 2), AUDIT, () -> false).schedules()).isBetween(90L, 102L);
    assertThat(found(salad, tries(6_000, 1), AUDIT, () -> false).schedules()).isBetween(5_500L, 6_002L);
  }

  @Test
  void what_the_audit_refuses_does_not_hide_a_plan_that_it_passes() {
    int best = start(found(salad, tries(600, 1), AUDIT, () -> false).plan());
    Judge notThen = plan -> start(plan) == best ? List.of(A_BREAK) : AUDIT.breaks(plan);

    Found found = found(salad, tries(600, 1), notThen, () -> false);

    assertThat(found.isAPlan()).isTrue();
    assertThat(start(found.plan())).isLessThan(best);
    assertThat(found.isMisjudged()).isFalse();
  }

  @Test
  void a_best_try_that_only_the_audit_refuses_is_misjudged() {
    Found found = found(salad, tries(200, 2), plan -> List.of(A_BREAK), () -> false);

    assertThat(found.isAPlan()).isFalse();
    assertThat(found.isMisjudged()).isTrue();
    assertThat(found.breaks()).containsExactly(A_BREAK);
    assertThat(found.plan().score().breaks()).isPositive();
  }

  @Test
  void a_best_try_for_which_there_is_too_little_of_something_is_not_misjudged() throws IOException {
    Event crowded = Suppers.withDishes(folder, """
          - dish: Salad
            steps: [{do: dress, takes: 60 min, hands: throughout, in: mixing bowl, keeps: {counter: 5 min}}]
          - dish: Soup
            steps: [{do: stir, takes: 60 min, hands: throughout, burner: large, keeps: {counter: 5 min}}]
        """);

    Found found = found(crowded, tries(20, 1), AUDIT, () -> false);

    assertThat(found.isAPlan()).isFalse();
    assertThat(found.isMisjudged()).isFalse();
  }

  @Test
  void a_fault_of_a_lane_comes_out_as_it_was() {
    var fault = new IllegalStateException("the scale is broken");
    Judge broken = plan -> {
      throw fault;
    };

    assertThat(catchThrowable(() -> found(salad, tries(1, 2), broken, () -> false)))
        .isSameAs(fault);
  }
}
