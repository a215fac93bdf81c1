package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ChillingTest {

  /** A heat balance with 334 kJ for each kilogram of ice, row T27 of the facts: four litres from 57.2 C to 5 C melt 2.6 kg. */
  @Test
  void four_litres_from_hot_to_cold_melt_over_two_and_a_half_kilograms_of_ice() {
    assertThat(Chilling.melted(4, 4180, 57.2 - 5)).isCloseTo(2.6, within(0.05));
  }
}
