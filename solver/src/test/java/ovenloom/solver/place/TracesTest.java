package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.model.plan.Score;
import ovenloom.solver.supper.Suppers;

/** A torte with nuts, a cream of nuts by way of praline, a sponge that is free of them, its syrup, and a scrub in two steps. */
class TracesTest {

  private static final String MENU = """
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2027-06-12 19:00}]
      cooks: [{name: Ines, hours: {day before: 8:00-20:00, on the day: 8:00-20:00}}]
      kitchen: {from: home}
      dishes:
        - {dish: Torte, tags: contains nuts, steps: [{do: mix, takes: 20 min, hands: throughout}]}
        - {dish: Praline, tags: contains nuts, steps: [{do: buy, takes: 5 min}]}
        - {dish: Cream, steps: [{do: whip, takes: 10 min, hands: throughout, uses: Praline/buy}]}
        - {dish: Syrup, steps: [{do: boil, takes: 10 min, hands: throughout}]}
        - {dish: Sponge, tags: free of nuts, steps: [{do: mix, takes: 20 min, hands: throughout, uses: Syrup/boil}]}
        - dish: Scrub
          food: no
          tags: clean down
          steps: [{do: boards, takes: 5 min, hands: throughout}, {do: knives, takes: 5 min, hands: throughout}]
      """;

  private static final int NOON = 720;

  /** What a break costs, and so many minutes. */
  private static final int BROKEN = 30;

  @TempDir
  private Path folder;

  private Draft draft;

  @BeforeEach
  void everything_is_done_when_it_is_out_of_the_way() throws IOException {
    draft = new Draft(Runs.of(Suppers.read(folder, MENU)));
    put("Syrup", "boil", 500);
    put("Sponge", "mix", 520);
    put("Scrub", "boards", 1100);
    put("Scrub", "knives", 1105);
    put("Praline", "buy", 900);
    put("Torte", "mix", 1000);
    put("Cream", "whip", 1020);
  }

  private void put(String dish, String step, int from) {
    Run run = draft.runs()
        .runs()
        .stream()
        .filter(each -> each.dish().name().equals(dish) && each.step().name().equals(step))
        .findFirst()
        .orElseThrow();
    put(run, from);
  }

  private void put(Run run, int from) {
    int to = from + run.minutes();
    draft.start[run.index()] = from;
    draft.end[run.index()] = to;
    draft.hands[run.index()] = run.hands().isEmpty() ? new Crew.Taken[0]
        : new Crew.Taken[]{new Crew.Taken(from, to, List.of(0))};
  }

  private long shortfall() {
    new Traces(draft.runs()).check(draft);
    return draft.shortfall();
  }

  @Test
  void a_sponge_before_the_torte_is_well_to_the_minute() {
    put("Sponge", "mix", 980);
    assertThat(shortfall()).isZero();

    put("Sponge", "mix", 981);
    assertThat(shortfall()).isEqualTo(BROKEN + 1);
  }

  @Test
  void syrup_for_the_sponge_is_no_less_free_of_nuts_and_cream_of_praline_no_more() {
    put("Torte", "mix", 1300);
    put("Syrup", "boil", 1035);

    assertThat(shortfall()).isEqualTo(BROKEN + 25);
  }

  @Test
  void a_scrub_that_is_not_quite_over_is_the_nearer_way_out() {
    put("Torte", "mix", NOON);
    put("Scrub", "boards", NOON + 20);
    put("Scrub", "knives", NOON + 25);
    put("Sponge", "mix", NOON + 30);
    assertThat(shortfall()).isZero();

    put("Sponge", "mix", NOON + 27);
    assertThat(shortfall()).isEqualTo(BROKEN + 3);
  }

  /** Everything anywhere about a midnight, against the audit, which knows nothing of this. */
  @Test
  void what_is_in_order_here_is_in_order_for_the_audit() {
    Random random = new Random(7);
    Set<Boolean> seen = new HashSet<>();
    for (int turn = 0; turn < 2000; turn++) {
      draft.clear();
      int spread = 20 + random.nextInt(100);
      draft.runs().runs().forEach(run -> put(run, random.nextInt(2 * spread) - spread));
      boolean broken = Audit
          .of(draft.runs().event(),
              FairCopy.of(draft, List.of(), new Score(0, Map.of(), Map.of(), 0, 0)))
          .stream()
          .anyMatch(each -> each.rule().equals("allergens apart"));

      assertThat(shortfall() > 0).as("turn %s", turn).isEqualTo(broken);
      seen.add(broken);
    }
    assertThat(seen).hasSize(2);
  }
}
