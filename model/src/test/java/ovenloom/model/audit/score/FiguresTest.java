package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.score.Figures.Scarce;

/** A supper at 19:00; the two hours before it are 120 minutes of one oven and of each of three burners. */
class FiguresTest {

  @Test
  void a_burner_counts_for_as_long_as_it_is_lit_with_what_waits_on_it_and_only_in_the_last_two_hours() {
    Figures figures = Figures.of(kitchen().with(aRun("stew", "cook", "16:40", 40).burners("small"))
        .with(aStay("stew", "cook", "17:20").burners("17:48", "small"))
        .plan());

    assertThat(figures.busy().get(Scarce.BURNERS)).as("20 and 28 of 360 minutes").isEqualTo(13);
    assertThat(figures.busy().get(Scarce.OVENS)).isZero();
  }

  @Test
  void food_that_waits_in_an_oven_fills_it() {
    Figures figures = Figures.of(kitchen().with(aRun("stew", "cook", "17:00", 30).burners("small", "large"))
        .with(aStay("stew", "cook", "17:30").oven("18:30", "oven", 80))
        .plan());

    assertThat(figures.busy().get(Scarce.OVENS)).as("60 of 120 minutes").isEqualTo(50);
    assertThat(figures.atOnce()).as("two burners").isEqualTo(2);
    assertThat(figures.hottest()).isEqualTo(17 * 60);
  }

  private static Plans kitchen() {
    return aPlanFor(aSupperOf(aDish("stew").step(aStep("cook"))));
  }
}
