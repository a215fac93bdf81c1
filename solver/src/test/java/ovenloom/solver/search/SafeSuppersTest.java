package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.audit.Break;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.solver.supper.Suppers;

/** What is not safe as predicted is never offered, and the search sees it coming. */
class SafeSuppersTest {

  @TempDir
  private Path folder;

  private Event stew(int deep) throws IOException {
    return Suppers.withDishes(folder, """
          - dish: Stew
            kind: casserole
            thick: %d mm
            arrives: cool
            steps:
              - {do: simmer, takes: 1 h, burner: large, keeps: {fridge: 2 days}}
              - {do: serve up, takes: 5 min, hands: throughout, after: {simmer: {least: 5 h 50 min}}}
        """.formatted(deep));
  }

  /** FDA Food Code 2017, 3-501.14(A): 57 to 21 C within two hours; seven centimetres of stew in still air take longer. */
  @Test
  void where_the_menu_has_food_cool_too_slowly_the_answer_is_no_with_limit_source_and_help()
      throws IOException {
    Found found = Suppers.planned(stew(70));

    assertThat(found.isAPlan()).isFalse();
    assertThat(found.isMisjudged()).as("foreseen").isFalse();
    assertThat(found.breaks()).filteredOn(each -> each.rule().equals("safe"))
        .extracting(Break::what)
        .anyMatch(what -> what.contains("3-501.14(A)") && what.contains("Shallower vessels"));
  }

  @Test
  void two_centimetres_of_it_cool_in_time() throws IOException {
    assertThat(Suppers.planned(stew(20)).breaks()).isEmpty();
  }

  /** FDA Food Code 2017, 3-401.11(B)(1): in a still oven 350 F for a roast under 10 lb. */
  @ParameterizedTest
  @CsvSource({"8 lb, 350", "10 lb, 325"})
  void a_roast_goes_into_an_oven_that_is_hot_enough_for_its_weight(String weight, int hottest)
      throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Pork loin
            tags: [raw meat, whole roast]
            kind: dense roast
            thick: 100 mm
            ingredients: {pork loin: %s}
            steps: [{do: roast, takes: 2 h, core: 70 C, bake: {at: 325 F, to: %d F}, in: 9x13 in dish}]
        """.formatted(weight, hottest)));

    assertThat(found.breaks()).isEmpty();
    assertThat(found.plan().placements()).extracting(Placement::baking)
        .filteredOn(Objects::nonNull)
        .flatExtracting(Baking::stages)
        .extracting(Baking.StageRun::mark)
        .containsExactly(Setting.fahrenheit(hottest));
  }

  /** USDA-FSIS: no more than two hours between 40 and 140 F. */
  @Test
  void what_would_stand_about_for_three_hours_is_refused_though_it_keeps_so_long() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, """
          - dish: Beans
            thick: 20 mm
            arrives: cool
            steps: [{do: simmer, takes: 30 min, burner: large, keeps: {counter: 6 h}}]
          - dish: Polenta
            tags: [not tcs]
            steps: [{do: stir, takes: 3 h, burner: small, hands: throughout, order only: Beans/simmer}]
        """));

    assertThat(found.isMisjudged()).as("foreseen").isFalse();
    assertThat(found.breaks()).extracting(Break::rule).containsOnly("safe");
  }
}
