package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;

/** Supper is on Saturday 10 October. */
class DaysKeptTest {

  private final KitchenRule rule = new DaysKept();

  private List<Break> made(@Nullable String rules, int daysBefore, Dishes dish) {
    Events supper = aSupperOf(dish).from(daysBefore(20, "8:00"));
    return aPlanFor(rules == null ? supper : supper.rules(rules))
        .with(aRun("soup", "cook", daysBefore(daysBefore, "12:00"), 30))
        .heldAgainst(rule);
  }

  private static Dishes soup() {
    return aDish("soup").step(aStep("cook").takes(30).burner(BurnerSize.SMALL));
  }

  /** FDA Food Code 2017, 3-501.17, seven days; Cold Food Storage Chart, four; the strictest where nothing is chosen. */
  @ParameterizedTest
  @CsvSource({"us-service, 6, 0", "us-service, 7, 720", "us-home, 3, 0", "us-home, 4, 720", "uk, 19, 0"})
  void the_day_it_was_made_is_the_first(String rules, int daysBefore, int early) {
    assertThat(made(rules, daysBefore, soup())).extracting(Break::off)
        .isEqualTo(early == 0 ? List.of() : List.of((long) early));
  }

  @Test
  void the_strictest_holds_where_none_is_chosen() {
    assertThat(made(null, 3, soup())).isEmpty();
    assertThat(made(null, 4, soup())).singleElement()
        .satisfies(each -> assertThat(each.what()).contains("day 4", "Cold Food Storage Chart"));
  }

  @Test
  void what_is_neither_raw_nor_cooked_keeps_and_so_does_bread() {
    assertThat(made(null, 9, aDish("soup").step(aStep("cook").takes(30)))).isEmpty();
    assertThat(made(null, 9, aDish("soup").tags("raw meat").step(aStep("cook").takes(30)))).hasSize(1);
    assertThat(made(null, 9, aDish("soup").tags("tcs").step(aStep("cook").takes(30)))).hasSize(1);
    assertThat(made(null, 9, soup().tags("not tcs"))).isEmpty();
    assertThat(made(null, 9, soup().kind(Kind.BREAD, Length.mm(60)))).isEmpty();
  }

  @Test
  void the_oldest_part_counts_in_another_dish_too() {
    Events supper = aSupperOf(soup(), aDish("pie").step(aStep("fill").uses("soup", "cook"))).rules("us-home")
        .from(daysBefore(20, "8:00"));

    assertThat(aPlanFor(supper)
        .with(aRun("soup", "cook", daysBefore(4, "12:00"), 30))
        .with(aRun("pie", "fill", "18:00", 10))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("soup/cook"));
  }

  @Test
  void a_freezer_stops_the_count() {
    Events supper = aSupperOf(aDish("soup").step(aStep("cook").takes(30)
        .burner(BurnerSize.SMALL)
        .keepsIn("freezer", 30 * 1440)))
        .in(Kitchens.aHomeKitchen().freezer("freezer", Kitchens.aShelf("only")))
        .from(daysBefore(20, "8:00"));

    assertThat(aPlanFor(supper).with(aRun("soup", "cook", daysBefore(15, "12:00"), 30)).heldAgainst(rule))
        .isEmpty();
  }
}
