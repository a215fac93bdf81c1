package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Conduction;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Matter;
import ovenloom.model.menu.Work;

class WarmnessTest {

  private static Warmness of(Kind kind, double millimetres, double core, Arrives arrives) {
    return of(new Matter(kind, Length.mm(millimetres), null, null, null), core, arrives);
  }

  private static Warmness of(Matter matter, double core, Arrives arrives) {
    return new Warmness(Work.of(aSupperOf(aDish("food").matter(matter)
        .arrives(arrives)
        .step(aStep("cook").burner(BurnerSize.SMALL, core))).event()));
  }

  /** docs/wishes.md works it by hand. */
  @Test
  void roots_under_a_lid_are_cool_after_an_hour_and_a_half_and_not_after_an_hour() {
    Warmness roots = of(new Matter(Kind.TRAY_OF_PIECES, Length.mm(25), null, null, true), 85, Arrives.HOT);

    assertThat(roots.tenthsShort(0, 50)).isZero();
    assertThat(roots.tenthsShort(0, 90)).isEqualTo(86);
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void what_is_open_cools_sooner(Kind kind) {
    Length thick = Length.mm(40);

    assertThat(of(new Matter(kind, thick, null, null, false), 85, Arrives.HOT).tenthsShort(0, 90))
        .isGreaterThan(of(new Matter(kind, thick, null, null, true), 85, Arrives.HOT).tenthsShort(0, 90));
  }

  /** What conducts ten times as well has its heat at its surface sooner. */
  @Test
  void what_conducts_better_cools_sooner() {
    Matter usual = new Matter(Kind.CASSEROLE, Length.mm(70), null, null, null);
    Matter better = new Matter(Kind.CASSEROLE, Length.mm(70), null, new Conductivity(5_000), null);

    assertThat(of(better, 74, Arrives.HOT).tenthsShort(0, 90))
        .isGreaterThan(of(usual, 74, Arrives.HOT).tenthsShort(0, 90));
  }

  /** Fat holds half the heat of water: ASHRAE Handbook Refrigeration 2006, chapter 9. */
  @Test
  void what_is_fat_cools_sooner_than_what_is_water() {
    Matter water = new Matter(Kind.CASSEROLE, Length.mm(20), new Composition(1, 0, 0, 0, 0, 0), null, null);
    Matter fat = new Matter(Kind.CASSEROLE, Length.mm(20), new Composition(0, 0, 1, 0, 0, 0), null, null);

    assertThat(of(fat, 74, Arrives.HOT).tenthsShort(0, 40))
        .isGreaterThan(of(water, 74, Arrives.HOT).tenthsShort(0, 40));
  }

  @Test
  void what_is_done_below_sixty_need_be_no_hotter() {
    assertThat(of(Kind.DENSE_ROAST, 120, 54, Arrives.HOT).tenthsShort(0, 0)).isZero();
    assertThat(of(Kind.DENSE_ROAST, 120, 54, Arrives.HOT).tenthsShort(0, 30)).isPositive();
  }

  @Test
  void what_comes_late_is_as_hot_as_it_was_done() {
    assertThat(of(Kind.CASSEROLE, 50, 74, Arrives.HOT).tenthsShort(0, -30)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"5, 10", "20, 30", "50, 70"})
  void the_thicker_the_slower(double thin, double thick) {
    assertThat(of(Kind.CASSEROLE, thin, 74, Arrives.HOT).tenthsShort(0, 90))
        .isGreaterThan(of(Kind.CASSEROLE, thick, 74, Arrives.HOT).tenthsShort(0, 90));
  }

  /** Above a Fourier number of 0.2 the first term is all there is (Cengel and Ghajar, chapter 4): from one minute to the next. */
  @ParameterizedTest
  @CsvSource({"CASSEROLE, 50", "DENSE_ROAST, 120", "WHOLE_BIRD, 130"})
  void it_shrinks_at_the_rate_at_which_the_whole_series_does_in_the_end(Kind kind, double millimetres) {
    Body body = kind.body(Length.mm(millimetres));
    Conduction series = new Conduction(body.shape(), body.biot(10));
    double aMinute = body.material().diffusivity() * 60 / (body.half() * body.half());

    double ratio = series.inTheMiddle(1 + aMinute) / series.inTheMiddle(1);

    assertThat(Math.exp(-body.coolingRate(10))).isCloseTo(ratio, within(1e-6));
  }
}
