package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.plan.Where;

/** Supper is at 19:00, and the gratin is out of the oven when its stay begins. */
class KeepingTest {

  private final KitchenRule rule = new Keeping();

  @Test
  void a_quarter_of_an_hour_on_the_counter_is_free() {
    assertThat(gratin(null, aStay("gratin", "bake", "18:45").counter("19:00"))).isEmpty();
  }

  @Test
  void a_minute_more_is_a_minute_too_many_where_nothing_keeps() {
    assertThat(gratin(null, aStay("gratin", "bake", "18:44").counter("19:00"))).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.who()).containsExactly("gratin/bake", "the table");
        });
  }

  @Test
  void an_hour_on_the_counter_is_an_hour_and_the_free_quarter() {
    assertThat(gratin(counter(60), aStay("gratin", "bake", "17:45").counter("19:00"))).isEmpty();
    assertThat(gratin(counter(60), aStay("gratin", "bake", "17:44").counter("19:00"))).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("the counter: 76 min of 75 (60, and 15 free)"));
  }

  @Test
  void a_place_that_is_not_named_allows_none() {
    assertThat(gratin(counter(60), aStay("gratin", "bake", "18:30").shelf("19:00", "fridge", "top")))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(30));
  }

  @Test
  void half_an_hour_on_the_counter_and_half_of_its_days_in_the_fridge_are_all_it_has() {
    var keeps = new Keeps(60, null, null, Map.of("fridge", 36 * 60));
    int out = daysBefore(1, "22:30");

    assertThat(gratin(keeps, aStay("gratin", "bake", out)
        .in(new Where.Counter(), out + 30)
        .shelf("17:00", "fridge", "top")
        .counter("17:15"), "17:15")).as("30 / 60 + 1080 / 2160").isEmpty();
  }

  @Test
  void the_shares_of_all_places_add_up() {
    var keeps = new Keeps(60, null, null, Map.of("fridge", 100));

    assertThat(gratin(keeps, aStay("gratin", "bake", "17:05").counter("17:40")
        .shelf("18:40", "fridge", "top")
        .counter("19:00"))).singleElement().satisfies(each -> {
          assertThat(each.what())
              .isEqualTo("the counter: 55 min of 75 (60, and 15 free), fridge: 60 min of 100");
          assertThat(each.off()).as("40/60 + 60/100 is 16/60 too much, of the counter's 60").isEqualTo(16);
        });
  }

  @Test
  void thirds_that_add_up_to_one_are_one() {
    var keeps = new Keeps(3, null, null, Map.of("fridge", 30));

    assertThat(
        gratin(keeps, aStay("gratin", "bake", "18:24").counter("18:40").shelf("19:00", "fridge", "top")))
        .as("1/3 + 20/30")
        .isEmpty();
    assertThat(
        gratin(keeps, aStay("gratin", "bake", "18:23").counter("18:39").shelf("19:00", "fridge", "top")))
        .as("1/3 + 21/30")
        .singleElement()
        .satisfies(each -> assertThat(each.off()).as("1/30 of 30").isEqualTo(1));
  }

  @Test
  void the_free_quarter_is_counted_once_over_both_times_on_the_counter() {
    var keeps = new Keeps(null, null, null, Map.of("fridge", 1000));

    assertThat(gratin(keeps, aStay("gratin", "bake", "18:00").counter("18:10")
        .shelf("18:50", "fridge", "top")
        .counter("19:00"))).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void hot_places_ovens_and_burners_have_their_own_limits() {
    var keeps = new Keeps(null, 60, 30, Map.of("cabinet", 90));

    assertThat(gratin(keeps, aStay("gratin", "bake", "17:30").shelf("19:00", "cabinet", "upper"))).isEmpty();
    assertThat(gratin(keeps, aStay("gratin", "bake", "17:29").shelf("19:00", "cabinet", "upper"))).hasSize(1);
    assertThat(gratin(keeps, aStay("gratin", "bake", "18:00").oven("19:00", "oven", 80))).isEmpty();
    assertThat(gratin(keeps, aStay("gratin", "bake", "17:59").oven("19:00", "oven", 80))).hasSize(1);
    assertThat(gratin(keeps, aStay("gratin", "bake", "18:30").burners("19:00", "small"))).isEmpty();
    assertThat(gratin(keeps, aStay("gratin", "bake", "18:29").burners("19:00", "small"))).hasSize(1);
  }

  @Test
  void a_dish_made_ahead_is_never_older_than_it_keeps() {
    var keeps = new Keeps(null, null, null, Map.of("fridge", 2 * 1440));

    assertThat(gratin(keeps, aStay("gratin", "bake", daysBefore(2, "19:00")).shelf("19:00", "fridge", "top")))
        .isEmpty();
    assertThat(gratin(keeps, aStay("gratin", "bake", daysBefore(2, "18:00")).shelf("19:00", "fridge", "top")))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(60));
  }

  @Test
  void a_link_of_its_own_says_how_long_on_the_counter() {
    assertThat(drippings(new Link(Link.Kind.FOOD, "bird", "roast", 0, 45), "18:45", counter(10))).isEmpty();
    assertThat(drippings(new Link(Link.Kind.FOOD, "bird", "roast", 0, 45), "19:00", counter(10)))
        .as("60 less the free 15 are the 45")
        .isEmpty();
    assertThat(drippings(new Link(Link.Kind.FOOD, "bird", "roast", 0, 45), "19:01", counter(100)))
        .singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("bird/roast", "gravy/make"));
  }

  @Test
  void without_one_the_earlier_step_says_it() {
    assertThat(drippings(new Link(Link.Kind.FOOD, "bird", "roast", 0, null), "18:45", counter(30))).isEmpty();
    assertThat(drippings(new Link(Link.Kind.FOOD, "bird", "roast", 0, null), "18:46", counter(30)))
        .hasSize(1);
  }

  @Test
  void what_only_comes_after_takes_no_food_that_could_go_off() {
    assertThat(drippings(new Link(Link.Kind.ORDER_ONLY, "bird", "roast", 0, null), "18:46", counter(10)))
        .isEmpty();
  }

  @Test
  void each_who_takes_of_it_is_judged_by_the_time_until_then() {
    var rolls = aSupperOf(aDish("rolls").batches(2)
        .step(aStep("mix").once().keepsOnTheCounter(30))
        .step(aStep("shape")));

    assertThat(aPlanFor(rolls)
        .with(aRun("rolls", "mix", "17:00", 10).batches(1, 2))
        .with(aRun("rolls", "shape", "17:50", 10).batch(1))
        .with(aRun("rolls", "shape", "18:50", 10).batch(2))
        .with(aStay("rolls", "mix", "17:10").batches(1, 2).counter("18:50"))
        .heldAgainst(rule)).singleElement().satisfies(each -> {
          assertThat(each.who()).containsExactly("rolls/mix", "rolls/shape (batch 2)");
          assertThat(each.off()).as("100 less 15 less 30").isEqualTo(55);
        });
  }

  @Test
  void where_nothing_is_known_of_the_wait_nothing_is_too_old() {
    var supper = aSupperOf(aDish("gratin").step(aStep("bake")));

    assertThat(aPlanFor(supper).with(aRun("gratin", "bake", "15:00", 10)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(aStay("gratin", "bake", "15:00").counter("19:00")).heldAgainst(rule))
        .isEmpty();
  }

  private List<Break> gratin(@Nullable Keeps keeps, Waits stay) {
    return gratin(keeps, stay, "19:00");
  }

  private List<Break> gratin(@Nullable Keeps keeps, Waits stay, String supper) {
    var bake = aStep("bake");
    if (keeps != null) {
      bake.keeps(keeps);
    }
    int out = stay.stay().parts().getFirst().when().from();
    return aPlanFor(aSupperOf(aDish("gratin").step(bake)).course("supper", at(supper), 0))
        .with(aRun("gratin", "bake", out - 10, 10))
        .with(stay)
        .heldAgainst(rule);
  }

  /** The bird is out at 18:00. */
  private List<Break> drippings(Link link, String taken, Keeps keeps) {
    var dinner = aSupperOf(
        aDish("bird").step(aStep("roast").keeps(keeps)), aDish("gravy").step(aStep("make").after(link)))
        .course("supper", at("18:00"), 90);
    return aPlanFor(dinner)
        .with(aRun("bird", "roast", "17:50", 10))
        .with(aRun("gravy", "make", taken, 10))
        .with(aStay("bird", "roast", "18:00").counter(taken))
        .heldAgainst(rule);
  }

  private static Keeps counter(int minutes) {
    return new Keeps(minutes, null, null, Map.of());
  }
}
