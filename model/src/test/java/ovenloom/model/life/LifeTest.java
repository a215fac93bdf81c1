package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Kitchens;
import ovenloom.model.audit.Plans;
import ovenloom.model.heat.Ice;
import ovenloom.model.heat.Kind;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;

class LifeTest {

  private static final Kitchens KITCHEN = Kitchens.aHomeKitchen();

  private static final Keeps KEEPS_AN_HOUR = new Keeps(60, null, null, Map.of());

  private static Dishes lasagna() {
    return aDish("lasagna").kind(Kind.CASSEROLE, Length.mm(55));
  }

  private static List<Leg> legs(Life life, Dish dish) {
    return life.work()
        .steps()
        .stream()
        .filter(step -> step.dish().name().equals(dish.name()))
        .flatMap(step -> life.of(step).stream())
        .toList();
  }

  private static Leg last(Plans plan, String dish) {
    Life life = Life.of(plan.plan(), 1);
    return legs(life, plan.plan().event().dish(dish)).getLast();
  }

  @Test
  void a_bake_by_its_card_ends_as_the_card_says() {
    Event supper = aSupperOf(lasagna().step(aStep("bake").takes(60).bake(180).in("dish"))).in(KITCHEN)
        .event();
    Plans plan = aPlanFor(supper).with(aRun("lasagna", "bake", "18:00", 60).oven("oven", 180).racks(0));

    assertThat(last(plan, "lasagna").at(at("19:00")).middle())
        .isCloseTo(Kind.CASSEROLE.done().inCelsius(), within(0.5));
  }

  /** Mississippi Recipes for Success, MRS 154: chilled and covered, 350 F for 75 to 90 min to 165 F asks for 12 to 20 W/(m2 K). */
  @ParameterizedTest
  @CsvSource({"50, 75", "57, 90"})
  void the_card_of_a_chilled_lasagna_asks_for_an_oven_such_as_there_are(int deep, int minutes) {
    Event supper = aSupperOf(aDish("lasagna").kind(Kind.CASSEROLE, Length.mm(deep))
        .step(aStep("bake").takes(minutes).bake(177).starts(StartState.CHILLED).in("dish")))
        .in(KITCHEN)
        .event();
    Work work = Work.of(supper);

    BatchStep bake = work.steps().getFirst();
    assertThat(new Cards(work).fit(bake, Objects.requireNonNull(bake.step().bake())).coefficient())
        .isBetween(12.0, 20.0);
  }

  /** The press for households: a dish that was made ahead and chilled takes 10 to 20 min longer than from room temperature. */
  @Test
  void what_comes_from_the_fridge_takes_ten_to_twenty_minutes_longer() {
    Event supper = aSupperOf(lasagna()
        .step(aStep("build").in("dish").keeps(new Keeps(120, null, null, Map.of("fridge", 2880))))
        .step(aStep("bake").takes(70).upTo(90).bake(180))).in(KITCHEN).event();

    assertThat(chilled(supper, 70)).isLessThan(Kind.CASSEROLE.done().inCelsius() - 3);
    assertThat(chilled(supper, 80)).isLessThan(Kind.CASSEROLE.done().inCelsius());
    assertThat(chilled(supper, 90)).isGreaterThan(Kind.CASSEROLE.done().inCelsius());
  }

  private static double chilled(Event supper, int minutes) {
    int from = at("19:00") - minutes;
    Plans plan = aPlanFor(supper)
        .with(aRun("lasagna", "build", "9:00", 10))
        .with(aStay("lasagna", "build", "9:10").shelf(
            minutes == 70 ? "17:50" : minutes == 80 ? "17:40" : "17:30",
            "fridge", "top"))
        .with(aRun("lasagna", "bake", from, minutes).oven("oven", 180).racks(0));
    return last(plan, "lasagna").at(at("19:00")).middle();
  }

  @Test
  void what_was_on_a_burner_cools_towards_the_room_and_never_below() {
    Event supper = aSupperOf(aDish("soup").step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot")))
        .in(KITCHEN)
        .event();
    Leg wait = legs(Life.of(aPlanFor(supper)
        .with(aRun("soup", "simmer", "9:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "9:30").counter("19:00"))
        .plan(), 1), supper.dish("soup"))
        .get(1);

    assertThat(wait.at(at("9:30")).mean()).isCloseTo(Cards.SIMMERING, within(0.1));
    double before = Cards.SIMMERING;
    for (int minute = at("9:31"); minute < at("19:00"); minute++) {
      double now = wait.at(minute).mean();
      assertThat(now).isLessThanOrEqualTo(before + 1e-9).isGreaterThan(20);
      before = now;
    }
    assertThat(before).isLessThan(50);
  }

  /** A minute of a low burner takes no more from a pot than the room would: less than a kelvin of one that is 10 cm deep. */
  @Test
  void a_burner_turned_low_lets_hot_food_come_down_slowly_to_what_it_keeps_and_as_warm_all_through() {
    Event supper = aSupperOf(aDish("soup").kind(Kind.LIQUID, Length.mm(100))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))).in(KITCHEN).event();
    Leg low = legs(Life.of(aPlanFor(supper)
        .with(aRun("soup", "simmer", "16:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "16:30").burners("19:00", "large"))
        .plan(), 1), supper.dish("soup")).get(1);

    for (int minute = at("16:31"); minute <= at("18:59"); minute++) {
      double now = low.at(minute).mean();
      assertThat(now).isBetween(Places.TURNED_LOW, low.at(minute - 1).mean())
          .isGreaterThan(low.at(minute - 1).mean() - 1);
      assertThat(low.at(minute).surface()).isCloseTo(now, within(1e-9));
    }
    assertThat(low.at(at("16:40")).mean()).isGreaterThan(85);
    assertThat(low.at(at("18:59")).mean()).isCloseTo(Places.TURNED_LOW, within(1e-9));
  }

  /** An oven at 150 C takes no heat from what comes to it at 95 C. */
  @Test
  void a_stew_that_comes_hot_from_its_burner_does_not_cool_in_the_oven() {
    Event supper = aSupperOf(aDish("stew").kind(Kind.CASSEROLE, Length.mm(60))
        .step(aStep("brown").takes(30).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("braise").takes(150).bake(150))).in(KITCHEN).event();
    Leg braise = legs(Life.of(aPlanFor(supper)
        .with(aRun("stew", "brown", "16:00", 30).burners("large"))
        .with(aRun("stew", "braise", "16:30", 150).oven("oven", 150).racks(0))
        .plan(), 1), supper.dish("stew")).get(1);

    assertThat(braise.food()).hasSize(151)
        .allSatisfy(food -> assertThat(food.middle()).isCloseTo(Cards.SIMMERING, within(1e-6)));
  }

  /** Water boils at 100 C. The card's potatoes are cold, those of the plan come straight from the pot. */
  @Test
  void potatoes_get_no_hotter_than_boiling_inside_however_long_they_roast_and_their_crust_does() {
    Event supper = aSupperOf(aDish("potatoes").kind(Kind.TRAY_OF_PIECES, Length.mm(25))
        .step(aStep("parboil").takes(20).burner(BurnerSize.SMALL).in("pot").keeps(KEEPS_AN_HOUR))
        .step(aStep("roast").takes(45).upTo(90).bake(200, 210, 220).in("dish"))).in(KITCHEN).event();
    Leg roast = legs(Life.of(aPlanFor(supper)
        .with(aRun("potatoes", "parboil", "17:10", 20).burners("large"))
        .with(aRun("potatoes", "roast", "17:30", 90).oven("oven", 220).racks(0))
        .plan(), 1), supper.dish("potatoes")).get(1);

    assertThat(roast.food()).allSatisfy(food -> assertThat(food.middle()).isLessThanOrEqualTo(100));
    assertThat(roast.food().getLast().middle()).isCloseTo(100, within(1e-6));
    assertThat(roast.food().getLast().surface()).isGreaterThan(101);
  }

  /** Roberts and others, Food Protection Trends 33(1), 2013: of pans of chili, two inches in a walk-in freezer cools in time. */
  @ParameterizedTest
  @CsvSource({"51, -18, MOVING, true", "76, -18, MOVING, false", "51, 3, STILL, false",
      "76, 3, STILL, false"})
  void a_pan_cools_in_time_where_it_is_shallow_and_very_cold(int deep, int holds, Air air, boolean inTime) {
    Store cold = new Store("cold", Store.Kind.FRIDGE, Temperature.celsius(holds), air,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    Event supper = aSupperOf(aDish("chili").kind(Kind.LIQUID, Length.mm(deep))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("chill").takes(480).shelf("cold").in("dish"))).in(Kitchens.aHomeKitchen().with(cold))
        .event();
    List<Leg> all = legs(Life.of(aPlanFor(supper)
        .with(aRun("chili", "simmer", "9:00", 30).burners("large"))
        .with(aRun("chili", "chill", "9:30", 480).shelves("cold", "only"))
        .plan(), 1), supper.dish("chili"));

    Leg cooling = all.get(1);
    int hot = first(cooling, 57.2, at("9:30"));
    assertThat(first(cooling, 21.1, hot) - hot <= 120 && first(cooling, 5, hot) - hot <= 360)
        .isEqualTo(inTime);
  }

  /** A card whose time is too short for so thick a roast: it is baked as if it were thinner, and is as warm afterwards as it came out. */
  @Test
  void what_was_taken_to_be_thinner_in_the_oven_is_no_warmer_in_its_middle_when_it_is_out() {
    Event supper = aSupperOf(aDish("roast").kind(Kind.DENSE_ROAST, Length.mm(160))
        .step(aStep("roast").takes(100).bake(150))
        .step(aStep("rest").takes(20))).in(KITCHEN).event();
    Life life = Life.of(aPlanFor(supper)
        .with(aRun("roast", "roast", "17:00", 100).oven("oven", 150).racks(0))
        .with(aRun("roast", "rest", "18:40", 20))
        .plan(), 1);
    List<Leg> all = legs(life, supper.dish("roast"));

    assertThat(all.get(1).at(at("18:40")).middle()).isEqualTo(all.get(0).at(at("18:40")).middle());
    assertThat(all.get(1).at(at("18:45")).middle()).isLessThan(all.get(0).at(at("18:40")).middle() + 5);
  }

  private static int first(Leg leg, double celsius, int from) {
    int minute = from;
    while (minute < leg.when().to() && leg.warmest(minute) > celsius) {
      minute++;
    }
    return minute == leg.when().to() ? Integer.MAX_VALUE / 2 : minute;
  }

  @Test
  void what_is_mixed_is_as_warm_as_its_parts_on_average() {
    Event supper = aSupperOf(aDish("salad")
        .step(aStep("boil").takes(30).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("cut").first().in("bowl"))
        .step(aStep("mix").after("boil").after("cut").in("dish"))).in(KITCHEN).event();
    Life life = Life.of(aPlanFor(supper)
        .with(aRun("salad", "boil", "18:00", 30).burners("large"))
        .with(aRun("salad", "cut", "18:20", 10))
        .with(aRun("salad", "mix", "18:30", 10))
        .plan(), 1);
    Leg mix = legs(life, supper.dish("salad"))
        .stream()
        .filter(leg -> leg.step().step().name().equals("mix") && !leg.waits())
        .findFirst()
        .orElseThrow();

    double room = supper.kitchen().room().inCelsius();
    assertThat(mix.at(at("18:30")).mean()).isCloseTo((Cards.SIMMERING + room) / 2, within(1.0));
  }

  @Test
  void what_joins_alongside_at_the_very_minute_is_followed() {
    Event supper = aSupperOf(aDish("pasta")
        .step(aStep("boil").takes(20).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("sauce").takes(20)
            .burner(BurnerSize.SMALL)
            .in("pot")
            .after(new Link(Link.Kind.ALONGSIDE, "pasta", "boil", 0, null))))
        .in(KITCHEN)
        .event();
    Life life = Life.of(aPlanFor(supper)
        .with(aRun("pasta", "boil", "18:40", 20).burners("large"))
        .with(aRun("pasta", "sauce", "18:40", 20).burners("medium"))
        .plan(), 1);

    assertThat(life.tracks()).singleElement()
        .satisfies(track -> assertThat(track.last().step().name()).isEqualTo("sauce"));
  }

  /** Of eight batches that join and part again and again there are 8 x 8 x 8 ways. */
  @Test
  void of_many_ways_a_few_are_followed_and_the_oldest_is_among_them() {
    Dishes stock = aDish("stock").batches(10);
    List<String> steps = List.of("a", "b", "c", "d", "e", "f");
    for (String step : steps) {
      stock.step(steps.indexOf(step) % 2 == 0 ? aStep(step).in("bowl") : aStep(step).once().in("pot"));
    }
    Event supper = aSupperOf(stock).in(KITCHEN).event();
    Plans plan = aPlanFor(supper);
    for (String step : steps) {
      int from = at("10:00") + 60 * steps.indexOf(step);
      for (int batch = 1; batch <= 10; batch++) {
        plan = steps.indexOf(step) % 2 == 0 ? plan.with(aRun("stock", step, from + batch, 10).batch(batch))
            : plan;
      }
      plan = steps.indexOf(step) % 2 == 1 ? plan.with(aRun("stock", step, from + 30, 10).batches(1, 10))
          : plan;
    }

    List<Track> tracks = Life.of(plan.plan(), 1).tracks();

    assertThat(tracks).hasSizeBetween(1, 24);
    assertThat(tracks).anyMatch(track -> track.from() == at("10:01"));
  }

  /** A card that no oven keeps to: near boiling for eight hours, and done hotter than its oven is. */
  @Test
  void where_a_card_cannot_come_true_it_is_believed() {
    Event supper = aSupperOf(lasagna().step(aStep("bake").takes(480).bake(70).in("dish"))).in(KITCHEN)
        .event();
    Plans plan = aPlanFor(supper).with(aRun("lasagna", "bake", "11:00", 480).oven("oven", 70).racks(0));

    assertThat(last(plan, "lasagna").at(at("19:00")).middle())
        .isCloseTo(Kind.CASSEROLE.done().inCelsius(), within(0.5));
  }

  @Test
  void a_frozen_leg_is_still_frozen_inside_after_a_day_in_the_fridge_and_not_after_three() {
    assertThat(thawed(24 * 60).isFrozen()).isTrue();
    assertThat(thawed(24 * 60).middle()).isCloseTo(Ice.MELTS, within(0.1));
    assertThat(thawed(3 * 24 * 60).isFrozen()).isFalse();
  }

  private static TemperatureProfile thawed(int minutes) {
    Event supper = aSupperOf(aDish("leg").kind(Kind.DENSE_ROAST, Length.mm(120))
        .step(aStep("thaw").takes(minutes).starts(StartState.FROZEN).shelf("fridge").in("dish")))
        .in(KITCHEN)
        .event();
    Life life = Life.of(
        aPlanFor(supper).with(aRun("leg", "thaw", at("19:00") - minutes, minutes).shelves("fridge", "top"))
            .plan(),
        1);
    return legs(life, supper.dish("leg")).getFirst().food().getLast();
  }

  @Test
  void what_is_put_in_the_freezer_freezes_and_goes_on_from_there() {
    Event supper = aSupperOf(aDish("leg").kind(Kind.DENSE_ROAST, Length.mm(40))
        .step(aStep("trim").takes(10).in("dish").keepsIn("freezer", 9_999)))
        .in(Kitchens.aHomeKitchen().freezer("freezer", Kitchens.aShelf("top")))
        .event();
    Plans plan = aPlanFor(supper).with(aRun("leg", "trim", "8:00", 10))
        .with(aStay("leg", "trim", "8:10").shelf("18:00", "freezer", "top").counter("19:00"));

    Life life = Life.of(plan.plan(), 1);

    Track track = Objects.requireNonNull(life.of(supper.dish("leg"), 1));
    assertThat(track.food(at("18:00")).middle()).isLessThan(-10);
    assertThat(track.food(at("19:00")).isFrozen()).isTrue();
    assertThat(track.warmest(at("19:00"), at("19:00"))[0]).isGreaterThan(Ice.MELTS);
  }
}
