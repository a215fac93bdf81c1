package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Matter;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Score;

/** The pie is out at 18:45, five minutes beyond the free ten for ten guests; twenty minutes were worked in the morning. */
class ScoredTest {

  private final KitchenRule rule = new Scored();

  @Test
  void a_plan_that_says_what_it_is_worth_is_believed() {
    assertThat(pie(Map.of("pie", 2660L), Map.of(Wish.CALM, 1L), 1, 45 + 540)).isEmpty();
  }

  @Test
  void every_figure_that_differs_is_named_with_by_how_much() {
    assertThat(pie(Map.of("pie", 2658L), Map.of(Wish.CALM, 3L, Wish.ENERGY, 1L), 4, 45 + 539))
        .extracting(Break::what)
        .containsExactly(
            "at the table: pie is 2660, not 2658",
            "calm is 1, not 3",
            "energy is 0, not 1",
            "wishes is 1, not 4",
            "early is 585, not 584");
    assertThat(pie(Map.of("pie", 2658L), Map.of(Wish.CALM, 3L, Wish.ENERGY, 1L), 4, 45 + 539))
        .extracting(Break::off)
        .containsExactly(2L, 2L, 1L, 3L, 1L);
  }

  @Test
  void a_figure_it_does_not_give_is_nothing() {
    assertThat(pie(Map.of(), Map.of(Wish.CALM, 1L), 1, 45 + 540)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2660));
  }

  @Test
  void a_dish_nobody_asked_for_loses_nothing() {
    assertThat(pie(Map.of("pie", 2660L, "cake", 7L), Map.of(Wish.CALM, 1L), 1, 45 + 540)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("at the table: cake"));
  }

  private List<Break> pie(Map<String, Long> atTheTable, Map<Wish, Long> points, long wishes, long early) {
    var supper = aSupperOf(
        aDish("pie").matter(new Matter(Kind.TRAY_OF_PIECES, Length.mm(2), null, null, true))
            .step(aStep("fill"))
            .step(aStep("bake").takes(30).bake(180)));
    return aPlanFor(supper)
        .with(aRun("pie", "fill", "10:00", 20).work("Host"))
        .with(aRun("pie", "bake", "18:15", 30).oven("oven", 180))
        .score(new Score(0, atTheTable, points, wishes, early))
        .heldAgainst(rule);
  }
}
