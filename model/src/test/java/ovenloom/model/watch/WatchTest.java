package ovenloom.model.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Events;
import ovenloom.model.audit.Kitchens;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Runs;
import ovenloom.model.audit.Steps;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Life;
import ovenloom.model.life.Unsaid;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;
import ovenloom.model.watch.Concern.Rule;

/** Each limit at its edge: what is just within passes, what is just beyond does not. */
class WatchTest {

  /** What is foregone in the menu alone is found in every plan for it. */
  private static List<Rule> concerns(Plans plan) {
    Life life = Life.of(plan.plan(), new Cards(Work.of(plan.plan().event())), 1, Unsaid.LOOSE);
    List<Rule> found = Watch.over(plan.plan(), life).stream().map(Concern::rule).toList();
    if (found.isEmpty()) {
      assertThat(Beforehand.of(life.work())).isEmpty();
    }
    return found;
  }

  private static Dishes soup() {
    return aDish("soup").kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"));
  }

  /** FSIS: two hours between 40 and 140 F. Minced, it is left out from the first step on. */
  @ParameterizedTest
  @CsvSource({"17:10, false", "17:09, true"})
  void raw_food_is_left_out_for_two_hours_in_all_and_no_minute_longer(String from, boolean tooLong) {
    Events supper = aSupperOf(aDish("tartare").tags("raw meat")
        .kind(Kind.CASSEROLE, Length.mm(30))
        .step(aStep("mince").takes(10).in("bowl"))).rules("us-home");
    String until = from.equals("17:10") ? "17:20" : "17:19";
    Plans plan = aPlanFor(supper)
        .with(aRun("tartare", "mince", from, 10))
        .with(aStay("tartare", "mince", until).counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(tooLong);
  }

  /** FSIS: 140 F, FDA 135 F: a hot place at 58 C will do for the one and not for the other. */
  @ParameterizedTest
  @CsvSource({"us-service, 58, false", "us-home, 58, true", "us-service, 55, true", "uk, 64, false",
      "uk, 62, true"})
  void what_is_kept_hot_is_kept_hot_enough(String rules, int holds, boolean tooCool) {
    Store cabinet = new Store("hot box", Store.Kind.HOT, Temperature.celsius(holds), Air.STILL,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(soup()).in(Kitchens.aHomeKitchen().with(cabinet)).rules(rules);
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", "10:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "10:30").shelf("19:00", "hot box", "only"));

    assertThat(concerns(plan).contains(Rule.KEPT_HOT)).isEqualTo(tooCool);
  }

  /** FSA advice: 70 C for two minutes; a minute of probing is not enough. */
  @ParameterizedTest
  @CsvSource({"70, true", "76, false"})
  void a_hold_of_two_minutes_is_not_met_in_one(int core, boolean tooShort) {
    Events supper = aSupperOf(aDish("burgers").tags("raw ground meat")
        .kind(Kind.TRAY_OF_PIECES, Length.mm(4))
        .step(aStep("fry").takes(10).burner(BurnerSize.SMALL, core).in("pot"))).rules("uk");
    Plans plan = aPlanFor(supper)
        .with(aRun("burgers", "fry", "18:50", 10).burners("large"))
        .with(aStay("burgers", "fry", "19:00").counter("19:00"));

    assertThat(concerns(plan).contains(Rule.COOKED)).isEqualTo(tooShort);
  }

  /** FDA Food Code 2017, 3-501.16(A)(2): 41 F, which is 5 C; FSIS: 40 F; England, Wales and Northern Ireland: 8 C. */
  @ParameterizedTest
  @CsvSource({"us-service, 5, false", "us-service, 6, true", "us-home, 4, false", "us-home, 5, true",
      "uk, 8, false",
      "uk, 9, true"})
  void a_fridge_is_cold_enough(String rules, int holds, boolean tooWarm) {
    Store fridge = new Store("larder", Store.Kind.FRIDGE, Temperature.celsius(holds), Air.STILL,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(soup()).in(Kitchens.aHomeKitchen().with(fridge)).rules(rules);
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", "10:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "10:30").shelf("19:00", "larder", "only"));

    assertThat(concerns(plan).contains(Rule.KEPT_COLD)).isEqualTo(tooWarm);
  }

  /** FDA Food Code 2017, 3-501.13: in the cold, or as part of cooking; nothing thaws on the counter. */
  @ParameterizedTest
  @CsvSource({"420, '', true", "15, '', false", "420, fridge, false"})
  void frozen_meat_thaws_in_the_cold(int minutes, String place, boolean warm) {
    Steps thaw = aStep("thaw").takes(minutes).starts(StartState.FROZEN).in("dish");
    Events supper = aSupperOf(aDish("leg").tags("raw meat")
        .kind(Kind.DENSE_ROAST, Length.mm(40))
        .step(place.isEmpty() ? thaw : thaw.shelf(place)))
        .in(Kitchens.aHomeKitchen())
        .rules("us-service");
    Runs run = aRun("leg", "thaw", "12:00", minutes);
    Plans plan = aPlanFor(supper).with(place.isEmpty() ? run : run.shelves(place, "top"));

    assertThat(concerns(plan).contains(Rule.THAWED)).isEqualTo(warm);
  }

  /** Small pieces melt for half an hour; the free quarter of an hour is one in all, not one for each step. */
  @ParameterizedTest
  @CsvSource({"false, false", "true, true"})
  void minutes_in_which_frozen_meat_thaws_in_the_warm_add_up(boolean twice, boolean warm) {
    Dishes meat = aDish("dice").tags("raw meat")
        .kind(Kind.DENSE_ROAST, Length.mm(10))
        .step(aStep("unwrap").takes(15).starts(StartState.FROZEN).in("dish"));
    Dishes stood = twice ? meat.step(aStep("stand").takes(15).in("dish")) : meat;
    Events supper = aSupperOf(stood.step(aStep("thaw").takes(360).shelf("fridge").in("dish")))
        .in(Kitchens.aHomeKitchen())
        .rules("us-service");
    Plans plan = aPlanFor(supper).with(aRun("dice", "unwrap", "12:00", 15))
        .with(aRun("dice", "thaw", twice ? "12:30" : "12:15", 360).shelves("fridge", "top"));

    assertThat(concerns(twice ? plan.with(aRun("dice", "stand", "12:15", 15)) : plan).contains(Rule.THAWED))
        .isEqualTo(warm);
  }

  /** FDA Food Code 2017, 3-401.11(A)(3): poultry to 165 F, which is 73.9 C. */
  @ParameterizedTest
  @CsvSource({"74, false", "73, true"})
  void poultry_gets_as_hot_as_it_must(int core, boolean tooCool) {
    Events supper = aSupperOf(aDish("thighs").tags("raw poultry")
        .kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("poach").takes(30).burner(BurnerSize.SMALL, core).starts(StartState.CHILLED).in("pot")))
        .rules("us-service");
    Plans plan = aPlanFor(supper).with(aRun("thighs", "poach", "18:30", 30).burners("large"));

    assertThat(concerns(plan)).isEqualTo(tooCool ? List.of(Rule.COOKED) : List.of());
  }

  /** FDA Food Code 2017, 3-403.11(A): what was cooled is heated again to 165 F, though it was boiled before. */
  @ParameterizedTest
  @CsvSource({"74, false", "70, true"})
  void what_was_cooled_gets_as_hot_again(int core, boolean tooCool) {
    Events supper = aSupperOf(soup().step(aStep("warm").takes(15).burner(BurnerSize.SMALL, core)))
        .rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", daysBefore(1, "12:00"), 30).burners("large"))
        .with(aStay("soup", "simmer", daysBefore(1, "12:30")).shelf("18:45", "fridge", "top"))
        .with(aRun("soup", "warm", "18:45", 15).burners("large"));

    assertThat(concerns(plan).contains(Rule.COOKED)).isEqualTo(tooCool);
  }

  /** Roberts and others, Food Protection Trends 33(1), 2013: two inches in a walk-in freezer pass, in a fridge they do not. */
  @ParameterizedTest
  @CsvSource({"51, -18, MOVING, false", "76, -18, MOVING, true", "51, 3, STILL, true"})
  void what_cools_for_later_cools_in_two_hours_and_six_in_all(int deep, int holds, Air air, boolean tooSlow) {
    Store cold = new Store("cold", Store.Kind.FRIDGE, Temperature.celsius(holds), air,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(aDish("chili").kind(Kind.LIQUID, Length.mm(deep))
        .arrives(Arrives.COLD)
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot")))
        .in(Kitchens.aHomeKitchen().with(cold))
        .rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("chili", "simmer", "9:00", 30).burners("large"))
        .with(aStay("chili", "simmer", "9:30").shelf("19:00", "cold", "only"));

    assertThat(concerns(plan).contains(Rule.COOLED)).isEqualTo(tooSlow);
  }

  @Test
  void what_is_eaten_before_the_time_is_over_need_not_cool() {
    Events supper = aSupperOf(soup()).rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", "17:30", 30).burners("large"))
        .with(aStay("soup", "simmer", "18:00").counter("19:00"));

    assertThat(concerns(plan)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"not tcs, false", "tcs, true"})
  void a_tag_says_what_must_be_kept_cold(String tag, boolean perishable) {
    Events supper = aSupperOf(aDish("nuts").tags(tag).step(aStep("toss").takes(10).in("bowl")))
        .rules("us-home");
    Plans plan = aPlanFor(supper)
        .with(aRun("nuts", "toss", "9:00", 10))
        .with(aStay("nuts", "toss", "9:10").counter("19:00"));

    assertThat(concerns(plan)).isEqualTo(perishable ? List.of(Rule.LEFT_OUT) : List.of());
  }

  /** Raw in one dish, cooked in another. */
  @Test
  void what_another_dish_brings_raw_is_cooked_through_here() {
    Events supper = aSupperOf(
        aDish("marinade").tags("raw poultry").step(aStep("mix").in("bowl")),
        aDish("pan").kind(Kind.LIQUID, Length.mm(20))
            .step(aStep("poach").takes(30).burner(BurnerSize.SMALL, 50).uses("marinade", "mix").in("pot")))
        .rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("marinade", "mix", "18:20", 10))
        .with(aRun("pan", "poach", "18:30", 30).burners("large"));

    assertThat(concerns(plan)).containsExactly(Rule.COOKED);
  }

  /** Out of the fridge for an hour before it is warmed, and so no longer cold. */
  @Test
  void what_was_cold_in_between_was_cooled_though_it_stood_out_before_it_was_warmed() {
    Events supper = aSupperOf(soup().step(aStep("warm").takes(15).burner(BurnerSize.SMALL, 40)))
        .rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", daysBefore(1, "12:00"), 30).burners("large"))
        .with(
            aStay("soup", "simmer", daysBefore(1, "12:30")).shelf("17:15", "fridge", "top").counter("18:45"))
        .with(aRun("soup", "warm", "18:45", 15).burners("large"));

    assertThat(concerns(plan)).contains(Rule.COOKED);
  }

  /** However hot its edge is: the middle does not get hotter by being taken out. */
  @Test
  void a_deep_dish_of_chicken_is_judged_by_its_middle() {
    Events supper = aSupperOf(aDish("casserole").tags("raw poultry")
        .kind(Kind.CASSEROLE, Length.mm(90))
        .step(aStep("bake").takes(40)
            .needs(
                new Need.Bake(List.of(aStage(180, null)), null, null, 1, 1, 0, Temperature.celsius(64), 20))
            .in("dish")))
        .rules("us-service");
    Plans plan = aPlanFor(supper).with(aRun("casserole", "bake", "18:20", 40).oven("oven", 180).racks(0));

    assertThat(concerns(plan)).contains(Rule.COOKED);
  }

  /** FSIS: 40 to 140 F. A cellar of 15 C keeps nothing cold. */
  @Test
  void a_cold_place_that_is_not_cold_enough_is_as_good_as_none() {
    Store cellar = new Store("cellar", Store.Kind.FRIDGE, Temperature.celsius(15), Air.STILL,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(aDish("tartare").tags("raw meat")
        .kind(Kind.CASSEROLE, Length.mm(30))
        .step(aStep("mince").takes(10).in("bowl"))).in(Kitchens.aHomeKitchen().with(cellar)).rules("us-home");
    Plans plan = aPlanFor(supper)
        .with(aRun("tartare", "mince", "10:00", 10))
        .with(aStay("tartare", "mince", "10:10").shelf("19:00", "cellar", "only"));

    assertThat(concerns(plan)).contains(Rule.LEFT_OUT);
  }

  @Test
  void a_pie_of_raw_chicken_is_no_bread() {
    Events supper = aSupperOf(aDish("pie").tags("raw poultry")
        .kind(Kind.BREAD, Length.mm(60))
        .step(aStep("bake").takes(40).bake(200).in("dish"))).rules("us-home");
    Plans plan = aPlanFor(supper)
        .with(aRun("pie", "bake", "9:00", 40).oven("oven", 200).racks(0))
        .with(aStay("pie", "bake", "9:40").counter("19:00"));

    assertThat(concerns(plan)).contains(Rule.LEFT_OUT);
  }

  @Test
  void bread_may_be_left_out() {
    Events supper = aSupperOf(aDish("bread").kind(Kind.BREAD, Length.mm(80))
        .step(aStep("bake").takes(40).bake(220).in("dish"))).in(Kitchens.aHomeKitchen());
    Plans plan = aPlanFor(supper)
        .with(aRun("bread", "bake", "9:00", 40).oven("oven", 220).racks(0))
        .with(aStay("bread", "bake", "9:40").counter("19:00"));

    assertThat(concerns(plan)).isEmpty();
  }

  private static Dishes stew() {
    return aDish("stew").kind(Kind.CASSEROLE, Length.mm(60))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"));
  }

  /** FSIS: 140 F. Four hours after the heat all of it together was below that for less than two, its edge for more. */
  @ParameterizedTest
  @CsvSource({"15:10, 15:40, false", "14:40, 15:10, true"})
  void food_is_left_out_from_when_its_edge_is_no_longer_hot(String from, String until, boolean tooLong) {
    Plans plan = aPlanFor(
        aSupperOf(stew())
            .rules("us-home"))
        .with(aRun("stew", "simmer", from, 30).burners("large"))
        .with(aStay("stew", "simmer", until).counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(tooLong);
  }

  /** FSIS: 140 F. All of it together is above that for 40 minutes longer than its edge is, which is at two hours and four minutes. */
  @ParameterizedTest
  @CsvSource({"12:45, false", "13:00, true"})
  void what_is_kept_hot_is_hot_at_its_edge_too_but_for_a_quarter_of_an_hour(String until, boolean tooCool) {
    Store cabinet = new Store("hot box", Store.Kind.HOT, Temperature.celsius(45), Air.MOVING,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(stew()).in(Kitchens.aHomeKitchen().with(cabinet)).rules("us-home");
    Plans plan = aPlanFor(supper)
        .with(aRun("stew", "simmer", "10:00", 30).burners("large"))
        .with(aStay("stew", "simmer", "10:30").shelf(until, "hot box", "only"));

    assertThat(concerns(plan).contains(Rule.KEPT_HOT)).isEqualTo(tooCool);
  }

  /** 140 F at home, 135 F in the trade, 63 C in the United Kingdom, read in this order. */
  @Test
  void of_several_limits_of_one_kind_the_one_that_is_missed_by_most_is_told() {
    Store cabinet = new Store("hot box", Store.Kind.HOT, Temperature.celsius(55), Air.STILL,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Events supper = aSupperOf(soup()).in(Kitchens.aHomeKitchen().with(cabinet));
    Plans plan = aPlanFor(supper)
        .with(aRun("soup", "simmer", "10:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "10:30").shelf("19:00", "hot box", "only"));

    assertThat(Watch.over(plan.plan(),
        Life.of(plan.plan(), new Cards(Work.of(plan.plan().event())), 1, Unsaid.LOOSE)))
        .filteredOn(each -> each.rule() == Rule.KEPT_HOT)
        .singleElement()
        .satisfies(each -> assertThat(each.what()).contains("at least 63 C"));
  }

  /** FDA Food Code 2017, 3-501.14(A). From an urn or a soup machine, say. */
  @Test
  void what_a_machine_made_hot_is_cooked_and_cools_as_fast_as_other_food() {
    Events supper = aSupperOf(aDish("broth")
        .kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("heat").takes(30).appliance("mixer").in("pot"))).rules("us-service");
    Plans plan = aPlanFor(supper)
        .with(aRun("broth", "heat", "9:00", 30))
        .with(aStay("broth", "heat", "9:30").counter("19:00"));

    assertThat(concerns(plan)).contains(Rule.COOLED);
  }

  /** FDA Food Code 2017, 3-501.14(A). Boiled in a kettle, served cold: only what the kitchen says of the kettle tells that it was hot. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void what_is_served_cold_cools_from_a_machine_that_heats_and_only_from_such_a_one(boolean heats) {
    Events supper = aSupperOf(aDish("lentils")
        .kind(Kind.LIQUID, Length.mm(20))
        .arrives(Arrives.COOL)
        .step(aStep("boil").takes(30).appliance("kettle").in("pot"))).rules("us-service")
        .in(aHomeKitchen().with(
            new Appliance("kettle", 1, 1, heats, new Power(0), null, Availability.ALWAYS)));
    Plans plan = aPlanFor(supper)
        .with(aRun("lentils", "boil", "9:00", 30))
        .with(aStay("lentils", "boil", "9:30").counter("19:00"));

    assertThat(concerns(plan).contains(Rule.COOLED)).isEqualTo(heats);
  }
}
