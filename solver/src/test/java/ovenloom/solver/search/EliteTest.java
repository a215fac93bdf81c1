package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.supper.Suppers;

/** Salad and soup of two steps each: 0 and 2, 1 and 3. */
class EliteTest {

  private static final int STEPS = 4;

  @TempDir
  private Path folder;

  private Work work;

  @BeforeEach
  void cook() throws IOException {
    work = Work.of(Suppers.withDishes(folder, """
          - dish: Salad
            arrives: cool
            tags: [not tcs]
            steps:
              - {do: wash, takes: 10 min, hands: throughout, in: mixing bowl, keeps: {counter: 4 h}}
              - {do: dress, takes: 5 min, hands: throughout, in: mixing bowl, keeps: {counter: 4 h}}
          - dish: Soup
            arrives: hot
            tags: [not tcs]
            steps:
              - {do: chop, takes: 10 min, hands: throughout, in: mixing bowl, keeps: {counter: 4 h}}
              - {do: boil, takes: 20 min, burner: small, in: mixing bowl, keeps: {counter: 4 h}}
        """));
  }

  /** All steps so many minutes earlier, with their turns from the first to the last or the other way. */
  private static Decisions decisions(int earlier, boolean turned) {
    Decisions decisions = Decisions.open(STEPS);
    for (int step = 0; step < STEPS; step++) {
      decisions.setEarlier(step, earlier);
      decisions.setStep(turned ? STEPS - 1 - step : step, step);
    }
    return decisions;
  }

  private Set<String> children(Elite elite) {
    Set<String> children = new TreeSet<>();
    for (int seed = 0; seed < 300; seed++) {
      Decisions child = elite.child(work, new Random(seed));
      children.add(IntStream.range(0, STEPS).map(child::earlier).boxed().toList().toString());
    }
    return children;
  }

  @Test
  void a_child_does_each_dish_whole_as_one_of_its_parents_does() {
    Elite elite = new Elite();
    elite.add(decisions(10, false), 5);
    elite.add(decisions(20, true), 7);

    assertThat(children(elite)).containsExactly("[10, 10, 10, 10]", "[10, 20, 10, 20]", "[20, 10, 20, 10]",
        "[20, 20, 20, 20]");
  }

  @Test
  void it_gives_every_step_one_turn_in_the_order_of_the_parent_it_is_of() {
    Decisions child = Crossing.of(decisions(10, false), decisions(20, true), work, new Random(1));

    assertThat(IntStream.range(0, STEPS).map(child::step)).containsExactlyInAnyOrder(0, 1, 2, 3);
    double[] turns = child.turns();
    assertThat(turns[0] < turns[2]).isEqualTo(child.earlier(0) == 10);
    assertThat(turns[1] < turns[3]).isEqualTo(child.earlier(1) == 10);
  }

  @Test
  void of_two_that_cost_the_same_the_first_is_kept() {
    Elite elite = new Elite();
    elite.add(decisions(10, false), 5);
    elite.add(decisions(20, false), 5);

    assertThat(elite.isPlural()).isFalse();
    assertThat(children(elite)).containsExactly("[10, 10, 10, 10]");
  }

  @Test
  void the_dearest_are_forgotten() {
    Elite elite = new Elite();
    IntStream.rangeClosed(1, 20).forEach(each -> elite.add(decisions(each, false), 100 - each));

    assertThat(children(elite)).contains("[20, 20, 20, 20]", "[13, 13, 13, 13]")
        .noneMatch(child -> child.contains("[1,") || child.contains("12"));
  }
}
