package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
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
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;

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
}
