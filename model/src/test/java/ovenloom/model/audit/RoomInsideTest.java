package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Kitchens.cm;
import static ovenloom.model.audit.Ovens.aRack;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Level;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Spread;

/** Two racks of 55 x 38 cm, 15 cm above each; trays of 50 x 35 cm, dishes of 25 x 35 cm; 1 cm between vessels. */
class RoomInsideTest {

  private final KitchenRule rule = new RoomInside();

  private static Dishes baked(String name, String vessel, int count) {
    return aDish(name).step(aStep("bake").takes(30).bake(180).in(vessel, count));
  }

  private static Runs bake(String dish, String from, Integer... racks) {
    return aRun(dish, "bake", from, 30).oven("oven", 180).racks(racks);
  }

  @Test
  void a_tray_to_a_rack() {
    var supper = aSupperOf(baked("tart", "tray", 1), baked("pie", "tray", 1));

    assertThat(
        aPlanFor(supper).with(bake("tart", "18:00", 0)).with(bake("pie", "18:10", 1)).heldAgainst(rule))
        .isEmpty();
    assertThat(
        aPlanFor(supper).with(bake("tart", "18:00", 0)).with(bake("pie", "18:10", 0)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.when()).isEqualTo(Clock.between("18:10", "18:30"));
          assertThat(each.who()).containsExactly("oven", "tart/bake", "pie/bake");
        });
  }

  @Test
  void the_pie_may_have_the_rack_the_minute_the_tart_leaves_it() {
    var supper = aSupperOf(baked("tart", "tray", 1), baked("pie", "tray", 1));

    assertThat(
        aPlanFor(supper).with(bake("tart", "18:00", 0)).with(bake("pie", "18:30", 0)).heldAgainst(rule))
        .isEmpty();
    assertThat(
        aPlanFor(supper).with(bake("tart", "18:00", 0)).with(bake("pie", "18:29", 0)).heldAgainst(rule))
        .hasSize(1);
  }

  /** 25 + 25 cm and 1 cm between them are 51 of 55; a third has none of the 4 that are left. */
  @Test
  void two_dishes_stand_side_by_side_and_a_third_does_not() {
    assertThat(
        aPlanFor(aSupperOf(baked("gratin", "dish", 2))).with(bake("gratin", "18:00", 0, 0)).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(aSupperOf(baked("gratin", "dish", 3))).with(bake("gratin", "18:00", 0, 0, 0))
        .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void between_two_dishes_of_27_cm_there_is_a_centimetre_and_to_the_wall_none() {
    var exact = aHomeKitchen().vessel("dish", 6, cm(27, 38, 6));
    var wide = aHomeKitchen().vessel("dish", 6, cm(27.1, 38, 6));
    var gratin = aSupperOf(baked("gratin", "dish", 2));

    assertThat(aPlanFor(gratin.in(exact)).with(bake("gratin", "18:00", 0, 0)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(gratin.in(wide)).with(bake("gratin", "18:00", 0, 0)).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(gratin.in(wide.gap(0.8))).with(bake("gratin", "18:00", 0, 0)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void every_vessel_has_a_rack_that_is_there() {
    var gratin = aSupperOf(baked("gratin", "dish", 2));

    assertThat(aPlanFor(gratin).with(bake("gratin", "18:00", 0)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("2 vessels and 1 rack"));
    assertThat(aPlanFor(gratin).with(bake("gratin", "18:00", 0, 2)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("there is no rack 3 from the bottom"));
    assertThat(aPlanFor(gratin).with(bake("gratin", "18:00", 0, -1)).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void what_bakes_low_is_on_the_lowest_rack_and_in_the_middle_of_two_on_either() {
    var low = aSupperOf(aDish("tart").step(aStep("bake").takes(30).bake(180).rack(Level.LOW).in("tray")));
    var middle = aSupperOf(
        aDish("tart").step(aStep("bake").takes(30).bake(180).rack(Level.MIDDLE).in("tray")));

    assertThat(aPlanFor(low).with(bake("tart", "18:00", 0)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(low).with(bake("tart", "18:00", 1)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("rack 2 from the bottom is not low"));
    assertThat(aPlanFor(middle).with(bake("tart", "18:00", 0)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(middle).with(bake("tart", "18:00", 1)).heldAgainst(rule)).isEmpty();
  }

  private static Events turkeyAndTart(double stands) {
    return aSupperOf(
        aDish("turkey").step(aStep("bake").takes(30).bake(180).in("tray").stands(stands)),
        baked("tart", "tray", 1));
  }

  @Test
  void a_turkey_of_15_cm_leaves_the_rack_above_free_and_one_of_16_closes_it() {
    var fits = aPlanFor(turkeyAndTart(15)).with(bake("turkey", "18:00", 0)).with(bake("tart", "18:20", 1));
    var closes = aPlanFor(turkeyAndTart(15.1)).with(bake("turkey", "18:00", 0))
        .with(bake("tart", "18:20", 1));
    var after = aPlanFor(turkeyAndTart(15.1)).with(bake("turkey", "18:00", 0)).with(bake("tart", "18:30", 1));

    assertThat(fits.heldAgainst(rule)).isEmpty();
    assertThat(after.heldAgainst(rule)).isEmpty();
    assertThat(closes.heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(10);
      assertThat(each.unit()).isEqualTo(Break.Unit.MINUTES);
    });
  }

  @Test
  void a_turkey_of_30_cm_has_all_of_the_oven_and_one_of_31_is_too_tall_for_it() {
    assertThat(aPlanFor(turkeyAndTart(30)).with(bake("turkey", "18:00", 0)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(turkeyAndTart(31)).with(bake("turkey", "18:00", 0)).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(10);
          assertThat(each.unit()).isEqualTo(Break.Unit.MILLIMETRES);
        });
    assertThat(aPlanFor(turkeyAndTart(16)).with(bake("turkey", "18:00", 1)).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void of_three_racks_a_turkey_of_30_cm_closes_one_and_the_third_is_free() {
    var kitchen = aHomeKitchen().ovens(anOven("oven").racks(3));

    assertThat(aPlanFor(turkeyAndTart(30).in(kitchen)).with(bake("turkey", "18:00", 0))
        .with(bake("tart", "18:00", 2))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(turkeyAndTart(30.1).in(kitchen)).with(bake("turkey", "18:00", 0))
        .with(bake("tart", "18:00", 2))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void a_vessel_taller_than_the_food_in_it_counts_itself() {
    var pot = aHomeKitchen().vessel("tray", 4, cm(50, 35, 16));

    assertThat(aPlanFor(turkeyAndTart(10).in(pot)).with(bake("turkey", "18:00", 1)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
  }

  @Test
  void what_waits_in_the_oven_keeps_its_rack() {
    var supper = aSupperOf(
        aDish("rolls").batches(2).step(aStep("bake").takes(30).bake(180).together(2).in("tray")),
        baked("pie", "tray", 1));
    var plan = aPlanFor(supper)
        .with(aRun("rolls", "bake", "18:00", 30).batches(1, 2).oven("oven", 180).racks(0, 1))
        .with(aStay("rolls", "bake", "18:30").batch(1).oven("18:50", "oven", 80))
        .with(aStay("rolls", "bake", "18:30").batch(2).counter("18:50"));

    assertThat(plan.with(bake("pie", "18:30", 1)).heldAgainst(rule)).isEmpty();
    assertThat(plan.with(bake("pie", "18:50", 0)).heldAgainst(rule)).isEmpty();
    assertThat(plan.with(bake("pie", "18:49", 0)).heldAgainst(rule)).isNotEmpty();
  }

  @Test
  void batches_in_one_vessel_take_one_place() {
    var stew = aSupperOf(aDish("stew").batches(2)
        .step(aStep("bake").takes(30).bake(180).togetherInOneVessel(2).in("tray")));

    assertThat(aPlanFor(stew).with(aRun("stew", "bake", "18:00", 30).batches(1, 2).oven("oven", 180).racks(0))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_bowl_nobody_has_measured_goes_into_no_oven() {
    assertThat(
        aPlanFor(aSupperOf(baked("pudding", "bowl", 1))).with(bake("pudding", "18:00", 0)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("nobody knows how large a bowl is"));
  }

  @Test
  void an_unknown_oven_has_no_racks_to_speak_of() {
    assertThat(aPlanFor(aSupperOf(baked("pie", "tray", 1)))
        .with(aRun("pie", "bake", "18:00", 30).oven("kiln", 180))
        .heldAgainst(rule)).isEmpty();
  }

  /** Nine moulds of 10 x 10 cm, in three rows of three, on a rack of 32 x 32 cm. */
  private static Plans nineMoulds() {
    var kitchen = aHomeKitchen().vessel("mould", 9, cm(10, 10, 5))
        .ovens(anOven("oven").racks(
            new Rack(Length.cm(32), Length.cm(32), aRack(15).clear())));
    return aPlanFor(aSupperOf(baked("flans", "mould", 9)).in(kitchen))
        .with(bake("flans", "18:00", 0, 0, 0, 0, 0, 0, 0, 0, 0));
  }

  private static Spread rows(double apart, int moulds, String to) {
    List<Spread.Spot> spots = new ArrayList<>();
    for (int mould = 0; mould < moulds; mould++) {
      int row = mould / 3;
      int column = mould % 3;
      spots.add(new Spread.Spot("flans", "bake", Batches.only(1), mould, Length.cm(column * apart),
          Length.cm(row * apart),
          mould % 2 == 1));
    }
    return new Spread("oven", 0, Clock.between("18:00", to), spots);
  }

  @Test
  void of_nine_moulds_the_plan_says_how_they_stand() {
    assertThat(nineMoulds().heldAgainst(rule)).singleElement()
        .satisfies(
            each -> assertThat(each.what()).isEqualTo("9 stand on level 1, and the plan does not say how"));
    assertThat(nineMoulds().with(rows(11, 9, "18:30")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void it_says_so_for_all_the_time_and_for_every_mould() {
    assertThat(nineMoulds().with(rows(11, 9, "18:29")).heldAgainst(rule)).hasSize(1);
    assertThat(nineMoulds().with(rows(11, 8, "18:30")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(nineMoulds().with(rows(11, 10, "18:30")).heldAgainst(rule)).isNotEmpty();
  }

  @Test
  void moulds_stand_a_centimetre_apart_and_none_stands_out() {
    var tooNear = nineMoulds().with(rows(10.9, 9, "18:30")).heldAgainst(rule);
    var standOut = nineMoulds().with(rows(11.1, 9, "18:30")).heldAgainst(rule);

    assertThat(tooNear).hasSize(20).allSatisfy(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.unit()).isEqualTo(Break.Unit.MILLIMETRES);
    });
    assertThat(standOut).hasSize(5).allSatisfy(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void a_turned_mould_is_as_wide_as_it_was_deep() {
    var kitchen = aHomeKitchen().vessel("mould", 9, cm(5, 3, 5));
    var plan = aPlanFor(aSupperOf(baked("flans", "mould", 9)).in(kitchen))
        .with(bake("flans", "18:00", 0, 0, 0, 0, 0, 0, 0, 0, 0));
    List<Spread.Spot> turned = new ArrayList<>();
    List<Spread.Spot> straight = new ArrayList<>();
    for (int mould = 0; mould < 9; mould++) {
      turned.add(
          new Spread.Spot("flans", "bake", Batches.only(1), mould, Length.cm(mould * 4), Length.cm(0), true));
      straight.add(new Spread.Spot("flans", "bake", Batches.only(1), mould, Length.cm(mould * 4),
          Length.cm(0), false));
    }

    assertThat(plan.with(new Spread("oven", 0, Clock.between("18:00", "18:30"), turned)).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(aSupperOf(baked("flans", "mould", 9)).in(kitchen))
        .with(bake("flans", "18:00", 0, 0, 0, 0, 0, 0, 0, 0, 0))
        .with(new Spread("oven", 0, Clock.between("18:00", "18:30"), straight))
        .heldAgainst(rule)).hasSize(8);
  }

  @Test
  void eight_moulds_need_no_saying() {
    var kitchen = aHomeKitchen().vessel("mould", 9, cm(10, 10, 5));

    assertThat(aPlanFor(aSupperOf(baked("flans", "mould", 8)).in(kitchen))
        .with(bake("flans", "18:00", 0, 0, 0, 0, 0, 0, 0, 0))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void half_a_millimetre_too_near_or_too_tall_counts_as_one() {
    assertThat(nineMoulds().with(rows(10.95, 9, "18:30")).heldAgainst(rule))
        .allSatisfy(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(aPlanFor(turkeyAndTart(30.05)).with(bake("turkey", "18:00", 0)).heldAgainst(rule))
        .singleElement()
        .satisfies(
            each -> assertThat(each.what()).isEqualTo("30.05 cm tall on rack 1, which is too tall by 1 mm"));
  }

  @Test
  void who_stands_there_is_named_once() {
    assertThat(nineMoulds().heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("oven", "flans/bake"));
  }
}
