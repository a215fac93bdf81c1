package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;
import ovenloom.solver.wish.Scorer;

/** Dishes that are to be cool or cold are done in time to cool; supper is at 19:00, and one cook is there from noon. */
class HeadStartTest {

  @TempDir
  private Path folder;

  private Runs rolls(String minutes, String keeps) throws IOException {
    return Runs.of(Suppers.withDishes(folder, """
          - dish: Rolls
            arrives: cool
            tags: [not tcs]
            steps: [{do: bake, takes: %s, bake: {at: 375 F}, in: half sheet, keeps: {%s}}]
        """.formatted(minutes, keeps)));
  }

  private static int earlier(Runs runs) {
    return ahead(runs).earlier(0);
  }

  private static Decisions ahead(Runs runs) {
    Decisions decisions = FirstOrder.of(runs);
    new HeadStart(runs).tell(decisions);
    return decisions;
  }

  private static long lostAtTheTable(Runs runs, Decisions decisions) {
    return new Scorer(runs).of(new Decoder(runs).decode(decisions)).atTheTableInAll();
  }

  @Test
  void rolls_that_are_to_be_cool_are_baked_in_time_to_cool() throws IOException {
    Runs runs = rolls("20 min", "counter: 8 h");

    assertThat(lostAtTheTable(runs, Decisions.open(1))).isPositive();
    assertThat(lostAtTheTable(runs, ahead(runs))).isZero();
  }

  @Test
  void they_are_baked_no_sooner_than_they_keep() throws IOException {
    assertThat(earlier(rolls("20 min", "counter: 30 min"))).isEqualTo(30);
  }

  /** From noon to 18:30 they bake, so that half an hour is left of the time there is. */
  @Test
  void they_are_baked_no_sooner_than_somebody_is_there() throws IOException {
    assertThat(earlier(rolls("6 h 30 min", "counter: 8 h"))).isEqualTo(30);
  }

  @Test
  void what_is_served_at_once_has_cooled_before() throws IOException {
    Event event = Suppers.withDishes(folder, """
          - dish: Rolls
            arrives: cool
            served over: 10 min
            tags: [not tcs]
            steps:
              - {do: bake, takes: 20 min, bake: {at: 375 F}, in: half sheet, keeps: {counter: 8 h}}
              - {do: fill, takes: 5 min, hands: throughout, serve: yes}
        """);
    Decisions first = ahead(Runs.of(event));

    assertThat(first.earlier(0)).isPositive();
    assertThat(first.earlier(1)).isZero();
  }

  /** Two marks and one oven from noon on, and two hours in it each: were both to be out long before supper, they would be in it at once. */
  @Test
  void dishes_have_a_head_start_as_far_as_there_is_room_for_it() throws IOException {
    Runs runs = Runs.of(Suppers.withDishes(folder, """
          - dish: Rolls
            arrives: cool
            tags: [not tcs]
            steps: [{do: bake, takes: 2 h, bake: {at: 375 F}, in: half sheet, keeps: {counter: 8 h}}]
          - dish: Buns
            arrives: cool
            tags: [not tcs]
            steps: [{do: bake, takes: 2 h, bake: {at: 300 F}, in: half sheet, keeps: {counter: 8 h}}]
        """));
    Trial trial = new Trial(runs, plan -> List.of());
    Decisions first = FirstOrder.of(runs);
    long before = trial.cost(trial.of(first).score());

    Decisions given = new CooledInTime(trial, runs.work(), ahead(runs)).give(first, 100, () -> false);

    assertThat(trial.cost(trial.of(given).score())).isLessThan(before);
    assertThat(trial.of(given).draft().shortfall()).isZero();
  }
}
