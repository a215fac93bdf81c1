package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Order;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;
import ovenloom.solver.supper.Suppers;

class TrialTest {

  @TempDir
  private Path folder;

  private Trial trial(int guests) throws IOException {
    return new Trial(runs(guests), plan -> List.of());
  }

  private Runs runs(int guests) throws IOException {
    return Runs.of(Suppers.read(folder, """
        ovenloom: 1
        event: Supper
        guests: %d
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
        dishes:
          - {dish: Salad, steps: [{do: dress, takes: 20 min, hands: throughout, keeps: {counter: 3 h}}]}
        """.formatted(guests)));
  }

  private static Score score(long breaks, long wishes) {
    return new Score(breaks, Map.of(), Map.of(), wishes, 0);
  }

  /** 40 and 4, 40 and 120: what is lost at the table grows with those who sit there, and must not buy a break. */
  @Test
  void a_minute_short_weighs_forty_points_and_one_for_each_guest() throws IOException {
    Trial few = trial(4);
    Trial many = trial(120);

    assertThat(few.cost(score(2, 0))).isEqualTo(few.cost(score(0, 88)));
    assertThat(many.cost(score(2, 0))).isEqualTo(many.cost(score(0, 320)));
  }

  @Test
  void what_the_judge_refused_it_is_asked_again_when_it_is_met_again() throws IOException {
    Runs runs = runs(4);
    AtomicInteger asked = new AtomicInteger();
    Trial trial = new Trial(runs, plan -> {
      asked.incrementAndGet();
      return List.of(new Break("rule", "The cook minds.", List.of("Salad/dress"), null, 1,
          Break.Unit.MINUTES, "so"));
    });
    Order order = new Order(trial, new Turns(runs, new Decoder(runs)).open(), 5, List.of());

    assertThat(trial.of(order)).isEqualTo(trial.of(order)).isPositive();
    assertThat(asked).hasValue(2);
  }
}
