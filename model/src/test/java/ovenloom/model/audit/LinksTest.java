package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Link;

/** The squash is out of the oven at 17:00. */
class LinksTest {

  private final KitchenRule rule = new Links();

  @Test
  void the_layers_wait_ten_minutes_at_least_and_two_hours_at_most() {
    assertThat(layersAt("17:10", Link.Kind.FOOD, 10, 120)).isEmpty();
    assertThat(layersAt("19:00", Link.Kind.FOOD, 10, 120)).isEmpty();
  }

  @Test
  void after_nine_minutes_the_squash_is_a_minute_too_hot() {
    assertThat(layersAt("17:09", Link.Kind.FOOD, 10, 120)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.what()).isEqualTo("the gap is 9 min, at least 10");
      assertThat(each.who()).containsExactly("squash/roast", "squash/layer");
    });
  }

  @Test
  void after_two_hours_and_five_minutes_it_is_five_minutes_too_old() {
    assertThat(layersAt("19:05", Link.Kind.FOOD, 10, 120)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void nothing_is_layered_before_it_is_roasted_though_no_gap_is_asked_for() {
    assertThat(layersAt("17:00", Link.Kind.FOOD, 0, null)).isEmpty();
    assertThat(layersAt("16:40", Link.Kind.FOOD, 0, null)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(20));
  }

  @Test
  void what_only_comes_after_keeps_to_its_gap_too() {
    assertThat(layersAt("17:00", Link.Kind.ORDER_ONLY, 0, 30)).isEmpty();
    assertThat(layersAt("17:31", Link.Kind.ORDER_ONLY, 0, 30)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(layersAt("16:59", Link.Kind.ORDER_ONLY, 0, 30)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void alongside_is_from_the_minute_the_other_starts_to_its_last() {
    assertThat(layersAt("16:20", Link.Kind.ALONGSIDE, 0, null)).isEmpty();
    assertThat(layersAt("16:59", Link.Kind.ALONGSIDE, 0, null)).isEmpty();
  }

  @Test
  void alongside_is_not_before_it_starts_nor_once_it_has_ended() {
    assertThat(layersAt("16:18", Link.Kind.ALONGSIDE, 0, null)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
    assertThat(layersAt("17:00", Link.Kind.ALONGSIDE, 0, null)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void a_gravy_too_soon_after_two_birds_roasted_in_one_run_is_one_break() {
    var dinner = aSupperOf(
        aDish("bird").batches(2).step(aStep("roast").takes(60).together(2)),
        aDish("gravy").step(aStep("make").uses("bird", "roast")));

    assertThat(aPlanFor(dinner)
        .with(aRun("bird", "roast", "17:00", 60).batches(1, 2))
        .with(aRun("gravy", "make", "17:55", 10))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void what_was_forgotten_comes_after_nothing() {
    var supper = aSupperOf(aDish("squash").step(aStep("roast")).step(aStep("layer")));

    assertThat(aPlanFor(supper).with(aRun("squash", "layer", "17:00", 10)).heldAgainst(rule)).isEmpty();
  }

  private List<Break> layersAt(String time, Link.Kind kind, int least, @Nullable Integer most) {
    var supper = aSupperOf(aDish("squash")
        .step(aStep("roast").takes(40))
        .step(aStep("layer").after(new Link(kind, "", "roast", least, most))));

    return aPlanFor(supper)
        .with(aRun("squash", "roast", "16:20", 40))
        .with(aRun("squash", "layer", time, 10))
        .heldAgainst(rule);
  }
}
