package ovenloom.model.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Score;

class CostTest {

  private static final Wishes CALM_COUNTS_THRICE = new Wishes(Map.of(Wish.CALM, 3));

  private final Score now = score(Map.of("roast", 40L), Map.of(Wish.CALM, 10L, Wish.ENERGY, 7L), 100);

  @Test
  void each_kind_counts_with_its_weight_and_the_largest_comes_first() {
    Cost cost = cost(score(Map.of("roast", 40L), Map.of(Wish.CALM, 14L, Wish.ENERGY, 2L), 90));

    assertThat(cost.wishes()).containsExactly(Map.entry(Wish.CALM, 12L), Map.entry(Wish.ENERGY, -5L));
    assertThat(cost.wishesInAll()).isEqualTo(7);
    assertThat(cost.early()).isEqualTo(-10);
    assertThat(cost.isLess()).as("early counts only where wishes are equal").isFalse();
  }

  @Test
  void what_is_warmer_at_the_table_is_better_whatever_the_wishes_say() {
    Cost cost = cost(score(Map.of("roast", 39L), Map.of(Wish.CALM, 90L, Wish.ENERGY, 7L), 100));

    assertThat(cost.atTheTable()).containsExactly(Map.entry("roast", -1L));
    assertThat(cost.isLess()).isTrue();
  }

  @Test
  void the_same_costs_nothing() {
    assertThat(cost(now).isNothing()).isTrue();
    assertThat(cost(now).isLess()).isFalse();
  }

  private Cost cost(Score then) {
    return Cost.of(now, then, CALM_COUNTS_THRICE);
  }

  private static Score score(Map<String, Long> table, Map<Wish, Long> points, long early) {
    return Score.of(0, table, points, CALM_COUNTS_THRICE, early);
  }
}
