package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KindTest {

  /** Of water-rich foods from the Choi-Okos polynomials: 1.3 to 1.6e-7 m2/s; bread, which is half air and starch, is below. */
  @ParameterizedTest
  @EnumSource
  void heat_gets_through_it_as_through_food(Kind kind) {
    double diffusivity = kind.body(kind.thickness()).material().diffusivity();

    assertThat(diffusivity).isBetween(kind == Kind.BREAD ? 1.0e-7 : 1.25e-7, 1.6e-7);
  }

  @ParameterizedTest
  @EnumSource
  void its_middle_is_half_of_it_away(Kind kind) {
    assertThat(kind.body(kind.thickness()).half() * 2000).isEqualTo(kind.thickness().micrometres() / 1000.0);
  }
}
