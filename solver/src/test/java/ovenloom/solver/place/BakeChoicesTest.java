package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Need;
import ovenloom.solver.supper.Suppers;

/** Stages last as written, give or take 3 minutes, and the last takes what is left: docs/kitchen/ovens.md. */
class BakeChoicesTest {

  @TempDir
  private Path folder;

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

  /** FDA Food Code 2017, 3-401.11(B)(1): still 350 F for a roast under 10 lb, with the fan 325 F. */
  @Test
  void a_roast_is_offered_only_marks_that_are_hot_enough_and_the_nearest_of_them_as_written()
      throws IOException {
    assertThat(roast("{at: 325 F, from: 300 F, to: 375 F}"))
        .containsExactly("still [350 F] as written", "still [375 F]", "fan [325 F] as written",
            "fan [350 F]");
    assertThat(roast("{at: 325 F, to: 350 F}"))
        .containsExactly("still [350 F] as written", "fan [325 F] as written");
  }

  private List<String> roast(String bake) throws IOException {
    Runs runs = Runs.of(Suppers.read(folder,
        """
            ovenloom: 1
            event: Supper
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen:
              ovens: [{name: oven, modes: [still, fan], dial: 150 F to 500 F, racks: {size: 55 x 38 cm, clear: 15 cm}}]
              vessels: {9x13 in dish: 1}
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - dish: Pork loin
                tags: [whole roast]
                ingredients: {pork loin: 8 lb}
                steps: [{do: roast, takes: 2 h, bake: %s, in: 9x13 in dish}]
            """
            .formatted(bake)));
    return new BakeChoices(runs.event(), runs.minutes()).of(runs.runs().getFirst())
        .getFirst()
        .stream()
        .map(choice -> choice.mode() + " " + choice.marks() + (choice.asWritten() ? " as written" : ""))
        .toList();
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
