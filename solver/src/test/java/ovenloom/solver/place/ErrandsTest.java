package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.model.plan.Score;
import ovenloom.solver.supper.Suppers;

/** A stock that simmers for an hour, beans that soak, bread from the shop, and one host with a helper in the evening. */
class ErrandsTest {

  private static final String MENU = """
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2027-06-12 19:00}]
      cooks:
        - {name: Ines, hours: {on the day: 8:00-20:00}}
        - {name: Omar, hours: {on the day: 17:00-20:00}}
      kitchen: {from: home}
      dishes:
        - {dish: Stock, steps: [{do: simmer, takes: 60 min, burner: small, in: saucepan, keeps: {burner: 9 h}}]}
        - {dish: Beans, steps: [{do: soak, takes: 90 min, in: bowl, keeps: {counter: 9 h}}]}
        - {dish: Bread, steps: [{do: buy, takes: 45 min, hands: throughout, away: yes, keeps: {counter: 1 day}}]}
      """;

  @TempDir
  private Path folder;

  /** Everything anywhere in an afternoon, against the audit, which knows nothing of this. */
  @Test
  void nobody_is_out_who_is_needed_where_all_is_in_order_here() throws IOException {
    Runs runs = Runs.of(Suppers.read(folder, MENU));
    Draft draft = new Draft(runs);
    Random random = new Random(5);
    Set<Boolean> seen = new HashSet<>();
    for (int turn = 0; turn < 2000; turn++) {
      draft.clear();
      runs.runs().forEach(run -> put(draft, run, 900 + random.nextInt(140)));
      runs.waits()
          .forEach(wait -> draft.waits.set(runs.waits().indexOf(wait),
              List.of(WaitPart.onTheCounter(draft.end[wait.run()], 19 * 60))));
      new Errands(runs).check(draft);
      boolean broken = Audit
          .of(runs.event(), FairCopy.of(draft, List.of(), new Score(0, Map.of(), Map.of(), 0, 0)))
          .stream()
          .anyMatch(each -> each.rule().equals("someone there"));

      assertThat(draft.shortfall() > 0).as("turn %s", turn).isEqualTo(broken);
      seen.add(broken);
    }
    assertThat(seen).hasSize(2);
  }

  private static void put(Draft draft, Run run, int from) {
    int to = from + run.minutes();
    draft.start[run.index()] = from;
    draft.end[run.index()] = to;
    if (run.footing().onABurner()) {
      draft.burners[run.index()] = new int[]{3};
    }
    draft.hands[run.index()] = run.hands().isEmpty() ? new Crew.Taken[0]
        : new Crew.Taken[]{new Crew.Taken(from, to, List.of(0))};
  }
}
