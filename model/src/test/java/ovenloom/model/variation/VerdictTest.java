package ovenloom.model.variation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Standing.Fits;
import ovenloom.model.variation.Standing.NoPlan;
import ovenloom.model.variation.Standing.NoneFound;

class VerdictTest {

  private static final Wishes CALM_FIRST = new Wishes(Map.of(Wish.CALM, 10));

  private static Fits found(long lost, long wishes, @Nullable Bound bound) {
    return found(lost, wishes, bound, Wishes.EVEN);
  }

  private static Fits found(long lost, long wishes, @Nullable Bound bound, Wishes weights) {
    return new Fits(Score.of(0, Map.of("Soup", lost), Map.of(Wish.ENERGY, wishes), weights, 0), bound,
        weights);
  }

  /** The other loses 100 and has 80 of wishes; of it is proven that none loses less than 90, and those that do have 50. */
  @ParameterizedTest
  @CsvSource({"89, 900, BETTER", "90, 49, BETTER", "90, 50, AHEAD", "95, 0, AHEAD", "100, 79, AHEAD",
      "100, 80, LEVEL", "100, 81, BEHIND", "101, 0, BEHIND"})
  void only_what_is_below_the_others_bound_is_better_beyond_doubt(long lost, long wishes, Verdict verdict) {
    Standing one = found(lost, wishes, null);
    Standing other = found(100, 80, new Bound(90, 50));

    assertThat(Verdict.of(one, other)).isEqualTo(verdict);
  }

  @Test
  void where_nothing_is_proven_of_the_other_nothing_is_beyond_doubt() {
    assertThat(Verdict.of(found(0, 0, new Bound(0, 0)), found(9_000, 0, null))).isEqualTo(Verdict.AHEAD);
  }

  @Test
  void a_plan_is_better_than_a_proof_that_there_is_none_and_ahead_of_a_search_in_vain() {
    Standing plan = found(9_000, 900, null);

    assertThat(Verdict.of(plan, new NoPlan())).isEqualTo(Verdict.BETTER);
    assertThat(Verdict.of(new NoPlan(), plan)).isEqualTo(Verdict.WORSE);
    assertThat(Verdict.of(plan, new NoneFound())).isEqualTo(Verdict.AHEAD);
    assertThat(Verdict.of(new NoneFound(), plan)).isEqualTo(Verdict.BEHIND);
  }

  @Test
  void without_a_plan_nobody_is_ahead() {
    assertThat(Verdict.of(new NoPlan(), new NoneFound())).isEqualTo(Verdict.LEVEL);
    assertThat(Verdict.of(new NoneFound(), new NoPlan())).isEqualTo(Verdict.LEVEL);
    assertThat(Verdict.of(new NoPlan(), new NoPlan())).isEqualTo(Verdict.LEVEL);
  }

  @Test
  void points_of_wishes_that_are_weighed_otherwise_are_not_compared() {
    Standing one = found(100, 0, null);

    assertThat(Verdict.of(one, found(100, 80, new Bound(100, 50), CALM_FIRST))).isEqualTo(Verdict.LEVEL);
    assertThat(Verdict.of(one, found(101, 0, new Bound(101, 0), CALM_FIRST))).isEqualTo(Verdict.BETTER);
  }

  @ParameterizedTest
  @CsvSource({"89, 900", "90, 49"})
  void a_bound_that_its_own_plan_shows_to_be_wrong_is_refused(long lost, long wishes) {
    assertThatThrownBy(() -> found(lost, wishes, new Bound(90, 50)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Bound[atTheTable=90, wishes=50]");
  }

  static LongStream seeds() {
    return LongStream.range(0, 500);
  }

  /** Few numbers, so that many are the same. */
  private static Standing any(SplittableRandom random) {
    Score score = Score.of(0, Map.of("Soup", random.nextLong(4)), Map.of(Wish.CALM, random.nextLong(4)),
        Wishes.EVEN, 0);
    Bound bound = new Bound(random.nextLong(4), random.nextLong(4));
    return switch (random.nextInt(6)) {
      case 0 -> new NoPlan();
      case 1 -> new NoneFound();
      case 2 -> new Fits(score, null, Wishes.EVEN);
      default -> new Fits(score, bound.allows(score) ? bound : null,
          random.nextBoolean() ? Wishes.EVEN : CALM_FIRST);
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void seen_from_the_other_side_it_is_the_opposite(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Standing one = any(random);
    Standing other = any(random);

    assertThat(Verdict.of(other, one)).isEqualTo(opposite(Verdict.of(one, other)));
  }

  private static Verdict opposite(Verdict verdict) {
    return switch (verdict) {
      case BETTER -> Verdict.WORSE;
      case AHEAD -> Verdict.BEHIND;
      case LEVEL -> Verdict.LEVEL;
      case BEHIND -> Verdict.AHEAD;
      case WORSE -> Verdict.BETTER;
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nothing_is_better_than_itself_nor_a_plan_than_its_own_bound(long seed) {
    Standing one = any(new SplittableRandom(seed));

    assertThat(Verdict.of(one, one)).isEqualTo(Verdict.LEVEL);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void once_of_the_other_the_best_is_found_that_can_be_who_is_ahead_is_so_beyond_doubt(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Standing one = any(random);
    Bound bound = new Bound(random.nextLong(4), random.nextLong(4));
    Fits some = found(bound.atTheTable() + random.nextLong(3), bound.wishes() + random.nextLong(3), bound);
    Fits best = found(bound.atTheTable(), bound.wishes(), bound);

    assertThat(Verdict.of(one, best)).isNotEqualTo(Verdict.AHEAD);
    assertThat(Verdict.of(one, best) == Verdict.BETTER).isEqualTo(Verdict.of(one, some) == Verdict.BETTER);
  }
}
