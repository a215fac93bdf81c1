package ovenloom.solver.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class SolvingTest {

  private static final int MARKS = 20;
  private static final double FOR_EVER = 1e9;

  /** The shortest ruler of 20 marks, no two of them as far apart as any other two: years of work for one machine. */
  @Test
  @Timeout(60)
  void a_question_that_takes_for_ever_ends_where_somebody_says_stop() {
    assumeTrue(NativeLibrary.isLoaded());
    Solving solving = new Solving(FOR_EVER);

    try (ScheduledExecutorService other = Executors.newSingleThreadScheduledExecutor()) {
      var saying = other.scheduleWithFixedDelay(solving::stop, 0, 20, TimeUnit.MILLISECONDS);
      solving.solve(ruler());
      saying.cancel(false);
    }

    assertThat(solving.isRefuted()).isFalse();
  }

  private static CpModel ruler() {
    CpModel model = new CpModel();
    List<IntVar> marks = new ArrayList<>();
    List<LinearExpr> apart = new ArrayList<>();
    for (int i = 0; i < MARKS; i++) {
      IntVar mark = model.newIntVar(0, MARKS * MARKS, "mark " + i);
      marks.forEach(before -> apart.add(
          LinearExpr.newBuilder().add(mark).addTerm(before, -1).build()));
      if (i > 0) {
        model.addLessThan(marks.getLast(), mark);
      }
      marks.add(mark);
    }
    model.addAllDifferent(apart);
    model.minimize(marks.getLast());
    return model;
  }
}
