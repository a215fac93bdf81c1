package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Wish;
import ovenloom.solver.supper.Decoded;

/** A point for each five kelvins off the mark that was written, rounded down for each bake. */
class SettingTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} C, {1}: {2}")
  @CsvSource({"180, still, 0", "176, still, 0", "184, still, 0", "175, still, 1", "185, still, 1",
      "171, still, 1", "170, still, 2", "160, fan, 0", "156, fan, 0", "155, fan, 1"})
  void four_kelvins_off_are_nothing_and_five_are_a_point_with_the_fan_counted_from_20_lower(int mark,
      String mode, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Tart
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C, from: 170 C, to: 190 C}, in: tray}]
        """).bakedAt("Tart/bake", Setting.celsius(mark), mode);

    assertThat(supper.points(Wish.SETTING)).isEqualTo(points);
  }

  /** Eight kelvins in all would be a point. */
  @Test
  void two_bakes_four_kelvins_off_each_cost_nothing() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Tart
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C, from: 170 C, to: 190 C}, in: tray}]
          - dish: Pie
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C, from: 170 C, to: 190 C}, in: tray}]
        """)
        .bakedAt("Tart/bake", Setting.celsius(176), "still")
        .bakedAt("Pie/bake", Setting.celsius(176), "still");

    assertThat(supper.points(Wish.SETTING)).isZero();
  }

  @Test
  void without_a_say_a_bake_runs_as_written() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Tart
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C, from: 170 C, to: 190 C}, in: tray}]
        """);

    assertThat(supper.told().ovens()).last().asString().startsWith("at 180 C");
    assertThat(supper.points(Wish.SETTING)).isZero();
  }
}
