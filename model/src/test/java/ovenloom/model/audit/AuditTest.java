package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

class AuditTest {

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_plan_that_makes_no_sense_at_all_is_judged_like_any_other(long seed) {
    Nonsense nonsense = new Nonsense(seed);

    assertThatCode(() -> Audit.of(nonsense.event(), nonsense.plan())).doesNotThrowAnyException();
  }

  @Test
  void of_nonsense_every_rule_of_the_timetable_has_something_to_say() {
    assertThat(seeds().boxed()
        .map(Nonsense::new)
        .flatMap(nonsense -> Audit.of(nonsense.event(), nonsense.plan()).stream())
        .map(Break::rule)
        .distinct())
        .containsExactlyInAnyOrderElementsOf(Audit.OF_THE_TIMETABLE.stream().map(KitchenRule::id).toList());
  }

  /** Four ovens, twenty dishes of five batches, each shaped and baked: 200 runs. The quickest of three counts. */
  @Test
  void a_caterers_plan_is_judged_in_less_than_a_second() {
    Plan plan = aCaterersPlan();

    long quickest = IntStream.range(0, 3).mapToLong(turn -> millisecondsToJudge(plan)).min().orElseThrow();

    assertThat(plan.placements()).hasSize(200);
    assertThat(quickest).isLessThan(1000);
  }

  private static long millisecondsToJudge(Plan plan) {
    long start = System.nanoTime();
    Audit.of(plan.event(), plan);
    return (System.nanoTime() - start) / 1_000_000;
  }

  private static Plan aCaterersPlan() {
    Dishes[] dishes = new Dishes[20];
    for (int dish = 0; dish < dishes.length; dish++) {
      dishes[dish] = aDish("dish " + dish).batches(5)
          .step(aStep("shape").takes(10).hands().in("dish", 2).keepsOnTheCounter(600))
          .step(aStep("bake").takes(30).bake(180));
    }
    Plans plan = aPlanFor(aSupperOf(dishes).in(aHomeKitchen()
        .ovens(anOven("oven 0"), anOven("oven 1"), anOven("oven 2"), anOven("oven 3"))));
    for (int run = 0; run < 100; run++) {
      String dish = "dish " + run / 5;
      int batch = 1 + run % 5;
      int load = 480 + run / 16 * 40;
      Integer rack = run / 4 % 2;
      plan.with(aRun(dish, "shape", 420 + run, 10).batch(batch).work("Host"))
          .with(aStay(dish, "shape", 430 + run).batch(batch).in(new Where.Counter(), load + 200))
          .with(aRun(dish, "bake", load + 200, 30).batch(batch)
              .oven("oven " + run % 4, 180)
              .racks(rack, rack)
              .load("Host")
              .unload("Host"))
          .with(aStay(dish, "bake", load + 230).batch(batch).counter("19:00"));
    }
    for (int oven = 0; oven < 4; oven++) {
      plan.with(aLog("oven " + oven).warming(180, "11:04", "11:20").at(180, "11:20", "16:00"));
    }
    return plan.plan();
  }
}
