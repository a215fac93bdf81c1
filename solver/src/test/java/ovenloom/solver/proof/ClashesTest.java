package ovenloom.solver.proof;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ovenloom.solver.bench.Impossible;
import ovenloom.solver.place.Extents;

/** Kitchens from which one thing after another was taken, until a full model had no plan left: what clashes in them, asked anew. */
class ClashesTest {

  private static final int REFUTED_OF_A_HUNDRED = 95;

  /** One kitchen and the claims that clash in it, none where none are told. */
  private record Told(Impossible kitchen, Refutation refutation, List<Claim> clash) {

    private boolean isAClash() {
      return answer(clash) == CpSolverStatus.INFEASIBLE;
    }

    private boolean isNoneWithoutAnyOne() {
      return clash.stream().allMatch(dropped -> {
        List<Claim> others = new ArrayList<>(clash);
        others.remove(dropped);
        CpSolverStatus answer = answer(others);
        return answer == CpSolverStatus.FEASIBLE || answer == CpSolverStatus.OPTIMAL;
      });
    }

    private CpSolverStatus answer(Collection<Claim> claims) {
      CpSolver solver = new CpSolver();
      solver.getParameters().setNumWorkers(1).setMaxDeterministicTime(10);
      return solver.solve(refutation.model(claims::contains).model());
    }
  }

  private static final List<Told> TOLD = new ArrayList<>();

  @BeforeAll
  static void tell() throws IOException {
    for (Impossible kitchen : Impossible.kept()) {
      Extents extents = Extents.of(kitchen.event());
      Proof proof = new Proof(extents);
      proof.refute();
      List<Claim> clash = proof.clash();
      TOLD.add(
          new Told(kitchen, new Refutation(extents, relaxation -> false), clash == null ? List.of() : clash));
    }
  }

  @Test
  void what_is_just_impossible_is_refuted() {
    List<Impossible> missed = TOLD.stream()
        .filter(told -> told.clash().isEmpty())
        .map(Told::kitchen)
        .toList();

    assertThat(100 * (TOLD.size() - missed.size()) / TOLD.size())
        .as("refuted of a hundred, missed %s", missed)
        .isGreaterThanOrEqualTo(REFUTED_OF_A_HUNDRED);
  }

  @Test
  void each_clash_is_one_by_itself_and_none_without_any_one_of_its_claims() {
    List<Told> told = TOLD.stream().filter(each -> !each.clash().isEmpty()).toList();

    assertThat(told).isNotEmpty().allMatch(Told::isAClash).allMatch(Told::isNoneWithoutAnyOne);
  }
}
