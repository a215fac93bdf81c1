package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Keeps;
import ovenloom.model.plan.Where;

class LongEnoughTest {

  private final KitchenRule rule = new LongEnough();

  /** Five centimetres deep, seventy minutes at 180 C from the counter. */
  private static final Dishes LASAGNE = aDish("lasagne").kind(Kind.CASSEROLE, Length.mm(50))
      .step(aStep("build").takes(10).in("dish").keeps(new Keeps(600, null, null, Map.of("fridge", 2880))))
      .step(aStep("bake").takes(70).bake(160, 180, 200));

  private List<Break> baked(int minutes, int celsius, Where before) {
    int from = at("19:00") - minutes;
    return aPlanFor(aSupperOf(LASAGNE))
        .with(aRun("lasagne", "build", "9:00", 10))
        .with(aStay("lasagne", "build", "9:10").in(before, from))
        .with(aRun("lasagne", "bake", from, minutes).oven("oven", celsius))
        .heldAgainst(rule);
  }

  private List<Break> fromTheCounter(int minutes, int celsius) {
    return baked(minutes, celsius, new Where.Counter());
  }

  private List<Break> fromTheFridge(int minutes) {
    return baked(minutes, 180, new Where.OnShelf("fridge", List.of("top")));
  }

  @Test
  void the_card_comes_true_as_it_is_written() {
    assertThat(fromTheCounter(70, 180)).isEmpty();
    assertThat(fromTheCounter(69, 180)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1))
        .satisfies(each -> assertThat(each.what()).isEqualTo("needs 70 min at 180 C and has 69"));
  }

  /** The press for households: 10 to 20 min longer from the fridge. */
  @Test
  void straight_from_the_fridge_it_needs_ten_to_twenty_minutes_more() {
    assertThat(fromTheFridge(70)).singleElement()
        .satisfies(each -> assertThat(each.off()).isBetween(10L, 20L));
    assertThat(fromTheFridge(90)).isEmpty();
  }

  /** A cook's rule that is wrong: minutes in proportion to the degrees would be 79 at 160 C. */
  @Test
  void a_cooler_oven_takes_longer_and_a_hotter_one_less() {
    assertThat(fromTheCounter(70, 160)).isNotEmpty();
    assertThat(fromTheCounter(70, 200)).isEmpty();
    assertThat(fromTheCounter(66, 200)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"84, 0", "85, 1", "90, 6"})
  void a_fifth_too_long_is_the_most(int minutes, int off) {
    assertThat(fromTheCounter(minutes, 180)).extracting(Break::off)
        .isEqualTo(off == 0 ? List.of() : List.of((long) off));
  }

  @Test
  void it_is_asked_only_of_plans_that_keep_the_other_rules() {
    Plans late = aPlanFor(aSupperOf(LASAGNE)).with(aRun("lasagne", "bake", "18:30", 10).oven("oven", 180));

    assertThat(Audit.of(late.plan().event(), late.plan())).extracting(Break::rule)
        .isNotEmpty()
        .doesNotContain("long enough");
  }
}
