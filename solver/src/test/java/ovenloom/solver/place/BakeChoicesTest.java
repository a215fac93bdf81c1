package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Need;

/** Stages last as written, give or take 3 minutes, and the last takes what is left: docs/kitchen/ovens.md. */
class BakeChoicesTest {

  @Test
  void stages_last_as_they_are_written_and_the_last_takes_the_rest() {
    assertThat(BakeChoices.stageMinutes(bake(), 9)).containsExactly(9);
    assertThat(BakeChoices.stageMinutes(bake(5), 9)).containsExactly(5, 4);
    assertThat(BakeChoices.stageMinutes(bake(5, 3), 9)).containsExactly(5, 3, 1);
  }

  @Test
  void where_nothing_is_left_for_the_last_those_before_slip() {
    assertThat(BakeChoices.stageMinutes(bake(11), 9)).containsExactly(8, 1);
    assertThat(BakeChoices.stageMinutes(bake(6, 6), 9)).containsExactly(3, 5, 1);
  }

  @Test
  void no_stage_ends_before_it_begins_though_there_are_too_many_minutes_of_them() {
    assertThat(BakeChoices.stageMinutes(bake(14), 9)).containsExactly(8, 1);
    assertThat(BakeChoices.stageMinutes(bake(20, 20), 9)).containsExactly(8, 0, 1);
  }

  private static Need.Bake bake(Integer... minutes) {
    List<Need.Stage> stages = new ArrayList<>();
    for (Integer each : minutes) {
      stages.add(stage(each));
    }
    stages.add(stage(null));
    return new Need.Bake(stages, null, null, 1, 1, 0, null, Need.Bake.OVERCOOK_PERCENT);
  }

  private static Need.Stage stage(@Nullable Integer minutes) {
    Setting mark = Setting.celsius(180);
    return new Need.Stage(mark, mark, mark, Oven.STILL, minutes);
  }
}
