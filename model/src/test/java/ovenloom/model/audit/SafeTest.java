package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Matter;

class SafeTest {

  private final KitchenRule rule = new Safe();

  private List<Break> simmered(int deep, String from) {
    Events supper = aSupperOf(aDish("stew").kind(Kind.CASSEROLE, Length.mm(deep))
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))).rules("us-service");
    return aPlanFor(supper)
        .with(aRun("stew", "simmer", from, 30).burners("large"))
        .with(aStay("stew", "simmer", from.equals("9:00") ? "9:30" : "18:30").shelf("19:00", "fridge", "top"))
        .heldAgainst(rule);
  }

  /** FDA Food Code 2017, 3-501.14(A): from 135 F to 70 F in two hours. */
  @ParameterizedTest
  @CsvSource({"20, false", "65, true"})
  void what_cools_too_slowly_breaks_it_with_limit_source_and_help(int deep, boolean tooSlow) {
    assertThat(simmered(deep, "9:00").isEmpty()).isEqualTo(!tooSlow);
    if (tooSlow) {
      assertThat(simmered(deep, "9:00").getFirst().what()).contains("at most", "3-501.14(A)",
          "Shallower vessels");
    }
  }

  @Test
  void what_is_eaten_before_its_time_to_cool_is_over_need_not_cool() {
    assertThat(simmered(65, "18:00")).isEmpty();
  }

  private List<Break> leftToCool(@Nullable Boolean covered, String until) {
    Events supper = aSupperOf(
        aDish("stock").matter(new Matter(Kind.LIQUID, Length.mm(20), null, null, covered))
            .arrives(Arrives.COLD)
            .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot")))
        .rules("us-service");
    return aPlanFor(supper)
        .with(aRun("stock", "simmer", "9:00", 30).burners("large"))
        .with(aStay("stock", "simmer", "9:30").counter(until).shelf("19:00", "fridge", "top"))
        .heldAgainst(rule);
  }

  /** FDA Food Code 2017, 3-501.14(A). Nobody reckons with vapour that may be kept in by a lid, unless a card says that there is none. */
  @Test
  void food_cools_by_its_vapour_only_where_a_card_says_that_it_is_open() {
    assertThat(leftToCool(false, "11:40")).isEmpty();
    assertThat(leftToCool(null, "11:40")).singleElement()
        .satisfies(each -> assertThat(each.what()).contains("3-501.14(A)"));
    assertThat(leftToCool(true, "11:40")).isNotEmpty();
  }
}
