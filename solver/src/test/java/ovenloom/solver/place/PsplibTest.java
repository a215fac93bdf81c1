package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ovenloom.solver.bench.PsplibFile;
import ovenloom.solver.bench.Published;

/**
 * The timeline on which appliances, room to put down and circuits are booked keeps published problems, forward and back; the
 * decoder of kitchens is not in it. Source: PSPLIB j30, Kolisch and Sprecher 1996; optima as proven by several exact
 * solvers.
 */
class PsplibTest {

  private static final int CRITICAL_PATH = 1;
  private static final int OPTIMUM = 3;

  private static InnerProblem problem(String name) {
    return PsplibFile.read(Published.lines("rcpsp/j30/" + name + ".sm"));
  }

  private static int optimum(String name) {
    return Published.rows("rcpsp/bestknown-j30.csv")
        .stream()
        .filter(row -> row[0].equals(name))
        .mapToInt(row -> Integer.parseInt(row[OPTIMUM]))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void jobs_in_the_order_written_make_a_plan_that_holds() {
    var problem = problem("j301_1");
    var forward = InnerDecoder.forward(problem);
    var backward = InnerDecoder.backward(problem);
    int[] order = Orders.asWritten(problem.steps().size());

    PlanCheck.holds(problem, forward, forward.decode(order));
    PlanCheck.holds(problem, backward, backward.decode(order));
  }

  @Test
  void no_order_beats_a_proven_optimum_and_none_is_shorter_than_the_critical_path() {
    for (String[] row : Published.rows("rcpsp/bestknown-j30.csv")) {
      var problem = problem(row[0]);
      int count = problem.steps().size();
      var random = new Random(row[0].hashCode());
      for (var decoder : Arrays.asList(InnerDecoder.forward(problem), InnerDecoder.backward(problem))) {
        for (int i = 0; i < 10; i++) {
          int makespan = decoder.decode(Orders.shuffled(count, random));

          assertThat(makespan)
              .as(row[0])
              .isGreaterThanOrEqualTo(Integer.parseInt(row[OPTIMUM]))
              .isGreaterThanOrEqualTo(Integer.parseInt(row[CRITICAL_PATH]));
          PlanCheck.holds(problem, decoder, makespan);
        }
      }
    }
  }

  @Test
  void shifting_one_job_at_a_time_finds_the_proven_optimum_of_the_first_problem() {
    var problem = problem("j301_1");
    var decoder = InnerDecoder.forward(problem);
    var random = new Random(1);
    int[] order = Orders.shuffled(problem.steps().size(), random);
    int best = decoder.decode(order);

    for (int schedules = 1; schedules < 1000; schedules++) {
      int[] shifted = Orders.shifted(order, random);
      int makespan = decoder.decode(shifted);
      if (makespan <= best) {
        best = makespan;
        order = shifted;
      }
    }

    assertThat(best).isEqualTo(optimum("j301_1"));
  }
}
