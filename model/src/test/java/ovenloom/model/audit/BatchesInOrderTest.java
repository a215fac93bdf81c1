package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;

class BatchesInOrderTest {

  private final KitchenRule rule = new BatchesInOrder();
  private final Events rolls = aSupperOf(aDish("rolls").batches(2).step(aStep("bake").takes(20).upTo(30)));

  @Test
  void the_first_tray_out_first_is_in_order() {
    assertThat(aPlanFor(rolls)
        .with(aRun("rolls", "bake", "18:00", 20).batch(1))
        .with(aRun("rolls", "bake", "18:20", 20).batch(2))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void both_trays_out_at_the_same_minute_are_in_order_whichever_went_in_first() {
    assertThat(aPlanFor(rolls)
        .with(aRun("rolls", "bake", "18:10", 20).batch(1))
        .with(aRun("rolls", "bake", "18:00", 30).batch(2))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void the_second_tray_out_a_minute_sooner_is_a_minute_off() {
    assertThat(aPlanFor(rolls)
        .with(aRun("rolls", "bake", "18:11", 20).batch(1))
        .with(aRun("rolls", "bake", "18:00", 30).batch(2))
        .heldAgainst(rule)).singleElement().satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.who()).containsExactly("rolls/bake (batch 1)", "rolls/bake (batch 2)");
        });
  }

  @Test
  void trays_that_share_a_run_are_in_order() {
    assertThat(aPlanFor(rolls).with(aRun("rolls", "bake", "18:00", 20).batches(1, 2)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void a_tray_that_is_missing_is_not_out_of_order() {
    assertThat(aPlanFor(rolls).with(aRun("rolls", "bake", "18:00", 20).batch(2)).heldAgainst(rule)).isEmpty();
  }
}
