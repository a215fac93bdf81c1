package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.solver.bench.ProGenMaxFile;
import ovenloom.solver.bench.Published;

/**
 * The timeline on which appliances, room to put down and circuits are booked, with greatest gaps between the steps; the
 * decoder of kitchens is not in it. Source: ProGen/max sets of Schwindt; bounds as found by exact solvers.
 */
class ProGenMaxTest {

  private static final int SET = 0;
  private static final int FILE = 2;
  private static final int STATUS = 3;
  private static final int BEST_BOUND = 4;

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"j10", "j20", "j30", "ubo10", "ubo20"})
  void a_plan_keeps_every_least_and_greatest_gap_and_none_is_found_where_there_is_none(String set) {
    int solvable = 0;
    int solved = 0;
    for (String[] row : Published.rows("rcpsp-max/bestknown-rcpsp-max.csv")) {
      if (row[SET].equals(set)) {
        solvable += row[STATUS].equals("infeasible") ? 0 : 1;
        solved += solves(row) ? 1 : 0;
      }
    }

    assertThat(solved).isBetween(solvable * 98 / 100, solvable);
  }

  private static boolean solves(String[] row) {
    var problem = ProGenMaxFile.read(Published.lines(row[FILE]));
    var decoder = InnerDecoder.forward(problem);
    var random = new Random(1);
    boolean solved = false;
    for (int i = 0; i < 20; i++) {
      int makespan = decoder.decode(Orders.shuffled(problem.steps().size(), random));
      if (makespan != InnerDecoder.NO_PLAN) {
        solved = true;
        PlanCheck.holds(problem, decoder, makespan);
        assertThat(row[STATUS]).as(row[FILE]).isNotEqualTo("infeasible");
        assertThat(makespan)
            .as(row[FILE])
            .isGreaterThanOrEqualTo(Integer.parseInt(row[BEST_BOUND]));
      }
    }
    return solved;
  }
}
