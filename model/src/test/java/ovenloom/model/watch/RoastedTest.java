package ovenloom.model.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Runs.aStage;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Runs;
import ovenloom.model.audit.Steps;
import ovenloom.model.heat.Kind;
import ovenloom.model.life.Life;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Plan;
import ovenloom.model.watch.Concern.Rule;

/** FDA Food Code 2017, 3-401.11(B)(1): still 350 F under 10 lb, with the fan 325 F; 250 F from 10 lb on. */
class RoastedTest {

  private static Steps roast() {
    return aStep("roast").takes(180).bake(180).in("dish");
  }

  private static Dishes lamb(String weight, Steps step) {
    return aDish("lamb").tags("whole roast")
        .kind(Kind.DENSE_ROAST, Length.mm(120))
        .ingredient("leg", weight)
        .step(step);
  }

  private static Runs at(double fahrenheit) {
    return aRun("lamb", "roast", "15:50", 180).oven("oven", Setting.fahrenheit(fahrenheit));
  }

  private static List<Concern> concerns(Dishes dish, String rules, Runs run) {
    Plan plan = aPlanFor(aSupperOf(dish).rules(rules)).with(run).plan();
    return Watch.over(plan, Life.of(plan, 1))
        .stream()
        .filter(each -> each.rule() == Rule.ROASTED)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"8 lb, still, 325, true", "8 lb, still, 349, true", "8 lb, still, 350, false",
      "4535 g, still, 349, true", "10 lb, still, 249, true", "10 lb, still, 250, false",
      "8 lb, fan, 324, true", "8 lb, fan, 325, false", "10 lb, fan, 249, true", "10 lb, fan, 250, false",
      "8 lb, steam, 200, false"})
  void an_oven_is_hot_enough_for_what_a_roast_weighs(String weight, String mode, int fahrenheit,
      boolean tooCool) {
    assertThat(concerns(lamb(weight, roast()), "us-service", at(fahrenheit).mode(mode)))
        .hasSize(tooCool ? 1 : 0);
  }

  @Test
  void it_says_what_it_is_and_what_it_should_be_and_where_that_is_written() {
    assertThat(concerns(lamb("8 lb", roast()), "us-service", at(325))).singleElement().satisfies(each -> {
      assertThat(each.what())
          .isEqualTo("Roasted at 163 C (still), at least 177 C for a roast under 4.536 kg.");
      assertThat(each.source()).hasToString("FDA Food Code 2017, 3-401.11(B)(1)");
      assertThat(each.help()).contains("the fan");
    });
    assertThat(concerns(lamb("12 lb", roast()), "us-service", at(225))).singleElement()
        .satisfies(each -> assertThat(each.what())
            .isEqualTo("Roasted at 107 C (still), at least 121 C for any roast."));
  }

  @Test
  void a_hot_start_makes_no_cool_rest_good() {
    Runs falling = at(430).stages(aStage(220, "15:50", "16:10"), aStage(160, "16:10", "18:50"));

    assertThat(concerns(lamb("8 lb", roast()), "us-service", falling)).singleElement()
        .satisfies(each -> assertThat(each.what()).startsWith("Roasted at 160 C"));
  }

  @Test
  void no_ice_hides_it() {
    assertThat(concerns(lamb("8 lb", roast().starts(StartState.FROZEN)), "us-service", at(325))).hasSize(1);
  }

  @Test
  void at_home_nobody_asks() {
    assertThat(concerns(lamb("8 lb", roast()), "us-home", at(325))).isEmpty();
  }
}
