package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Kitchens.cm;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Spread;

/** Shelves of 50 x 36 cm, 20 cm high; trays of 50 x 35 cm, dishes of 25 x 35 cm. */
class ShelvesTest {

  private final KitchenRule rule = new Shelves();

  private static Dishes chilled(String name, String vessel, int count) {
    return aDish(name)
        .step(aStep("chill").takes(60).shelf("fridge").in(vessel, count).keepsIn("fridge", 600));
  }

  private static Runs chill(String dish, String from, String... shelves) {
    return aRun(dish, "chill", from, 60).shelves("fridge", shelves);
  }

  private final Events creams = aSupperOf(chilled("cream", "tray", 1), chilled("jelly", "tray", 1));

  @Test
  void a_tray_to_a_shelf() {
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(chill("jelly", "15:30", "middle"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(chill("jelly", "15:30", "top"))
        .heldAgainst(rule)).singleElement().satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.when()).isEqualTo(between("15:30", "16:00"));
          assertThat(each.who()).containsExactly("fridge", "cream/chill", "jelly/chill");
        });
  }

  @Test
  void the_jelly_may_have_the_shelf_the_minute_the_cream_leaves_it() {
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(chill("jelly", "16:00", "top"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(chill("jelly", "15:59", "top"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void what_waits_on_its_shelf_stays_there_and_takes_it_once() {
    var waiting = aStay("cream", "chill", "16:00").shelf("18:00", "fridge", "top");

    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top")).with(waiting).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(waiting)
        .with(chill("jelly", "17:30", "top"))
        .heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "top"))
        .with(waiting)
        .with(chill("jelly", "18:00", "top"))
        .heldAgainst(rule)).isEmpty();
  }

  /** 24 + 1 + 25 cm are 50. */
  @Test
  void two_dishes_need_a_centimetre_between_them_and_none_to_the_wall() {
    var exact = aHomeKitchen().vessel("dish", 6, cm(24.5, 36, 6));
    var wide = aHomeKitchen().vessel("dish", 6, cm(24.6, 36, 6));
    var gratin = aSupperOf(chilled("gratin", "dish", 2));

    assertThat(aPlanFor(gratin.in(exact)).with(chill("gratin", "15:00", "top", "top")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(gratin.in(wide)).with(chill("gratin", "15:00", "top", "top")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void a_pot_is_no_taller_than_its_shelf() {
    var exact = aHomeKitchen().vessel("tray", 4, cm(20, 20, 20));
    var tall = aHomeKitchen().vessel("tray", 4, cm(20, 20, 20.1));

    assertThat(aPlanFor(creams.in(exact)).with(chill("cream", "15:00", "top")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(creams.in(tall)).with(chill("cream", "15:00", "top")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.unit()).isEqualTo(Break.Unit.MILLIMETRES);
        });
  }

  @Test
  void a_bowl_without_a_size_takes_no_room_and_still_has_a_place() {
    var salad = aSupperOf(chilled("salad", "bowl", 2), chilled("cream", "tray", 1));

    assertThat(aPlanFor(salad).with(chill("salad", "15:00", "top", "top"))
        .with(chill("cream", "15:00", "top"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(salad).with(chill("salad", "15:00", "top")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("needs 2 places and has 1"));
  }

  @Test
  void food_without_a_vessel_has_one_place() {
    var cheese = aSupperOf(aDish("cheese").step(aStep("chill").takes(60).shelf("fridge")));

    assertThat(aPlanFor(cheese).with(chill("cheese", "15:00", "top")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(cheese).with(chill("cheese", "15:00", "top", "middle")).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(cheese).with(chill("cheese", "15:00")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void what_must_chill_in_the_fridge_does_not_chill_in_the_cabinet() {
    assertThat(aPlanFor(creams).with(aRun("cream", "chill", "15:00", 60).shelves("cabinet", "upper"))
        .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("may be in [fridge] only"));
  }

  @Test
  void what_needs_no_shelf_has_none() {
    var salad = aSupperOf(aDish("salad").step(aStep("toss")));

    assertThat(
        aPlanFor(salad).with(aRun("salad", "toss", "15:00", 10).shelves("fridge", "top")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("needs no shelf and has one"));
  }

  @Test
  void a_shelf_is_one_the_fridge_has() {
    assertThat(aPlanFor(creams).with(chill("cream", "15:00", "attic")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("there is no shelf attic of fridge here"));
    assertThat(aPlanFor(creams).with(aStay("cream", "chill", "16:00").shelf("18:00", "cellar", "top"))
        .heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void of_nine_moulds_on_a_shelf_the_plan_says_how_they_stand() {
    var event = aSupperOf(chilled("flans", "mould", 9)).in(aHomeKitchen().vessel("mould", 9, cm(10, 10, 5)));
    String[] top = {"top", "top", "top", "top", "top", "top", "top", "top", "top"};
    List<Spread.Spot> spots = new ArrayList<>();
    for (int mould = 0; mould < 9; mould++) {
      int row = mould / 4;
      int column = mould % 4;
      spots.add(new Spread.Spot("flans", "chill", Batches.only(1), mould, Length.cm(column * 11),
          Length.cm(row * 11),
          false));
    }

    assertThat(aPlanFor(event).with(chill("flans", "15:00", top)).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(event).with(chill("flans", "15:00", top))
        .with(new Spread("fridge", 0, between("15:00", "16:00"), spots))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(event).with(chill("flans", "15:00", top))
        .with(new Spread("fridge", 1, between("15:00", "16:00"), spots))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void half_a_millimetre_too_tall_counts_as_one() {
    var tall = aHomeKitchen().vessel("tray", 4, cm(20, 20, 20.05));

    assertThat(aPlanFor(creams.in(tall)).with(chill("cream", "15:00", "top")).heldAgainst(rule))
        .singleElement()
        .satisfies(
            each -> assertThat(each.what()).isEqualTo("the tray is 20.05 cm tall, and the shelf top 20 cm"));
  }
}
