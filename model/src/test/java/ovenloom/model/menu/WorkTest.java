package ovenloom.model.menu;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;
import ovenloom.model.measure.Pace;

class WorkTest {

  @Test
  void each_batch_of_a_pie_is_baked_after_it_was_filled_itself() {
    var work = workOf(aDish("pie").batches(2).step(aStep("fill")).step(aStep("bake")));

    assertThat(work.steps()).extracting(BatchStep::toString)
        .containsExactly("pie/fill (batch 1)", "pie/fill (batch 2)", "pie/bake (batch 1)",
            "pie/bake (batch 2)");
    assertThat(linksOf(work)).containsExactly(
        "pie/fill (batch 1) > pie/bake (batch 1)", "pie/fill (batch 2) > pie/bake (batch 2)");
  }

  @Test
  void dough_mixed_once_feeds_every_tray_and_trays_packed_once_wait_for_all() {
    var work = workOf(aDish("rolls").batches(2)
        .step(aStep("mix").once())
        .step(aStep("shape"))
        .step(aStep("pack").once()));

    assertThat(linksOf(work)).containsExactly(
        "rolls/mix > rolls/shape (batch 1)",
        "rolls/mix > rolls/shape (batch 2)",
        "rolls/shape (batch 1) > rolls/pack",
        "rolls/shape (batch 2) > rolls/pack");
  }

  @Test
  void dishes_with_as_many_batches_are_linked_batch_to_batch() {
    var work = workOf(
        aDish("turkey").batches(2).step(aStep("roast")).step(aStep("rest")),
        aDish("gravy").batches(2).step(aStep("make").uses("turkey", "roast")));

    assertThat(linksOf(work)).contains(
        "turkey/roast (batch 1) > gravy/make (batch 1)", "turkey/roast (batch 2) > gravy/make (batch 2)")
        .hasSize(4);
  }

  @Test
  void one_gravy_for_two_birds_waits_for_both() {
    var work = workOf(
        aDish("turkey").batches(2).step(aStep("roast")),
        aDish("gravy").step(aStep("make").uses("turkey", "roast")));

    assertThat(linksOf(work)).containsExactly(
        "turkey/roast (batch 1) > gravy/make", "turkey/roast (batch 2) > gravy/make");
  }

  @Test
  void a_step_comes_after_all_it_links_to_however_the_menu_is_written() {
    var work = workOf(
        aDish("gravy").step(aStep("make").uses("turkey", "roast")),
        aDish("turkey").step(aStep("roast")));

    assertThat(work.steps()).extracting(BatchStep::toString).containsExactly("turkey/roast", "gravy/make");
    assertThat(work.steps()).extracting(BatchStep::index).containsExactly(0, 1);
  }

  @Test
  void steps_that_wait_for_each_other_cannot_be_laid_out() {
    assertThatThrownBy(() -> workOf(
        aDish("hen").step(aStep("hatch").uses("egg", "lay")),
        aDish("egg").step(aStep("lay").uses("hen", "hatch"))))
        .hasMessageContaining("wait for each other");
  }

  @Test
  void food_waits_after_a_step_that_feeds_another_and_before_the_table() {
    var work = workOf(aDish("stew").step(aStep("chop")).step(aStep("simmer")));

    assertThat(work.leavesAStay(0)).isTrue();
    assertThat(work.goesToTheTable(0)).isFalse();
    assertThat(work.leavesAStay(1)).isTrue();
    assertThat(work.goesToTheTable(1)).isTrue();
  }

  @Test
  void nothing_waits_of_a_chore_or_of_what_is_served() {
    var work = workOf(
        aChore("table").step(aStep("iron")).step(aStep("lay")),
        aDish("tart").step(aStep("plate").serve()));

    assertThat(work.leavesAStay(0)).as("iron").isFalse();
    assertThat(work.leavesAStay(step(work, "table", "lay"))).isFalse();
    assertThat(work.goesToTheTable(step(work, "table", "lay"))).isFalse();
    assertThat(work.leavesAStay(step(work, "tart", "plate"))).isFalse();
  }

  @Test
  void rice_cooked_alongside_the_onions_leaves_no_stay_of_the_onions() {
    var work = workOf(aDish("pilaf")
        .step(aStep("fry the onions"))
        .step(aStep("cook the rice").after(new Link(Link.Kind.ALONGSIDE, "", "fry the onions", 0, null))));

    assertThat(work.leavesAStay(0)).isFalse();
    assertThat(work.goesToTheTable(0)).isFalse();
    assertThat(work.outOf(0)).singleElement().satisfies(link -> {
      assertThat(link.carriesFood()).isTrue();
      assertThat(link.makesAStay()).isFalse();
    });
  }

  @Test
  void a_dish_that_only_has_to_come_first_still_goes_to_the_table_itself() {
    var work = workOf(
        aDish("soup").step(aStep("simmer")),
        aDish("stew").step(aStep("braise").after(new Link(Link.Kind.ORDER_ONLY, "soup", "simmer", 0, null))));

    assertThat(work.goesToTheTable(step(work, "soup", "simmer"))).isTrue();
    assertThat(work.outOf(0)).singleElement().satisfies(link -> {
      assertThat(link.carriesFood()).isFalse();
      assertThat(link.makesAStay()).isFalse();
    });
  }

  @Test
  void plating_takes_its_seconds_for_the_portions_of_one_batch_and_mixing_once_for_all() {
    var work = workOf(aDish("braise").batches(2)
        .step(aStep("mix").takes(new Pace(0, 0, 60)).once())
        .step(aStep("plate").takes(new Pace(1, 2, 20)).upTo(9)));

    assertThat(work.steps().get(0).minutes()).as("10 portions, a minute each").isEqualTo(10);
    assertThat(work.steps().get(1).minutes()).as("2 min and 5 portions, 20 s each, rounded up").isEqualTo(4);
    assertThat(work.steps().get(1).mostMinutes()).isEqualTo(9);
    assertThat(work.steps().get(0).mostMinutes()).isEqualTo(10);
  }

  @Test
  void a_batch_is_found_by_its_number_and_a_once_step_by_any() {
    var work = workOf(aDish("rolls").batches(2).step(aStep("mix").once()).step(aStep("shape")));

    assertThat(work.find("rolls", "mix", 2).index()).isZero();
    assertThat(work.find("rolls", "shape", 2).batches()).isEqualTo(Batches.only(2));
  }

  private static Work workOf(Dishes... dishes) {
    return Work.of(aSupperOf(dishes).event());
  }

  private static int step(Work work, String dish, String step) {
    return work.find(dish, step, 1).index();
  }

  private static List<String> linksOf(Work work) {
    return work.links()
        .stream()
        .map(link -> work.steps().get(link.from()) + " > " + work.steps().get(link.to()))
        .toList();
  }
}
