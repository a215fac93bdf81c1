package ovenloom.model.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;

class BoundTest {

  /** Every plan loses 100 at the table, and those that lose just that have 50 of wishes. */
  private static final Bound BOUND = new Bound(100, 50);

  @ParameterizedTest
  @CsvSource({"100, 50, true", "100, 51, true", "100, 49, false", "99, 50, false", "99, 900, false",
      "101, 0, true"})
  void what_is_lost_at_the_table_comes_first_and_wishes_count_where_that_is_least(
      long lost, long wishes, boolean isAllowed) {
    Score score = Score.of(0, Map.of("Soup", lost), Map.of(Wish.CALM, wishes), Wishes.EVEN, 0);

    assertThat(BOUND.allows(score)).isEqualTo(isAllowed);
  }
}
