package ovenloom.model.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Kitchens;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Waits;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Life;
import ovenloom.model.life.Unsaid;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Work;
import ovenloom.model.watch.Concern.Rule;

/** Food that stands out by the clock, and food that is heated again by it. Supper ends at 19:10. */
class TimeOnlyTest {

  private static List<Rule> concerns(Plans plan) {
    return Watch
        .over(plan.plan(), Life.of(plan.plan(), new Cards(Work.of(plan.plan().event())), 1, Unsaid.LOOSE))
        .stream()
        .map(Concern::rule)
        .toList();
  }

  private static Kitchens kitchen(double room) {
    Store cold = new Store("cold", Store.Kind.FRIDGE, Temperature.celsius(3), Air.BLAST,
        List.of(Kitchens.aShelf("only")), Availability.ALWAYS);
    return Kitchens.aHomeKitchen().room(room).with(cold);
  }

  private static Dishes tartare() {
    return aDish("tartare").tags("raw meat")
        .kind(Kind.CASSEROLE, Length.mm(10))
        .step(aStep("mince").takes(10).in("bowl"));
  }

  private static Plans outOfTheCold(String rules, double room, Waits stay) {
    return aPlanFor(aSupperOf(tartare()).in(kitchen(room)).rules(rules))
        .with(aRun("tartare", "mince", daysBefore(1, "12:00"), 10))
        .with(stay);
  }

  private static Waits minced() {
    return aStay("tartare", "mince", daysBefore(1, "12:10"));
  }

  /** FDA Food Code 2017, 3-501.19(B) and (C): four hours, or six where it never gets warmer than 70 F, which is 21.1 C. */
  @ParameterizedTest
  @CsvSource({"25, 15:15, false", "25, 15:05, true", "20, 13:15, false", "20, 13:05, true"})
  void cold_food_stands_out_for_four_hours_or_for_six_in_a_cool_room(double room, String out,
      boolean tooLong) {
    Plans plan = outOfTheCold("us-service", room, minced().shelf(out, "cold", "only").counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(tooLong);
  }

  /** FSA Guidance on Temperature Control, 2007, paragraphs 42-49: one period of up to four hours. */
  @ParameterizedTest
  @CsvSource({"15:15, false", "14:50, true"})
  void in_the_uk_cold_food_stands_out_for_four_hours_be_the_room_ever_so_cool(String out, boolean tooLong) {
    Plans plan = outOfTheCold("uk", 20, minced().shelf(out, "cold", "only").counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(tooLong);
  }

  /** One period: an hour and another hour are two, but a moment's work is none. */
  @ParameterizedTest
  @CsvSource({"uk, 11:00, true", "uk, 10:10, false", "us-service, 11:00, false"})
  void in_the_uk_it_stands_out_only_once(String rules, String back, boolean again) {
    Plans plan = outOfTheCold(rules, 20,
        minced().shelf("10:00", "cold", "only")
            .counter(back)
            .shelf("18:00", "cold", "only")
            .counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(again);
  }

  /** FSA, paragraphs 57-59: two hours below 63 C. FDA: four below 135 F. A thin stew is below both in half an hour. */
  @ParameterizedTest
  @CsvSource({"uk, 17:00, false", "uk, 16:00, true", "us-service, 16:00, false", "us-service, 14:00, true"})
  void hot_food_stands_out_for_two_hours_in_the_uk_and_for_four_in_the_trade(
      String rules, String cooked, boolean tooLong) {
    Plans plan = aPlanFor(aSupperOf(aDish("stew").kind(Kind.CASSEROLE, Length.mm(20))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))).rules(rules))
        .with(aRun("stew", "simmer", "13:00", 30).burners("large"))
        .with(aStay("stew", "simmer", "13:30").burners(cooked, "large").counter("19:00"));

    assertThat(concerns(plan).contains(Rule.LEFT_OUT)).isEqualTo(tooLong);
  }

  /** What is on its way into the fridge is for the rule on cooling. */
  @Test
  void what_was_hot_and_goes_into_the_cold_is_cooling() {
    Plans plan = aPlanFor(aSupperOf(aDish("stew").kind(Kind.CASSEROLE, Length.mm(20))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))).in(kitchen(20))
        .rules("us-service"))
        .with(aRun("stew", "simmer", "8:00", 30).burners("large"))
        .with(aStay("stew", "simmer", "8:30").counter("14:00").shelf("19:00", "cold", "only"));

    assertThat(concerns(plan)).containsOnly(Rule.COOLED);
  }

  /** FDA Food Code 2017, 3-403.11(D): two hours from 41 F, which food at 4 C is past after two minutes, to 165 F. */
  @ParameterizedTest
  @CsvSource({"us-service, 121, false", "us-service, 124, true", "us-home, 124, false"})
  void what_was_cooled_is_hot_again_within_two_hours(String rules, int minutes, boolean tooSlow) {
    Dishes soup = aDish("soup").kind(Kind.LIQUID, Length.mm(20))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("warm").takes(minutes).burner(BurnerSize.SMALL, 74));
    int from = 19 * 60 - minutes;
    String clock = from / 60 + ":" + from % 60;
    Plans plan = aPlanFor(aSupperOf(soup).in(kitchen(20)).rules(rules))
        .with(aRun("soup", "simmer", daysBefore(1, "12:00"), 30).burners("large"))
        .with(aStay("soup", "simmer", daysBefore(1, "12:30")).shelf(clock, "cold", "only"))
        .with(aRun("soup", "warm", clock, minutes).burners("large"));

    assertThat(concerns(plan).contains(Rule.REHEATED)).isEqualTo(tooSlow);
  }
}
