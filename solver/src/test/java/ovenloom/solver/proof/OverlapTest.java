package ovenloom.solver.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Need;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

class OverlapTest {

  private static final Stretch WINDOW = new Stretch(10, 20);
  private static final int LAST = 30;

  @TempDir
  private Path folder;

  private Run run() throws IOException {
    return Runs.of(Suppers.read(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
        dishes:
          - {dish: Salad, steps: [{do: dress, takes: 20 min, hands: throughout, keeps: {counter: 3 h}}]}
        """)).runs().getFirst();
  }

  /** Shorter than the window, as long, longer: counted minute by minute. */
  @ParameterizedTest(name = "{0} minutes of work")
  @ValueSource(ints = {1, 3, 10, 14})
  void the_least_is_what_lies_inside_wherever_it_begins(int minutes) throws IOException {
    assumeTrue(NativeLibrary.isLoaded());
    Run run = run();
    for (int begins = 0; begins <= LAST; begins++) {
      Stretch inside = WINDOW.shared(new Stretch(begins, begins + minutes));

      assertThat(least(run, begins, 0, LAST, minutes)).as("from %d on", begins)
          .isEqualTo(inside == null ? 0 : inside.minutes());
    }
  }

  /** Where it cannot begin outside of a part of them, fewer cases are looked at. */
  @ParameterizedTest(name = "from {0} on")
  @ValueSource(ints = {0, 8, 11, 13, 16, 19, 25})
  void the_least_of_a_few_beginnings_is_that_of_the_best(int first) throws IOException {
    assumeTrue(NativeLibrary.isLoaded());
    Run run = run();

    for (int last = first; last <= LAST; last++) {
      int best = Integer.MAX_VALUE;
      for (int begins = first; begins <= last; begins++) {
        Stretch inside = WINDOW.shared(new Stretch(begins, begins + 5));
        best = Math.min(best, inside == null ? 0 : inside.minutes());
      }
      assertThat(least(run, -1, first, last, 5)).as("to %d", last).isEqualTo(best);
    }
  }

  /** @param begins where it begins; -1 wherever is best */
  private static long least(Run run, int begins, int first, int last, int minutes) {
    CpModel model = new CpModel();
    IntVar from = model.newIntVar(first, last, "from");
    if (begins >= 0) {
      model.addEquality(from, begins);
    }
    Need.Hands hands = new Need.Hands(new Need.Moment.Throughout(), 1, null);
    model.minimize(Overlap.of(model, new Stint(run, hands, from, first, last, minutes), WINDOW));
    Solving solving = new Solving(1);
    solving.solve(model);
    return solving.bound();
  }
}
