package ovenloom.model.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aBake;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Events;
import ovenloom.model.audit.Kitchens;
import ovenloom.model.audit.Ovens;
import ovenloom.model.audit.Steps;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;

/** What no plan can make safe is known from the menu; what one plan can is left to it. */
class BeforehandTest {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private static List<Unavoidable> foregone(Events supper) {
    return Beforehand.of(Work.of(supper.event()));
  }

  private static Store place(String name, Store.Kind kind, int holds) {
    return new Store(name, kind, Temperature.celsius(holds), Air.STILL, List.of(Kitchens.aShelf("only")),
        Availability.ALWAYS);
  }

  private static Link gap(String dish, String step, int least) {
    return new Link(Link.Kind.FOOD, dish, step, least, null);
  }

  private static Steps boil() {
    return aStep("boil").takes(30).burner(BurnerSize.SMALL).in("pot");
  }

  private static Dishes soup(int deep) {
    return aDish("soup").kind(Kind.LIQUID, Length.mm(deep));
  }

  /** FDA Food Code 2017, 3-401.11(A)(3): poultry to 165 F, which is 73.9 C. */
  @ParameterizedTest
  @CsvSource({"74, 0", "73, 1"})
  void a_pot_that_is_done_too_cool_for_chicken_is_never_safe(int core, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(aDish("thighs").tags("raw poultry")
        .kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("poach").takes(30).burner(BurnerSize.SMALL, core).in("pot"))).rules("us-service"));

    assertThat(found).hasSize(reasons).allSatisfy(each -> {
      assertThat(each.what()).isEqualTo(
          "Cooked to 73 C at most, at least 74 C or as long at less as the table says.");
      assertThat(each.source().section()).isEqualTo("3-401.11(A)(3)");
      assertThat(each.keys()).containsExactly("core");
    });
  }

  @ParameterizedTest
  @CsvSource({"90, 0", "60, 1"})
  void what_is_done_later_is_safe_then(int later, int reasons) {
    assertThat(foregone(aSupperOf(aDish("thighs").tags("raw poultry")
        .kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("poach").takes(30).burner(BurnerSize.SMALL, 60).in("pot"))
        .step(aStep("glaze").takes(30).burner(BurnerSize.SMALL, later))).rules("us-service")))
        .hasSize(reasons);
  }

  /** A place that is hotter than its card makes it warms it further. */
  @ParameterizedTest
  @CsvSource({"80, 0", "70, 1"})
  void what_may_wait_in_a_hotter_place_may_get_hot_enough_there(int holds, int reasons) {
    assertThat(foregone(aSupperOf(aDish("thighs").tags("raw poultry")
        .kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("poach").takes(30).burner(BurnerSize.SMALL, 65).in("pot").keepsIn("hot box", 3 * HOUR)))
        .in(Kitchens.aHomeKitchen().with(place("hot box", Store.Kind.HOT, holds)))
        .rules("us-service"))).hasSize(reasons);
  }

  private static Events roast(int core, int overcook, Steps rest) {
    Need.Bake bake = new Need.Bake(List.of(aStage(180, null)), null, null, 1, 1, 0,
        Temperature.celsius(core), overcook);
    return aSupperOf(aDish("pork").tags("raw meat", "whole roast")
        .kind(Kind.DENSE_ROAST, Length.mm(120))
        .step(aStep("roast").takes(90).needs(bake).in("dish"))
        .step(rest)
        .step(aStep("carve").takes(8))).rules("us-home");
  }

  private static Steps rest() {
    return aStep("rest").takes(10);
  }

  /** USDA-FSIS Safe Minimum Internal Temperature Chart, 2015: roasts to 145 F, which is 62.8 C, and three minutes of rest. */
  @ParameterizedTest
  @CsvSource({"63, 0, 0, 0", "55, 20, 0, 1", "55, 0, 1, 1", "45, 20, 1, 1"})
  void a_roast_that_rests_on_the_counter_gets_only_as_hot_as_its_outside_makes_it(int core, int overcook,
      int reasons, int unlessOverdone) {
    Work supper = Work.of(roast(core, overcook, rest()).event());

    assertThat(Beforehand.of(supper)).hasSize(reasons)
        .allSatisfy(each -> assertThat(each.keys()).containsExactly("core"));
    assertThat(Beforehand.unlessOverdone(supper)).hasSize(unlessOverdone)
        .allSatisfy(
            each -> assertThat(each.what()).contains(" at most if it bakes no longer than it needs, "));
  }

  @Test
  void a_roast_that_may_rest_in_a_hot_place_is_left_to_the_plan() {
    assertThat(foregone(roast(55, 0, rest().keepsIn("hot box", HOUR))
        .in(Kitchens.aHomeKitchen().with(place("hot box", Store.Kind.HOT, 60))))).isEmpty();
  }

  /** A fifth too long, a bake is hotter than its card has it; a card of 45 C is still no chicken. */
  @ParameterizedTest
  @CsvSource({"70, 0", "45, 1"})
  void a_bake_is_judged_by_the_most_that_it_can_be_overdone(int core, int reasons) {
    Need.Bake bake = new Need.Bake(List.of(aStage(180, null)), null, null, 1, 1, 0,
        Temperature.celsius(core), 20);

    assertThat(foregone(aSupperOf(aDish("roast").tags("raw poultry")
        .kind(Kind.CASSEROLE, Length.mm(60))
        .step(aStep("bake").takes(60).needs(bake).in("dish"))).rules("us-service"))).hasSize(reasons);
  }

  /** FDA Food Code 2017, 3-403.11(A): 165 F. */
  @ParameterizedTest
  @CsvSource({"74, 0", "70, 1"})
  void what_is_chilled_on_its_way_is_heated_as_hot_again(int core, int reasons) {
    assertThat(foregone(aSupperOf(soup(10).step(boil())
        .step(aStep("chill").takes(2 * HOUR).shelf("fridge"))
        .step(aStep("warm").takes(15).burner(BurnerSize.SMALL, core))).rules("us-service")))
        .hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).startsWith("Heated again to 70 C at most"));
  }

  /** FDA Food Code 2017, 3-501.16(A)(2): 41 F, which is 5 C; England, Wales and Northern Ireland: 8 C. */
  @ParameterizedTest
  @CsvSource({"us-service, 5, 0", "us-service, 6, 1", "us-home, 4, 0", "us-home, 8, 1", "uk, 8, 0",
      "uk, 9, 1"})
  void what_chills_in_one_place_only_needs_it_cold_enough(String rules, int holds, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(
        aDish("tartare").tags("raw meat")
            .arrives(Arrives.COLD)
            .step(aStep("chill").takes(10).shelf("larder").in("bowl")))
        .in(Kitchens.aHomeKitchen().with(place("larder", Store.Kind.FRIDGE, holds)))
        .rules(rules));

    assertThat(found).hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).startsWith("The larder holds " + holds + " C, at most"));
  }

  @ParameterizedTest
  @CsvSource({"larder, 1", "fridge, 0"})
  void one_place_of_several_that_is_cold_enough_will_do(String other, int reasons) {
    assertThat(foregone(aSupperOf(
        aDish("tartare").tags("raw meat").step(aStep("chill").takes(10).shelf("larder", other).in("bowl")))
        .in(Kitchens.aHomeKitchen().with(place("larder", Store.Kind.FRIDGE, 8)))
        .rules("us-service"))).hasSize(reasons);
  }

  /** An hour on the counter and a quarter more is the most that it keeps elsewhere. */
  @ParameterizedTest
  @CsvSource({"75, 0", "76, 1"})
  void what_must_wait_longer_than_it_keeps_elsewhere_waits_in_the_larder(int least, int reasons) {
    assertThat(foregone(aSupperOf(aDish("tartare").tags("raw meat")
        .step(aStep("mince").takes(10).in("bowl").keeps(new Keeps(HOUR, null, null, Map.of("larder", DAY))))
        .step(aStep("season").takes(5).after(gap("tartare", "mince", least))))
        .in(Kitchens.aHomeKitchen().with(place("larder", Store.Kind.FRIDGE, 8)))
        .rules("us-service")))
        .hasSize(reasons)
        .allSatisfy(each -> assertThat(each.keys()).containsExactly("after", "mince"));
  }

  @Test
  void what_needs_no_cold_is_not_asked_for_it() {
    assertThat(foregone(aSupperOf(
        aDish("wine").tags("not tcs").step(aStep("chill").takes(10).shelf("larder").in("bowl")),
        aDish("jelly").step(aStep("chill").takes(10).shelf("larder").in("bowl")))
        .in(Kitchens.aHomeKitchen().with(place("larder", Store.Kind.FRIDGE, 12))))).isEmpty();
  }

  /** FDA Food Code 2017, 3-501.14(A): to 41 F in six hours. A fridge of 41 F gets to that in no time at all. */
  @ParameterizedTest
  @CsvSource({"5, 720, 1", "5, 300, 0", "3, 720, 0"})
  void a_fridge_that_is_as_warm_as_it_must_get_never_passes_overnight(int holds, int minutes, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(soup(20).step(boil())
        .step(aStep("chill").takes(minutes).shelf("larder")))
        .in(Kitchens.aHomeKitchen().with(place("larder", Store.Kind.FRIDGE, holds)))
        .from(-2 * DAY)
        .rules("us-service"));

    assertThat(found).hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).isEqualTo("From 57 C to 5 C: never there, at most 6 h."));
  }

  /** FDA Food Code 2017, 3-501.14(A): to 70 F in two hours. The depths are far from the edge: it depends on how hot it comes in. */
  @ParameterizedTest
  @CsvSource({"25, 0", "120, 1"})
  void a_deep_pot_that_chills_for_hours_cools_too_slowly_however_it_is_planned(int deep, int reasons) {
    assertThat(foregone(aSupperOf(soup(deep).step(boil())
        .step(aStep("chill").takes(20 * HOUR).shelf("fridge"))).from(-2 * DAY).rules("us-service")))
        .hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).contains("at least").endsWith("at most 6 h."));
  }

  /** FDA: 135 F, which is 57 C. */
  @ParameterizedTest
  @CsvSource({"60, 0", "50, 1"})
  void what_keeps_for_hours_only_in_a_hot_box_needs_it_hot_enough(int holds, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(
        soup(20).step(boil().keepsIn("hot box", 8 * HOUR)),
        aDish("stew").step(
            aStep("pour").takes(5).in("bowl").uses("soup", "boil").after(gap("soup", "boil", 6 * HOUR))))
        .in(Kitchens.aHomeKitchen().with(place("hot box", Store.Kind.HOT, holds)))
        .rules("us-service"));

    assertThat(found).hasSize(reasons).allSatisfy(each -> {
      assertThat(each.what()).startsWith("Predicted 51 C in its coldest part in the hot box, at least 57 C");
      assertThat(each.keys()).containsExactly("uses", "boil");
    });
  }

  /** FSIS: two hours between 40 and 140 F; a minute or so of them it may still be as cold as it came. */
  @ParameterizedTest
  @CsvSource({"120, 0", "240, 1"})
  void raw_meat_that_is_worked_on_for_hours_is_left_out(int minutes, int reasons) {
    assertThat(foregone(aSupperOf(aDish("sausages").tags("raw ground meat")
        .kind(Kind.TRAY_OF_PIECES, Length.mm(20))
        .step(aStep("fill").takes(minutes).starts(StartState.CHILLED).in("bowl"))
        .step(aStep("fry").takes(20).burner(BurnerSize.SMALL).in("pot"))).rules("us-home")))
        .hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).startsWith(
            "Neither kept cold nor hot, between 4 C and 60 C for at least"));
  }

  @ParameterizedTest
  @CsvSource({"120, 0", "240, 1"})
  void a_wait_on_the_counter_that_its_card_asks_for_is_no_longer_than_it_may_be_out(int least, int reasons) {
    assertThat(foregone(aSupperOf(aDish("sausages").tags("raw ground meat")
        .kind(Kind.TRAY_OF_PIECES, Length.mm(20))
        .step(aStep("fill").takes(10).in("bowl").keepsOnTheCounter(5 * HOUR))
        .step(
            aStep("fry").takes(20).burner(BurnerSize.SMALL).in("pot").after(gap("sausages", "fill", least))))
        .rules("us-home"))).hasSize(reasons);
  }

  /** FDA Food Code 2017, 3-501.19: four hours, or six of what was cold. */
  @ParameterizedTest
  @CsvSource({"360, 0", "420, 1"})
  void a_buffet_of_seven_hours_is_too_long_by_any_clock(int served, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(
        aDish("tartare").tags("raw meat").servedOver(served).step(aStep("mince").takes(10).in("bowl")))
        .rules("us-service"));

    assertThat(found).hasSize(reasons).allSatisfy(each -> {
      assertThat(each.what()).startsWith("Stands out for at least").endsWith("at most 6 h.");
      assertThat(each.keys()).containsExactly("dish", "served over");
    });
  }

  /** Cold Food Storage Chart: four days; FDA Food Code 2017, 3-501.17: seven. Supper is at 19:00. */
  @ParameterizedTest
  @CsvSource({"us-home, 91, 0", "us-home, 92, 1", "us-service, 92, 0", "us-service, 163, 0",
      "us-service, 164, 1"})
  void what_chills_for_days_is_eaten_on_the_last_one_that_it_keeps(String rules, int hours, int reasons) {
    List<Unavoidable> found = foregone(aSupperOf(aDish("ham").tags("raw meat")
        .step(aStep("salt").takes(10).in("bowl"))
        .step(aStep("cure").takes(hours * HOUR - 10).shelf("fridge"))).from(-8 * DAY).rules(rules));

    assertThat(found).hasSize(reasons)
        .allSatisfy(each -> assertThat(each.what()).startsWith("Eaten later than on day"));
  }

  /** FDA Food Code 2017, 3-401.11(B)(1): 350 F under 10 lb, with the fan 325 F; by 5 C, 180 C and 165 C. */
  @ParameterizedTest
  @CsvSource({"8 lb, still, 175, 1", "8 lb, still, 180, 0", "8 lb, fan, 160, 1", "8 lb, fan, 165, 0",
      "10 lb, still, 120, 1", "10 lb, still, 125, 0"})
  void a_roast_whose_card_allows_no_mark_that_is_hot_enough_is_never_safe(String weight, String mode,
      int hottest, int reasons) {
    Need.Stage stage = new Need.Stage(Setting.celsius(hottest), Setting.celsius(100),
        Setting.celsius(hottest), mode, null);
    List<Unavoidable> found = foregone(aSupperOf(aDish("lamb").tags("whole roast")
        .kind(Kind.DENSE_ROAST, Length.mm(120))
        .ingredient("leg", weight)
        .step(aStep("roast").takes(3 * HOUR).needs(aBake(stage)).in("dish")))
        .in(Kitchens.aHomeKitchen().ovens(Ovens.anOven("oven").modes(mode)))
        .rules("us-service"));

    assertThat(found).hasSize(reasons).allSatisfy(each -> {
      assertThat(each.what()).startsWith("Roasted at " + hottest + " C at most (" + mode + "), at least ");
      assertThat(each.source().section()).isEqualTo("3-401.11(B)(1)");
      assertThat(each.keys()).containsExactly("bake");
    });
  }

  /** Of 155 C with the fan are 175 C without, and none of them is enough; 160 C are 180 C. */
  @ParameterizedTest
  @CsvSource({"155, 1", "160, 0"})
  void one_way_to_bake_it_is_enough(int fan, int reasons) {
    Need.Stage stage = new Need.Stage(Setting.celsius(fan), Setting.celsius(fan), Setting.celsius(fan),
        Oven.FAN, null);

    assertThat(foregone(aSupperOf(aDish("lamb").tags("whole roast")
        .kind(Kind.DENSE_ROAST, Length.mm(120))
        .step(aStep("roast").takes(3 * HOUR).needs(aBake(stage)).in("dish"))).rules("us-service")))
        .hasSize(reasons);
  }

  @Test
  void what_goes_through_the_freezer_is_left_to_the_plan() {
    assertThat(foregone(aSupperOf(soup(120).step(boil().keepsIn("freezer", 60 * DAY))
        .step(aStep("chill").takes(20 * HOUR).shelf("fridge")))
        .in(Kitchens.aHomeKitchen().freezer("freezer", Kitchens.aShelf("only")))
        .from(-20 * DAY))).isEmpty();
  }

  @Test
  void a_roast_in_two_stages_that_is_done_is_no_matter() {
    assertThat(foregone(aSupperOf(aDish("roast").tags("raw meat")
        .kind(Kind.DENSE_ROAST, Length.mm(80))
        .step(aStep("bake").takes(80).needs(aBake(aStage(220, 20), aStage(160, null))).in("dish")))
        .rules("us-home"))).isEmpty();
  }
}
