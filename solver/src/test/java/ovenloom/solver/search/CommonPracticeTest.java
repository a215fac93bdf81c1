package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Setting;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.solver.supper.Suppers;

/** What every cook knows; common practice, no source. */
class CommonPracticeTest {

  @TempDir
  private Path folder;

  @Test
  void two_trays_whose_windows_meet_at_one_mark_only_share_the_oven_at_that_mark() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Roots
            steps:
              - {do: cut, takes: 10 min, hands: throughout, in: mixing bowl}
              - {do: roast, takes: 40 min, bake: {at: 375 F, from: 350 F, to: 375 F}, in: half sheet}
          - dish: Squash
            steps:
              - {do: cut, takes: 10 min, hands: throughout, in: mixing bowl}
              - {do: roast, takes: 40 min, bake: {at: 400 F, from: 375 F, to: 400 F}, in: half sheet}
        """));

    assertThat(found.breaks()).isEmpty();
    Placement roots = found.plan().placement("Roots", "roast", 1);
    Placement squash = found.plan().placement("Squash", "roast", 1);
    assertThat(roots.when().overlaps(squash.when())).isTrue();
    assertThat(marks(roots)).containsExactly(Setting.fahrenheit(375));
    assertThat(marks(squash)).containsExactly(Setting.fahrenheit(375));
  }

  @Test
  void nobody_goes_to_the_shop_with_the_oven_on() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Beans
            steps:
              - {do: mix, takes: 10 min, hands: throughout, in: 9x13 in dish}
              - {do: bake, takes: 3 h, bake: {at: 300 F}}
          - dish: Bread
            steps:
              - {do: buy, takes: 40 min, hands: throughout, away: yes, keeps: {counter: 90 min}}
              - {do: slice, takes: 10 min, hands: throughout, keeps: {counter: 4 h}}
        """));

    assertThat(found.breaks()).isEmpty();
    assertThat(found.plan()
        .placement("Bread", "buy", 1)
        .when()
        .overlaps(found.plan().placement("Beans", "bake", 1).when())).isFalse();
  }

  @Test
  void a_tray_turned_in_mid_bake_needs_one_cook_then() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder,
        """
              - dish: Biscuits
                steps:
                  - {do: shape, takes: 10 min, hands: throughout, in: half sheet}
                  - {do: bake, takes: 20 min, bake: {at: 350 F}, hands: [{at: 10 min, for: 1 min}], keeps: {counter: 4 h}}
            """));

    assertThat(found.breaks()).isEmpty();
    Placement bake = found.plan().placement("Biscuits", "bake", 1);
    assertThat(bake.hands()).extracting(HandsOn::act)
        .containsExactly(HandsOn.Act.LOAD, HandsOn.Act.WORK, HandsOn.Act.UNLOAD);
    HandsOn turn = bake.hands().get(1);
    assertThat(turn.cooks()).containsExactly("Cook");
    assertThat(turn.when().from() - bake.when().from()).isBetween(7, 13);
  }

  @Test
  void a_dish_made_ahead_is_never_older_than_it_keeps() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Pudding
            arrives: cold
            steps:
              - {do: stir, takes: 20 min, hands: throughout, in: mixing bowl}
              - {do: set, takes: 3 h, cold: fridge, keeps: {fridge: 2 h}}
        """));

    assertThat(found.breaks()).isEmpty();
    int table = 19 * 60;
    assertThat(table - found.plan().placement("Pudding", "set", 1).when().to()).isBetween(0, 120);
  }

  @ParameterizedTest
  @CsvSource({"350, 30", "325, 33"})
  void a_covered_dish_assembled_the_day_before_bakes_its_25_to_30_minutes_at_350_and_a_few_more_at_325(
      int mark, int minutes) throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Covered noodles
            arrives: hot
            steps:
              - {do: assemble, takes: 30 min, hands: throughout, in: 9x13 in dish, keeps: {fridge: 1 day}}
              - {do: stand overnight, takes: 12 h, cold: fridge, keeps: {fridge: 12 h}}
              - {do: bake, takes: 25-30 min, bake: {at: 350 F, from: 325 F}}
          - dish: Bread
            steps:
              - {do: knead, takes: 10 min, hands: throughout, in: half sheet}
              - {do: bake, takes: 30 min, bake: {at: %d F}, order only: Covered noodles/stand overnight}
        """.formatted(mark)));

    assertThat(found.breaks()).isEmpty();
    Placement noodles = found.plan().placement("Covered noodles", "bake", 1);
    assertThat(marks(noodles)).containsExactly(Setting.fahrenheit(mark));
    assertThat(noodles.when().minutes()).isEqualTo(minutes);
    assertThat(found.plan().placement("Covered noodles", "assemble", 1).when().to()).isNegative();
    assertThat(inTheOvenTogether(found.plan())).isTrue();
  }

  private static boolean inTheOvenTogether(Plan plan) {
    return plan.placement("Covered noodles", "bake", 1)
        .when()
        .overlaps(plan.placement("Bread", "bake", 1).when());
  }

  private static List<Setting> marks(Placement run) {
    return Objects.requireNonNull(run.baking()).stages().stream().map(Baking.StageRun::mark).toList();
  }
}
