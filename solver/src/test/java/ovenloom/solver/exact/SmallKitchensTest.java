package ovenloom.solver.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/**
 * In kitchens so small that the best plan can be proven, nobody finds a better one, and the search comes to it.
 *
 * <p>Three say what a plan is: the rules as CP-SAT understands them, the audit, and the search. What is proven of the kitchens
 * is kept in a file; a few are proven anew each time, and with {@code -Dovenloom.proofs=write} all of them, into the file.
 */
class SmallKitchensTest {

  /** Of the first hundred those that are proven in a few seconds. */
  private static final long[] SEEDS = {
      1, 2, 3, 4, 5, 10, 11, 12, 13, 16, 19, 26, 29, 31, 36, 37, 39, 43, 44, 46, 48, 49, 53, 55, 56, 57, 59,
      61, 67, 68};

  /** Proven anew each time: with and without a plan, with a roast that stays in its oven, with food on the counter. */
  private static final long[] A_FEW = {1, 12, 37, 46, 68};

  private static final boolean ALL = "write".equals(System.getProperty("ovenloom.proofs"));

  /** Where the search stays at most so many points above the best. */
  private static final Map<Long, Long> SHORT_BY = Map.of(26L, 6L);

  private static final Map<Long, Proof> KEPT = Proof.kept(Proof.SMALL);
  private static final Map<Long, Proof> ANEW = new TreeMap<>();

  @TempDir
  private Path folder;

  static LongStream all() {
    return Arrays.stream(SEEDS);
  }

  static LongStream toBeProven() {
    return Arrays.stream(ALL ? SEEDS : A_FEW);
  }

  @ParameterizedTest(name = "kitchen {0}")
  @MethodSource("all")
  void the_search_comes_to_the_best_plan_and_never_to_a_better_one(long seed) throws IOException {
    AgainstTheProof.search(SmallKitchen.of(seed, folder), kept(seed), SHORT_BY.getOrDefault(seed, 0L));
  }

  /** The relaxation that is shipped is held against the full model. */
  @ParameterizedTest(name = "kitchen {0}")
  @MethodSource("all")
  void no_bound_is_above_what_is_proven(long seed) throws IOException {
    AgainstTheProof.relaxation(SmallKitchen.of(seed, folder), kept(seed));
  }

  private Proof kept(long seed) throws IOException {
    Proof proof = Objects.requireNonNull(KEPT.get(seed), "no proof is kept");
    assertThat(proof.text()).as("hash of the supper proven")
        .isEqualTo(SmallKitchen.text(seed, folder).hashCode());
    return proof;
  }

  @ParameterizedTest(name = "kitchen {0}")
  @MethodSource("toBeProven")
  void what_is_kept_is_proven_and_the_audit_agrees(long seed) throws IOException {
    Event event = SmallKitchen.of(seed, folder);

    Answer answer = Exact.of(event);

    Proof proof = Proof.of(seed, SmallKitchen.text(seed, folder), answer);
    ANEW.put(seed, proof);
    if (answer instanceof Answer.Best(Plan best)) {
      AgainstTheProof.audit(event, best);
    }
    if (!ALL) {
      assertThat(proof).isEqualTo(kept(seed));
    }
  }

  /** A law that is never put to the test holds easily. */
  @Test
  void most_kitchens_have_a_plan_and_some_have_none() {
    long planned = KEPT.values().stream().filter(Proof::isPossible).count();

    assertThat(planned).isBetween(SEEDS.length / 2L, SEEDS.length - 3L);
  }

  @AfterAll
  static void keep() throws IOException {
    if (ALL) {
      Proof.keep(Proof.SMALL, SmallKitchensTest.class, ANEW.values());
    }
  }
}
