package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.Wish;

class OvercookedTest {

  /** 60 min are needed: 62 is 3 % more, 63 is 5 %, 72 is 20 %. */
  @ParameterizedTest
  @CsvSource({"60, 0", "62, 0", "63, 1", "66, 2", "72, 4"})
  void a_point_for_each_twentieth_above_what_is_needed(int minutes, int points) {
    var pie = aSupperOf(aDish("pie").step(aStep("bake").takes(60).bake(180)));

    assertThat(Counting.points(Wish.SETTING,
        aPlanFor(pie).with(aRun("pie", "bake", "17:30", minutes).oven("oven", 180))))
        .isEqualTo(points);
  }
}
