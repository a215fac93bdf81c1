package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Work;
import ovenloom.solver.supper.Suppers;

class FromTheHeatTest {

  @TempDir
  private Path folder;

  private Work work;

  @BeforeEach
  void a_stew_that_is_heated_again_and_a_salad() throws IOException {
    work = Work.of(Suppers.withDishes(folder, """
          - dish: Stew
            arrives: hot
            tags: [not tcs]
            steps:
              - {do: simmer, takes: 60 min, burner: large, in: mixing bowl, keeps: {fridge: 2 days}}
              - {do: heat, takes: 20 min, burner: large, in: mixing bowl, keeps: {counter: 1 h}}
              - {do: plate, takes: 5 min, hands: throughout}
          - dish: Salad
            arrives: cool
            tags: [not tcs]
            steps: [{do: boil, takes: 5 min, burner: large, in: mixing bowl, keeps: {counter: 1 h}}]
        """));
  }

  private Dish dish(String name) {
    return work.event().dishes().stream().filter(dish -> dish.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void a_dish_that_is_heated_again_counts_from_then_on() {
    FromTheHeat hot = new FromTheHeat(work);

    assertThat(hot.of(dish("Stew")).stream().map(step -> work.steps().get(step).step().name()))
        .containsExactly("heat", "plate");
  }

  @Test
  void what_is_to_be_cool_is_not_among_them() {
    FromTheHeat hot = new FromTheHeat(work);

    assertThat(hot.dishes()).isEqualTo(List.of(dish("Stew")));
    assertThat(hot.of(dish("Salad"))).isEmpty();
  }
}
