package ovenloom.model.tally;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.tally.HandResult.plan;
import static ovenloom.model.tally.HandResult.without;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

class TallyTest {

  private static final Axis KITCHEN = new Axis("kitchen", List.of("small", "large", "rented"));
  private static final Axis GUESTS = new Axis("guests", List.of("80", "120"));

  /** Two of six have no plan; the rented kitchen was never looked at for 120. */
  private static Tally tally() {
    Tally tally = new Tally(List.of(KITCHEN, GUESTS));
    tally.add(plan(choices("small", "80"), 10, 100, 60, 50));
    tally.add(without(choices("small", "120"), Answer.NO_PLAN));
    tally.add(plan(choices("large", "80"), 0, 120, 40, 80));
    tally.add(plan(choices("large", "120"), 20, 305, 95, 90));
    tally.add(without(choices("rented", "80"), Answer.MISTAKEN));
    return tally;
  }

  private static Map<String, String> choices(String kitchen, String guests) {
    Map<String, String> choices = new LinkedHashMap<>();
    choices.put("kitchen", kitchen);
    choices.put("guests", guests);
    return choices;
  }

  @Test
  void runs_are_counted_by_how_they_ended() {
    Answers all = tally().all().answers();

    assertThat(all.all()).isEqualTo(5);
    assertThat(all.of(Answer.PLAN)).isEqualTo(3);
    assertThat(all.of(Answer.NO_PLAN)).isEqualTo(1);
    assertThat(all.of(Answer.NONE_FOUND)).isZero();
    assertThat(all.wrong()).isEqualTo(1);
  }

  @Test
  void means_are_of_those_with_a_plan() {
    Means eighty = tally().with(GUESTS, "80").means();

    assertThat(eighty.atTheTable()).as("(10 + 0) / 2").isEqualTo(5);
    assertThat(eighty.wishes()).as("(100 + 120) / 2").isEqualTo(110);
    assertThat(eighty.hands()).as("(60 + 40) / 2").isEqualTo(50);
    assertThat(eighty.energy()).as("(50 + 80) / 2").isEqualTo(65);
    assertThat(tally().with(KITCHEN, "large").means().wishes()).as("(120 + 305) / 2").isEqualTo(212.5);
  }

  @Test
  void without_a_plan_there_is_no_mean_and_no_best() {
    Group rented = tally().with(KITCHEN, "rented");

    assertThat(rented.means().isEmpty()).isTrue();
    assertThat(rented.best()).isNull();
  }

  @Test
  void the_best_loses_least_at_the_table_and_then_by_its_wishes() {
    assertThat(best(tally().all()).name()).isEqualTo("large, 80 guests");
    assertThat(best(tally().with(GUESTS, "120")).nameBeside(GUESTS)).isEqualTo("large");
    assertThat(best(tally().with(KITCHEN, "small")).nameBeside(KITCHEN)).isEqualTo("80 guests");
  }

  @Test
  void where_there_is_one_axis_nothing_stands_beside_its_choice() {
    Tally tally = new Tally(List.of(GUESTS));
    tally.add(plan(Map.of("guests", "80"), 0, 1, 1, 1));

    assertThat(best(tally.with(GUESTS, "80")).nameBeside(GUESTS)).isEmpty();
  }

  @Test
  void of_equals_the_first_is_the_best() {
    Tally tally = new Tally(List.of(KITCHEN, GUESTS));
    tally.add(plan(choices("rented", "80"), 1, 1, 1, 1));
    tally.add(plan(choices("small", "80"), 1, 1, 1, 1));

    assertThat(best(tally.all()).name()).isEqualTo("rented, 80 guests");
  }

  @Test
  void each_pair_of_choices_is_a_cell_of_the_map() {
    Fit fit = tally().fits().getFirst();

    assertThat(fit.rows()).isEqualTo(KITCHEN);
    assertThat(fit.columns()).isEqualTo(GUESTS);
    assertThat(fit.at("large", "120").of(Answer.PLAN)).isEqualTo(1);
    assertThat(fit.at("small", "120").of(Answer.NO_PLAN)).isEqualTo(1);
    assertThat(fit.at("rented", "120").all()).isZero();
  }

  @Test
  void dishes_decide_with_a_plan_and_without() {
    assertThat(tally().deciding().dishes())
        .containsExactly(new Deciding.Decider("Roast", 3, 0), new Deciding.Decider("Soup", 0, 2));
  }

  @Test
  void a_hundred_thousand_results_leave_nothing_behind_but_what_is_told_of_them() {
    Tally tally = new Tally(List.of(KITCHEN, GUESTS));
    List<WeakReference<Result>> some = new ArrayList<>();
    for (int i = 0; i < 100_000; i++) {
      Result result = i % 7 == 0 ? without(choices("small", "120"), Answer.NONE_FOUND)
          : plan(choices(KITCHEN.choices().get(i % 3), GUESTS.choices().get(i % 2)), i % 1_009, i % 503,
              i % 311, (i * 37L) % 1_987);
      tally.add(result);
      if (i % 1_000 == 0) {
        some.add(new WeakReference<>(result));
      }
    }

    System.gc();
    assertThat(some).allSatisfy(result -> assertThat(result.get()).isNull());
    assertThat(tally.all().answers().all()).isEqualTo(100_000);
    assertThat(tally.bins().counts()).hasSizeLessThanOrEqualTo(Bins.MOST);
    assertThat(tally.front().points()).hasSizeLessThanOrEqualTo(311);
  }

  private static Best best(Group group) {
    return Objects.requireNonNull(group.best());
  }
}
