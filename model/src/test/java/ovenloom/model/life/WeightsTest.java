package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Work;

/** What docs/rules/warm-load.md says of weights, worked by hand; common practice, no source. */
class WeightsTest {

  private static final double A_GRAM = 0.001;

  private static Dishes soup() {
    return aDish("soup").step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("bowl"));
  }

  private static double kilograms(Dishes dish) {
    Work work = Work.of(aSupperOf(dish).event());
    return new Weights(new Cards(work)).kilograms(work.steps().getFirst());
  }

  @Test
  void scales_and_jugs_say_what_it_weighs_and_an_egg_is_fifty_grams() {
    assertThat(kilograms(soup().ingredient("leeks", "1.5 kg"))).isCloseTo(1.5, within(A_GRAM));
    assertThat(
        kilograms(soup().ingredient("leeks", "1.5 kg").ingredient("stock", "2 l").ingredient("eggs", "4")))
        .isCloseTo(3.7, within(A_GRAM));
  }

  /** Ten portions. */
  @Test
  void where_nobody_says_a_portion_is_a_quarter_of_a_kilogram() {
    assertThat(kilograms(soup())).isCloseTo(2.5, within(A_GRAM));
    assertThat(kilograms(soup().batches(5))).isCloseTo(0.5, within(A_GRAM));
  }

  @Test
  void what_is_done_once_for_all_batches_weighs_as_much_as_all_of_them() {
    Dishes dough = aDish("rolls").batches(5)
        .ingredient("flour", "400 g")
        .step(aStep("mix").takes(10).once().in("bowl"))
        .step(aStep("shape").takes(10).in("tray"));
    Work work = Work.of(aSupperOf(dough).event());
    Weights weights = new Weights(new Cards(work));

    assertThat(work.steps()).extracting(weights::kilograms).containsExactly(2.0, 0.4, 0.4, 0.4, 0.4, 0.4);
  }

  /** A pot of 20 x 20 cm filled 2 cm deep holds 0.8 l, and soup is near 1 kg a litre. */
  @Test
  void no_more_is_in_a_vessel_than_it_holds() {
    Dishes shallow = aDish("soup").kind(Kind.LIQUID, Length.mm(20))
        .ingredient("stock", "3 l")
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"));

    assertThat(kilograms(shallow)).isCloseTo(0.8, within(0.04));
  }

  /** A roast stands above its tin. */
  @Test
  void a_roast_is_not_measured_by_its_tin() {
    assertThat(kilograms(aDish("lamb").kind(Kind.DENSE_ROAST, Length.mm(120))
        .ingredient("leg of lamb", "9 kg")
        .step(aStep("roast").takes(90).bake(160).in("pot")))).isCloseTo(9, within(A_GRAM));
  }
}
