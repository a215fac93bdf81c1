package ovenloom.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.solver.place.InnerDecoder;
import ovenloom.solver.place.InnerProblem;
import ovenloom.solver.place.InnerProblem.Step;

/** Source of the published problems: PSPLIB j30, Kolisch and Sprecher 1996; optima as proven by several exact solvers. */
class InnerSearchTest {

  private static final int OPTIMUM = 3;

  @Test
  void a_thousand_schedules_come_within_half_a_per_cent_of_the_proven_optima_and_never_beat_one() {
    var rows = Published.rows("rcpsp/bestknown-j30.csv")
        .stream()
        .filter(row -> row[0].endsWith("_1"))
        .toList();
    double above = 0;
    for (String[] row : rows) {
      var problem = PsplibFile.read(Published.lines("rcpsp/j30/" + row[0] + ".sm"));
      int optimum = Integer.parseInt(row[OPTIMUM]);

      int found = InnerSearch.find(problem, 25, optimum, 1, schedules -> schedules < 1_000);

      assertThat(found).as(row[0]).isGreaterThanOrEqualTo(optimum);
      above += (double) found / optimum - 1;
    }
    assertThat(above / rows.size()).isLessThan(0.005);
  }

  @Test
  void it_stops_where_no_plan_can_be_shorter() {
    var problem = new InnerProblem(List.of(new Step(10, List.of(1)), new Step(15, List.of(1))), List.of(1),
        List.of());
    long[] last = {0};

    int found = InnerSearch.find(problem, 5, 25, 1, schedules -> (last[0] = schedules) < 1_000);

    assertThat(found).isEqualTo(25);
    assertThat(last[0]).isLessThan(5);
  }

  @Test
  void a_pot_that_needs_more_burners_than_there_are_has_no_plan() {
    var problem = new InnerProblem(List.of(new Step(10, List.of(2))), List.of(1), List.of());

    int found = InnerSearch.find(problem, 5, 0, 1, schedules -> schedules < 100);

    assertThat(found).isEqualTo(InnerDecoder.NO_PLAN);
  }

  /** Source: Schwindt's ProGen/max, set j10; the optimum as listed with it. No order alone leads to it. */
  @Test
  void steps_that_are_held_back_lead_to_a_best_plan_with_greatest_gaps() {
    var problem = ProGenMaxFile.read(Published.lines("rcpsp-max/j10/PSP63.SCH"));

    int found = InnerSearch.find(problem, 200, 0, 1, schedules -> schedules < 10_000);

    assertThat(found).isEqualTo(67);
  }
}
