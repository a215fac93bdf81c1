package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;

/** Supper is at 19:00 and is served over ten minutes. */
class OnTimeTest {

  private final KitchenRule rule = new OnTime();
  private final Events stew = aSupperOf(aDish("stew").step(aStep("simmer")));
  private final Events roast = aSupperOf(aDish("roast").step(aStep("carve").serve()));
  private final Events rolls = aSupperOf(
      aDish("rolls").batches(2).waves().step(aStep("bake").takes(20).together(2)));

  @Test
  void a_stew_that_is_ready_at_seven_is_on_time() {
    assertThat(aPlanFor(stew).with(aRun("stew", "simmer", "18:50", 10)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_stew_that_is_ready_at_four_minutes_past_is_four_minutes_late() {
    assertThat(aPlanFor(stew).with(aRun("stew", "simmer", "18:54", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(4);
          assertThat(each.what()).isEqualTo("it is ready 4 min after it is due");
        });
  }

  @Test
  void the_table_is_laid_by_seven_too() {
    var table = aSupperOf(aChore("table").step(aStep("lay")));

    assertThat(aPlanFor(table).with(aRun("table", "lay", "18:51", 10)).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void carving_at_the_table_runs_from_seven_to_the_end_of_service() {
    assertThat(aPlanFor(roast).with(aRun("roast", "carve", "19:00", 10)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void carving_before_seven_is_too_early_and_after_service_too_late() {
    assertThat(aPlanFor(roast).with(aRun("roast", "carve", "18:58", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
    assertThat(aPlanFor(roast).with(aRun("roast", "carve", "19:03", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(3));
  }

  @Test
  void the_second_tray_in_waves_may_come_five_minutes_later() {
    var breaks = aPlanFor(rolls)
        .with(aRun("rolls", "bake", "18:40", 20).batch(1))
        .with(aRun("rolls", "bake", "18:45", 20).batch(2))
        .heldAgainst(rule);

    assertThat(breaks).isEmpty();
  }

  @Test
  void trays_baked_together_are_due_with_the_first_of_them() {
    assertThat(aPlanFor(rolls).with(aRun("rolls", "bake", "18:45", 20).batches(1, 2)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void plates_that_go_out_in_waves_go_out_no_sooner_than_the_last_of_a_run_is_due() {
    var plates = aSupperOf(aDish("pie").batches(2).waves().step(aStep("plate").takes(5).serve().together(2)));

    assertThat(aPlanFor(plates).with(aRun("pie", "plate", "19:05", 5).batches(1, 2)).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(plates).with(aRun("pie", "plate", "19:04", 5).batches(1, 2)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void what_is_unknown_is_not_late() {
    assertThat(aPlanFor(stew).with(aRun("pie", "bake", "18:54", 100)).heldAgainst(rule)).isEmpty();
  }
}
