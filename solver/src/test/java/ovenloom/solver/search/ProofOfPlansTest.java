package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Extents;
import ovenloom.solver.proof.Proof;

/** In kitchens in which a plan is known to exist, none is called impossible, and none is better than its bound. */
class ProofOfPlansTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "kitchen {0}")
  @ValueSource(longs = {1, 3, 6, 9, 10, 11, 20, 21})
  void the_known_plan_is_neither_refused_nor_better_than_its_bound(long seed) throws Exception {
    BuiltAround kitchen = BuiltAround.of(seed, BuiltAroundTest.MOST_STEPS, folder);
    Proof proof = new Proof(Extents.of(kitchen.event()));

    proof.run();

    assertThat(proof.clash()).isNull();
    Bound bound = Objects.requireNonNull(proof.bound());
    Score score = Reckoning.of(kitchen.event(), kitchen.known());
    assertThat(BuiltAroundTest.isBetter(score, bound)).as("%s better than %s", score, bound).isFalse();
  }
}
