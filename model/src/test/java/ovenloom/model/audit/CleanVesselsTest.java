package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Wash;

/** Two bowls, each washed in five minutes. */
class CleanVesselsTest {

  private final KitchenRule rule = new CleanVessels();
  private final Kitchens twoBowls = aHomeKitchen().vessel("bowl", 2, null);

  /** Mixed in so many bowls and moved to a tray. */
  private static Dishes dough(String name, int bowls) {
    return aDish(name).step(aStep("mix").takes(20).in("bowl", bowls))
        .step(aStep("shape").takes(10).in("tray"));
  }

  private static Plans with(Plans plan, String dish, String mix, String shape) {
    return plan.with(aRun(dish, "mix", mix, 20)).with(aRun(dish, "shape", shape, 10));
  }

  private Plans rye() {
    return with(aPlanFor(aSupperOf(dough("rye", 2), dough("oat", 1)).in(twoBowls)), "rye", "16:00", "16:20");
  }

  @Test
  void two_bowls_are_enough_for_two() {
    var both = aSupperOf(dough("rye", 1), dough("oat", 1)).in(twoBowls);

    assertThat(with(with(aPlanFor(both), "rye", "16:00", "16:20"), "oat", "16:05", "16:40").heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void a_third_is_missed_from_the_minute_it_is_wanted() {
    assertThat(with(rye(), "oat", "16:10", "16:40").heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.unit()).isEqualTo(Break.Unit.PIECES);
      assertThat(each.when()).isEqualTo(between("16:10", "16:50"));
      assertThat(each.who()).containsExactly("bowl", "rye/mix", "oat/mix");
    });
  }

  @Test
  void a_dirty_bowl_is_no_clean_one() {
    assertThat(with(rye(), "oat", "17:00", "17:20").heldAgainst(rule)).hasSize(1);
    assertThat(with(rye(), "oat", "17:00", "17:20").wash("bowl", 1, "16:55", "Host").heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void it_is_free_the_minute_its_wash_ends_and_not_before() {
    assertThat(with(rye(), "oat", "16:35", "17:00").wash("bowl", 1, "16:30", "Host").heldAgainst(rule))
        .isEmpty();
    assertThat(with(rye(), "oat", "16:34", "17:00").wash("bowl", 1, "16:30", "Host").heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("16:34", "16:35")));
  }

  /** The dough leaves its bowls as the shaping ends, at 16:30. */
  @Test
  void nobody_washes_a_bowl_with_dough_in_it() {
    assertThat(rye().wash("bowl", 2, "16:30", "Host").heldAgainst(rule)).isEmpty();
    assertThat(rye().wash("bowl", 2, "16:29", "Host").heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(2);
      assertThat(each.what()).isEqualTo("washes 2 where 0 are dirty");
    });
  }

  @Test
  void nobody_washes_more_than_there_is_or_the_same_twice_or_nothing() {
    assertThat(rye().wash("bowl", 3, "16:30", "Host").heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(rye().wash("bowl", 1, "16:30", "Host").wash("bowl", 1, "16:32", "Guest").heldAgainst(rule))
        .isEmpty();
    assertThat(rye().wash("bowl", 2, "16:30", "Host").wash("bowl", 1, "16:40", "Host").heldAgainst(rule))
        .hasSize(1);
    assertThat(rye().wash("bowl", -1, "16:30", "Host").heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
    assertThat(rye().wash("bowl", 0, "16:30", "Host").heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void a_wash_lasts_as_long_as_it_lasts() {
    for (int minutes : new int[]{4, 6}) {
      var when = new Stretch(Clock.at("16:30"), Clock.at("16:30") + minutes);

      assertThat(rye().with(new Wash("bowl", 2, when, "Host")).heldAgainst(rule)).singleElement()
          .satisfies(each -> assertThat(each.unit()).isEqualTo(Break.Unit.MINUTES));
    }
  }

  @Test
  void bowls_at_the_table_are_taken_until_the_end_of_service() {
    var salad = aSupperOf(aDish("salad").step(aStep("toss").in("bowl", 2)),
        aDish("cream").course("pudding").step(aStep("whip").in("bowl")))
        .course("pudding", Clock.at("20:00"), 0)
        .in(twoBowls);
    var plan = aPlanFor(salad).with(aRun("salad", "toss", "18:00", 10))
        .with(aRun("cream", "whip", "19:15", 10));

    assertThat(plan.wash("bowl", 1, "19:10", "Host").heldAgainst(rule)).isEmpty();

    var hasty = aPlanFor(salad).with(aRun("salad", "toss", "18:00", 10))
        .with(aRun("cream", "whip", "19:14", 10));

    assertThat(hasty.wash("bowl", 1, "19:09", "Host").heldAgainst(rule)).isNotEmpty();
  }

  @Test
  void two_batches_mixed_in_one_bowl_take_one_until_the_last_is_shaped() {
    var rolls = aSupperOf(aDish("rolls").batches(2)
        .step(aStep("mix").takes(20).togetherInOneVessel(2).in("bowl"))
        .step(aStep("shape").takes(10).in("tray")), dough("oat", 1))
        .in(aHomeKitchen().vessel("bowl", 1, null));
    var plan = aPlanFor(rolls).with(aRun("rolls", "mix", "16:00", 20).batches(1, 2))
        .with(aRun("rolls", "shape", "16:20", 10).batch(1))
        .with(aRun("rolls", "shape", "16:30", 10).batch(2));

    assertThat(plan.heldAgainst(rule)).isEmpty();
    assertThat(with(plan, "oat", "16:45", "17:05").wash("bowl", 1, "16:39", "Host").heldAgainst(rule))
        .extracting(Break::what)
        .contains("washes 1 where 0 are dirty");
  }

  @Test
  void two_batches_mixed_one_after_the_other_take_two() {
    var rolls = aSupperOf(aDish("rolls").batches(2)
        .step(aStep("mix").takes(20).togetherInOneVessel(2).in("bowl"))
        .step(aStep("shape").takes(10).in("tray"))).in(aHomeKitchen().vessel("bowl", 1, null));
    var plan = aPlanFor(rolls).with(aRun("rolls", "mix", "16:00", 20).batch(1))
        .with(aRun("rolls", "mix", "16:20", 20).batch(2))
        .with(aRun("rolls", "shape", "16:40", 10).batch(1))
        .with(aRun("rolls", "shape", "16:50", 10).batch(2));

    assertThat(plan.heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("16:20", "17:00")));
  }

  @Test
  void a_bowl_a_neighbour_has_is_not_there() {
    var lent = new Vessel("bowl", 2, null, BurnerSize.SMALL, 5, Kitchens.taken(between("16:00", "16:10"), 1));
    var rye = aSupperOf(dough("rye", 2)).in(aHomeKitchen().with(lent));

    assertThat(with(aPlanFor(rye), "rye", "16:10", "16:30").heldAgainst(rule)).isEmpty();
    assertThat(with(aPlanFor(rye), "rye", "16:09", "16:30").heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("16:09", "16:10")));
  }

  @Test
  void a_vessel_the_kitchen_has_not_is_missed() {
    var soup = aSupperOf(aDish("soup").step(aStep("simmer").in("cauldron")));

    assertThat(aPlanFor(soup).with(aRun("soup", "simmer", "18:00", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("there is no cauldron here"));
    assertThat(aPlanFor(soup).wash("tub", 1, "18:00", "Host").heldAgainst(rule)).hasSize(1);
  }

  @Test
  void what_the_plan_forgot_takes_no_vessel() {
    assertThat(aPlanFor(aSupperOf(dough("rye", 2)).in(twoBowls)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(aSupperOf(dough("rye", 2)).in(twoBowls)).with(aRun("rye", "mix", "16:00", 20))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_bowl_at_the_table_is_taken_as_long_as_the_dish_it_went_to_is_served() {
    var gravy = aSupperOf(aDish("bird").step(aStep("roast").in("bowl", 2)),
        aDish("gravy").course("late").step(aStep("stir").uses("bird", "roast").in("bowl", 2)))
        .course("late", Clock.at("20:00"), 0)
        .in(twoBowls);
    var plan = aPlanFor(gravy).with(aRun("bird", "roast", "18:00", 10))
        .with(aRun("gravy", "stir", "18:10", 10));

    assertThat(plan.wash("bowl", 2, "20:00", "Host").heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(gravy).with(aRun("bird", "roast", "18:00", 10))
        .with(aRun("gravy", "stir", "18:10", 10))
        .wash("bowl", 2, "19:59", "Host")
        .heldAgainst(rule)).hasSize(1);
  }
}
