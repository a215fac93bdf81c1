package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.solver.supper.Suppers;

/** Warm food goes into a fridge a little at a time; common practice, no source. */
class WarmLoadTest {

  @TempDir
  private Path folder;

  private static String stew(String name, String weight, String cold) {
    return """
          - dish: %s
            arrives: cold
            kind: liquid
            tags: [not tcs]
            thick: 3 cm
            ingredients: {beans: %s}
            steps:
              - {do: simmer, takes: 20 min, burner: small, in: mixing bowl, hands: {first: 2 min}, keeps: {counter: 2 h}}
              - {do: chill, takes: 5 h, cold: %s, keeps: {fridge: 1 day}}
        """
        .formatted(name, weight, cold);
  }

  @Test
  void two_pans_that_are_too_much_together_go_in_an_hour_apart() throws IOException {
    Found found = Suppers.planned(
        Suppers.withDishes(folder, stew("Soup", "2.5 kg", "fridge") + stew("Stew", "2.5 kg", "fridge")));

    assertThat(found.breaks()).isEmpty();
    assertThat(Math.abs(chilled(found.plan(), "Soup") - chilled(found.plan(), "Stew")))
        .isGreaterThanOrEqualTo(60);
  }

  @Test
  void two_that_it_takes_go_in_as_it_suits() throws IOException {
    Found found = Suppers.planned(
        Suppers.withDishes(folder, stew("Soup", "2 kg", "fridge") + stew("Stew", "2 kg", "fridge")));

    assertThat(found.breaks()).isEmpty();
  }

  @Test
  void a_pan_too_large_for_any_hour_is_refused_by_its_weight() throws IOException {
    Found found = Suppers.planned(Suppers.withDishes(folder, stew("Soup", "6 kg", "fridge")));

    assertThat(found.breaks()).extracting(Break::rule).containsExactly("warm load");
    assertThat(found.breaks().getFirst().off()).isEqualTo(2000);
  }

  private static int chilled(Plan plan, String dish) {
    Placement chill = plan.placement(dish, "chill", 1);
    return chill.when().from();
  }
}
