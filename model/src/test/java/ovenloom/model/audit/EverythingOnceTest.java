package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Pace;

class EverythingOnceTest {

  private final KitchenRule rule = new EverythingOnce();
  private final Events soup = aSupperOf(aDish("soup").step(aStep("simmer").takes(40).upTo(60)));
  private final Events rolls = aSupperOf(aDish("rolls").batches(5)
      .step(aStep("mix").once().takes(20))
      .step(aStep("prove").takes(30).together(2)));

  @Test
  void a_soup_nobody_cooks_is_a_break() {
    var breaks = aPlanFor(soup).heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> {
      assertThat(each.who()).containsExactly("soup/simmer");
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.what()).isEqualTo("it is never done");
    });
  }

  @Test
  void a_soup_cooked_once_is_done() {
    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "18:00", 40)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_soup_cooked_three_times_is_cooked_twice_too_often() {
    var breaks = aPlanFor(soup)
        .with(aRun("soup", "simmer", "15:00", 40))
        .with(aRun("soup", "simmer", "16:00", 40))
        .with(aRun("soup", "simmer", "17:00", 40))
        .heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void a_step_or_a_dish_that_is_not_on_the_menu_is_a_break() {
    var breaks = aPlanFor(soup)
        .with(aRun("soup", "simmer", "18:00", 40))
        .with(aRun("soup", "strain", "18:40", 5))
        .with(aRun("stew", "simmer", "18:00", 40))
        .heldAgainst(rule);

    assertThat(breaks).extracting(Break::what)
        .containsExactly("the menu asks for nothing of the kind", "the menu asks for nothing of the kind");
  }

  @Test
  void two_trays_may_prove_together_and_the_fifth_alone() {
    var breaks = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "14:00", 20).batches(1, 5))
        .with(aRun("rolls", "prove", "15:00", 30).batches(1, 2))
        .with(aRun("rolls", "prove", "15:30", 30).batches(3, 4))
        .with(aRun("rolls", "prove", "16:00", 30).batch(5))
        .heldAgainst(rule);

    assertThat(breaks).isEmpty();
  }

  @Test
  void a_third_tray_in_the_run_is_one_too_many() {
    var breaks = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "14:00", 20).batches(1, 5))
        .with(aRun("rolls", "prove", "15:00", 30).batches(1, 3))
        .with(aRun("rolls", "prove", "15:30", 30).batches(4, 5))
        .heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.what()).isEqualTo("3 batches share a run, and at most 2 may");
    });
  }

  @Test
  void dough_mixed_once_for_only_some_of_the_trays_is_not_mixed() {
    var breaks = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "14:00", 20).batches(1, 4))
        .with(aRun("rolls", "prove", "15:00", 30).batches(1, 2))
        .with(aRun("rolls", "prove", "15:30", 30).batches(3, 4))
        .with(aRun("rolls", "prove", "16:00", 30).batch(5))
        .heldAgainst(rule);

    assertThat(breaks).extracting(Break::what)
        .containsExactly("it is never done", "the menu asks for nothing of the kind");
  }

  @Test
  void there_is_no_sixth_tray_of_five() {
    var breaks = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "14:00", 20).batches(1, 5))
        .with(aRun("rolls", "prove", "15:00", 30).batches(1, 2))
        .with(aRun("rolls", "prove", "15:30", 30).batches(3, 4))
        .with(aRun("rolls", "prove", "16:00", 30).batches(5, 6))
        .heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void forty_minutes_up_to_sixty_may_be_forty_or_sixty() {
    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "18:00", 40)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "18:00", 60)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void thirty_seven_is_three_short_and_sixty_two_two_over() {
    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "18:00", 37)).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(3);
          assertThat(each.what()).isEqualTo("it takes 40 to 60 min and has 37");
        });
    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "17:50", 62)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void of_forty_to_forty_five_minutes_the_plan_books_forty_five() {
    var lasagne = aSupperOf(aDish("lasagne").step(aStep("bake").takes(new Pace(40, 45, 0))));

    assertThat(aPlanFor(lasagne).with(aRun("lasagne", "bake", "18:00", 45)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(lasagne).with(aRun("lasagne", "bake", "18:00", 44)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void two_batches_in_one_run_take_the_minutes_of_one() {
    var chops = aSupperOf(
        aDish("chops").batches(2).step(aStep("season").takes(new Pace(0, 0, 60)).together(2)));

    var breaks = aPlanFor(chops).with(aRun("chops", "season", "18:00", 5).batches(1, 2)).heldAgainst(rule);

    assertThat(breaks).as("five portions a batch, a minute each").isEmpty();
  }
}
