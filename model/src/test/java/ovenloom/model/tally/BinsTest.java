package ovenloom.model.tally;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BinsTest {

  @Test
  void few_are_told_exactly() {
    Bins bins = new Bins();
    bins.add(63, 101);
    bins.add(63, 101);
    bins.add(64, 101);

    assertThat(bins.width()).isEqualTo(1);
    assertThat(bins.counts()).containsEntry(new Bins.Bin(63, 101), 2L)
        .containsEntry(new Bins.Bin(64, 101), 1L);
  }

  @Test
  void many_share_wider_bins_and_none_is_lost() {
    Bins bins = new Bins();
    for (int hands = 0; hands < 100; hands++) {
      for (int energy = 0; energy < 100; energy++) {
        bins.add(hands, energy);
      }
    }

    assertThat(bins.width()).as("100 / 4 = 25, and 25 x 25 = 625 are few enough; 50 x 50 are not")
        .isEqualTo(4);
    assertThat(bins.counts()).hasSize(625).allSatisfy((bin, count) -> assertThat(count).isEqualTo(16));
  }
}
