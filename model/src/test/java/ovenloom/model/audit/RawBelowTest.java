package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Kitchens.aShelf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;

/** A fridge with a top, a middle and a bottom shelf. */
class RawBelowTest {

  private final KitchenRule rule = new RawBelow();

  /** Chilled as it is, then roasted, then chilled again. */
  private static Dishes meat(String name, String... tags) {
    return aDish(name).tags(tags)
        .step(aStep("chill").takes(60).shelf("fridge"))
        .step(aStep("roast").takes(30).bake(180))
        .step(aStep("cool").takes(60).shelf("fridge"));
  }

  private final Events supper = aSupperOf(meat("chicken", "raw poultry"), meat("mince", "raw ground meat"),
      meat("beef", "raw meat"), meat("trout", "raw fish"), meat("eggs", "raw egg"),
      meat("snails", "raw snails"),
      meat("salad", "ready to eat"));

  private static Runs chill(String dish, String shelf) {
    return aRun(dish, "chill", "15:00", 60).shelves("fridge", shelf);
  }

  private List<Break> stacked(String above, String below) {
    return aPlanFor(supper).with(chill(above, "top")).with(chill(below, "middle")).heldAgainst(rule);
  }

  private List<Break> sideBySide(String one, String other) {
    return aPlanFor(supper).with(chill(one, "middle")).with(chill(other, "middle")).heldAgainst(rule);
  }

  /** Sioux Falls Health, item 08: raw chicken is never stored above raw ground beef. */
  @Test
  void raw_chicken_never_stands_above_raw_mince() {
    assertThat(stacked("chicken", "mince")).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(60);
      assertThat(each.when()).isEqualTo(between("15:00", "16:00"));
      assertThat(each.who()).containsExactly("fridge", "chicken/chill", "mince/chill");
    });
    assertThat(stacked("mince", "chicken")).isEmpty();
  }

  /** FDA Food Code 3-401.11 and the order health services make of it, from the top down. */
  @Test
  void from_the_top_down_salad_then_fish_and_cuts_then_mince_and_eggs_then_poultry() {
    assertThat(stacked("salad", "trout")).isEmpty();
    assertThat(stacked("trout", "salad")).hasSize(1);
    assertThat(stacked("beef", "mince")).isEmpty();
    assertThat(stacked("mince", "beef")).hasSize(1);
    assertThat(stacked("eggs", "chicken")).isEmpty();
    assertThat(stacked("chicken", "eggs")).hasSize(1);
    assertThat(stacked("eggs", "trout")).hasSize(1);
  }

  @Test
  void what_must_be_cooked_as_hot_may_stand_on_one_shelf_or_either_way_up() {
    assertThat(sideBySide("trout", "beef")).isEmpty();
    assertThat(sideBySide("mince", "eggs")).isEmpty();
    assertThat(stacked("trout", "beef")).isEmpty();
    assertThat(stacked("beef", "trout")).isEmpty();
  }

  @Test
  void raw_and_ready_to_eat_never_share_a_shelf_whichever_was_there_first() {
    assertThat(sideBySide("chicken", "salad")).singleElement()
        .satisfies(each -> assertThat(each.what())
            .isEqualTo(
                "chicken/chill must be cooked to 73.889 C and stands beside salad/chill, which is ready to eat"));
    assertThat(sideBySide("salad", "chicken")).hasSize(1);
    assertThat(sideBySide("beef", "mince")).hasSize(1);
  }

  @Test
  void raw_food_nobody_has_a_figure_for_counts_as_poultry() {
    assertThat(sideBySide("snails", "chicken")).isEmpty();
    assertThat(stacked("snails", "mince")).hasSize(1);
  }

  @Test
  void what_has_been_roasted_is_ready_to_eat() {
    var roasted = aRun("chicken", "cool", "15:00", 60).shelves("fridge", "top");

    assertThat(aPlanFor(supper).with(roasted).with(chill("salad", "middle")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(roasted).with(chill("beef", "top")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("fridge", "beef/chill", "chicken/cool"));
  }

  @Test
  void one_may_come_as_the_other_goes() {
    var later = aRun("salad", "chill", "16:00", 60).shelves("fridge", "middle");
    var sooner = aRun("salad", "chill", "15:59", 60).shelves("fridge", "middle");

    assertThat(aPlanFor(supper).with(chill("chicken", "top")).with(later).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(chill("chicken", "top")).with(sooner).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void what_waits_in_the_fridge_counts_like_what_chills_there() {
    var raw = aStay("chicken", "chill", "16:00").shelf("18:00", "fridge", "top");
    var roasted = aStay("chicken", "roast", "16:30").shelf("18:00", "fridge", "top");
    var salad = aRun("salad", "chill", "16:30", 60).shelves("fridge", "bottom");

    assertThat(aPlanFor(supper).with(raw).with(salad).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(supper).with(roasted).with(salad).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_second_fridge_is_another_fridge_and_a_warm_cabinet_is_none() {
    var kitchen = aHomeKitchen().fridge("cellar", aShelf("top"), aShelf("bottom"));
    var elsewhere = aRun("chicken", "chill", "15:00", 60).shelves("cellar", "top");
    var warm = aRun("chicken", "chill", "15:00", 60).shelves("cabinet", "upper");

    assertThat(aPlanFor(supper.in(kitchen)).with(elsewhere).with(chill("salad", "bottom")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(warm)
        .with(aRun("salad", "chill", "15:00", 60).shelves("cabinet", "lower"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_freezer_is_judged_like_a_fridge() {
    var kitchen = aHomeKitchen().freezer("chest", aShelf("basket"), aShelf("floor"));

    assertThat(
        aPlanFor(supper.in(kitchen)).with(aRun("chicken", "chill", "15:00", 60).shelves("chest", "basket"))
            .with(aRun("salad", "chill", "15:00", 60).shelves("chest", "floor"))
            .heldAgainst(rule))
        .hasSize(1);
  }

  /** Rice is boiled and raw chicken joins it: what is cooked on one side does not cook the other. */
  @Test
  void raw_food_that_joins_cooked_food_is_raw() {
    var rice = aSupperOf(
        aDish("rice pot").tags("raw poultry")
            .step(aStep("cut the chicken").first())
            .step(aStep("boil the rice").burner(BurnerSize.SMALL).first())
            .step(aStep("mix").after("cut the chicken").after("boil the rice"))
            .step(aStep("marinate").takes(60).shelf("fridge")),
        meat("salad", "ready to eat"));

    assertThat(aPlanFor(rice).with(aRun("rice pot", "marinate", "15:00", 60).shelves("fridge", "top"))
        .with(chill("salad", "middle"))
        .heldAgainst(rule)).hasSize(1);
  }

  /** The custard's raw eggs join a caramel that has been boiled in another dish. */
  @Test
  void a_dish_that_begins_with_another_ones_cooked_food_brings_its_own_raw_food() {
    var custard = aSupperOf(
        aDish("caramel").step(aStep("boil").burner(BurnerSize.SMALL)),
        aDish("custard").tags("raw egg")
            .step(aStep("mix").uses("caramel", "boil"))
            .step(aStep("chill").takes(60).shelf("fridge")),
        meat("salad", "ready to eat"));

    assertThat(aPlanFor(custard).with(aRun("custard", "chill", "15:00", 60).shelves("fridge", "top"))
        .with(chill("salad", "middle"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void gravy_of_a_roasted_bird_is_ready_to_eat_and_of_a_raw_one_it_is_not() {
    var gravy = aSupperOf(
        meat("bird", "raw poultry"),
        aDish("gravy").step(aStep("chill").takes(60).shelf("fridge").uses("bird", "roast")),
        aDish("stock").step(aStep("chill").takes(60).shelf("fridge").uses("bird", "chill")),
        meat("salad", "ready to eat"));

    assertThat(aPlanFor(gravy).with(chill("gravy", "top")).with(chill("salad", "middle")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(gravy).with(chill("stock", "top")).with(chill("salad", "middle")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void a_shelf_that_is_not_there_holds_nothing() {
    assertThat(
        aPlanFor(supper).with(chill("chicken", "attic")).with(chill("salad", "middle")).heldAgainst(rule))
        .isEmpty();
  }
}
