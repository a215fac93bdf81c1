package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Break;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;
import ovenloom.solver.supper.Suppers;

/** Two cakes, one with nuts and one for a guest who must not get any, and two cooks, free to do all at once and at the last. */
class FreeOfNutsTest {

  private static final String SCRUB = """
      - {dish: Scrub, food: no, tags: clean down, steps: [{do: boards and knives, takes: 10 min, hands: throughout}]}
      """;

  private static final Budget A_SEARCH = new Budget(null, 2_000L, 1, 2);

  @TempDir
  private Path folder;

  private Found planned(String sponge, String more) throws IOException {
    return Search.find(Suppers.read(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Ann, hours: {on the day: 12:00-19:00}}, {name: Tom, hours: {on the day: 12:00-19:00}}]
        kitchen: {from: home}
        dishes:
        - dish: Walnut torte
          tags: [contains nuts, not tcs]
          steps: [{do: mix, takes: 20 min, hands: throughout, keeps: {counter: 6 h}}]
        - dish: Honey sponge
          tags: [free of nuts, not tcs]
          steps: [{do: mix, takes: 20 min, hands: throughout, keeps: {counter: 6 h}%s}]
        """.formatted(sponge) + more), List.of(), A_SEARCH, (best, schedules, left) -> {}, () -> false);
  }

  private static Stretch mixed(Plan plan, String dish) {
    return plan.placement(dish, "mix", 1).when();
  }

  @Test
  void what_must_be_free_of_nuts_is_mixed_before_what_contains_them() throws IOException {
    Found found = planned("", "");

    assertThat(found.breaks()).isEmpty();
    assertThat(mixed(found.plan(), "Honey sponge").to())
        .isLessThanOrEqualTo(mixed(found.plan(), "Walnut torte").from());
  }

  @Test
  void where_it_has_to_be_mixed_after_them_the_kitchen_is_cleaned_down_between() throws IOException {
    Found found = planned(", order only: Walnut torte/mix", SCRUB);

    assertThat(found.breaks()).isEmpty();
    Stretch scrub = found.plan().placement("Scrub", "boards and knives", 1).when();
    assertThat(scrub.minutes()).isEqualTo(10);
    assertThat(scrub.from()).isGreaterThanOrEqualTo(mixed(found.plan(), "Walnut torte").to());
    assertThat(scrub.to()).isLessThanOrEqualTo(mixed(found.plan(), "Honey sponge").from());
  }

  @Test
  void all_of_a_table_of_cakes_is_put_in_order() throws IOException {
    StringBuilder cakes = new StringBuilder();
    for (int cake = 1; cake <= 5; cake++) {
      cakes.append(
          """
              - {dish: Nut tart %1$d, tags: [contains nuts, not tcs], steps: [{do: mix, takes: 10 min, hands: throughout, keeps: {counter: 6 h}}]}
              - {dish: Plain tart %1$d, tags: [free of nuts, not tcs], steps: [{do: mix, takes: 10 min, hands: throughout, keeps: {counter: 6 h}}]}
              """
              .formatted(cake));
    }

    assertThat(planned("", cakes.toString()).breaks()).isEmpty();
    assertThat(planned(", order only: Walnut torte/mix", SCRUB + cakes).breaks()).isEmpty();
  }

  @Test
  void where_it_has_to_be_and_nobody_cleans_the_answer_is_no() throws IOException {
    Found found = planned(", order only: Walnut torte/mix", "");

    assertThat(found.isMisjudged()).as("foreseen").isFalse();
    assertThat(found.breaks()).extracting(Break::rule).containsOnly("allergens apart");
  }
}
