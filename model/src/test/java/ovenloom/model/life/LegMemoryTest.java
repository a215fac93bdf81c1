package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;

class LegMemoryTest {

  private static Plan supper(String simmered, String ended) {
    Plans plan = aPlanFor(aSupperOf(aDish("stew")
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("pot"))
        .step(aStep("season").takes(5))))
        .with(aRun("stew", "simmer", simmered, 30).burners("small"))
        .with(aStay("stew", "simmer", ended).counter("18:50"))
        .with(aRun("stew", "season", "18:50", 5));
    return plan.plan();
  }

  private static double atTheEnd(Plan plan, Cards cards, Unsaid unsaid) {
    Life life = Life.of(plan, cards, 1, unsaid);
    Leg last = life.of(cards.work().steps().getLast()).getLast();
    return last.at(last.when().to()).mean();
  }

  @Test
  void what_is_remembered_is_as_what_is_followed_anew() {
    Plan early = supper("17:00", "17:30");
    Plan late = supper("18:15", "18:45");
    Cards cards = new Cards(Work.of(early.event()));
    for (Unsaid unsaid : Unsaid.values()) {
      for (Plan plan : new Plan[]{early, late, early}) {
        Cards anew = new Cards(Work.of(plan.event()));
        assertThat(atTheEnd(plan, cards, unsaid)).isEqualTo(atTheEnd(plan, anew, unsaid));
      }
    }
    assertThat(atTheEnd(early, cards, Unsaid.OPEN)).isLessThan(atTheEnd(late, cards, Unsaid.OPEN));
  }

  @Test
  void what_is_as_it_was_is_not_followed_again() {
    Plan plan = supper("17:00", "17:30");
    Cards cards = new Cards(Work.of(plan.event()));

    assertThat(Life.of(plan, cards, 1, Unsaid.OPEN).of(cards.work().steps().getLast()))
        .isSameAs(Life.of(plan, cards, 1, Unsaid.OPEN).of(cards.work().steps().getLast()));
  }
}
