package ovenloom.model.menu;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;

class EventTest {

  @Test
  void without_waves_every_batch_is_due_at_the_table_time() {
    var pies = aDish("pies").batches(5).servedOver(20);

    assertThat(dues(pies, 5)).containsOnly(at("19:00"));
  }

  @Test
  void of_five_trays_in_waves_over_twelve_minutes_each_is_due_a_fifth_later_rounded_down() {
    var rolls = aDish("rolls").batches(5).servedOver(12).waves();

    assertThat(dues(rolls, 5)).containsExactly(
        at("19:00"), at("19:02"), at("19:04"), at("19:07"), at("19:09"));
  }

  @Test
  void a_dish_is_served_as_long_as_its_course_unless_it_says_otherwise() {
    var event = aSupperOf(aDish("soup").step(aStep("ladle")),
        aDish("roast").servedOver(25).step(aStep("carve"))).event();

    assertThat(event.endOfService(event.dish("soup"))).isEqualTo(at("19:10"));
    assertThat(event.endOfService(event.dish("roast"))).isEqualTo(at("19:25"));
  }

  @Test
  void the_calendar_ends_with_the_last_service_of_any_dish_or_course() {
    var supper = aSupperOf(aDish("roast").servedOver(25).step(aStep("carve")));

    assertThat(supper.event().to()).isEqualTo(at("19:25"));
    assertThat(supper.course("cheese", at("20:00"), 5).event().to()).isEqualTo(at("20:05"));
  }

  @Test
  void ten_guests_and_eight_portions_a_batch_make_two_batches_of_five() {
    var lasagne = dish(10, Fraction.ONE, 0, 8);

    assertThat(lasagne.batches()).isEqualTo(2);
    assertThat(lasagne.portionsInABatch()).isEqualTo(5);
  }

  @Test
  void spare_is_added_before_portions_are_rounded_up() {
    assertThat(dish(10, Fraction.ONE, 5, null).servings().portions()).as("10.5").isEqualTo(11);
    assertThat(dish(20, Fraction.ONE, 5, null).servings().portions()).isEqualTo(21);
    assertThat(dish(7, Fraction.of(1, 2), 0, null).servings().portions()).as("3.5").isEqualTo(4);
    assertThat(dish(3, Fraction.of(2, 3), 0, null).servings().portions()).isEqualTo(2);
  }

  @Test
  void the_very_portions_of_two_batches_make_no_third() {
    assertThat(dish(16, Fraction.ONE, 0, 8).batches()).isEqualTo(2);
    assertThat(dish(17, Fraction.ONE, 0, 8).batches()).isEqualTo(3);
    assertThat(dish(17, Fraction.ONE, 0, 8).portionsInABatch()).isEqualTo(6);
    assertThat(dish(17, Fraction.ONE, 0, null).batches()).isEqualTo(1);
  }

  @Test
  void a_hot_dish_is_best_for_a_quarter_of_an_hour_another_for_four_hours() {
    assertThat(aDish("stew").step(aStep("cook")).dish().isBestFor()).isEqualTo(15);
    assertThat(aDish("mousse").arrives(Arrives.COLD).step(aStep("whip")).dish().isBestFor()).isEqualTo(240);
    assertThat(aDish("braise").bestFor(60).step(aStep("cook")).dish().isBestFor()).isEqualTo(60);
  }

  @Test
  void no_batches_run_backwards() {
    assertThatThrownBy(() -> new Batches(2, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Batches(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThat(new Batches(2, 3).holds(Batches.only(3))).isTrue();
    assertThat(new Batches(2, 3).holds(new Batches(1, 2))).isFalse();
    assertThat(new Batches(2, 3).count()).isEqualTo(2);
  }

  private static IntStream dues(Dishes dish, int batches) {
    var event = aSupperOf(dish.step(aStep("bake"))).event();
    return IntStream.rangeClosed(1, batches).map(batch -> event.due(event.dishes().getFirst(), batch));
  }

  private static Dish dish(int guests, Fraction aGuest, int spare, @Nullable Integer aBatch) {
    var plain = aDish("pie").step(aStep("bake")).dish();
    return new Dish(plain.name(), plain.course(), true, new Dish.Servings(guests, aGuest, spare, aBatch),
        plain.arrives(), plain.tags(), false, null, null, Matter.UNSAID, plain.ingredients(), plain.steps());
  }
}
