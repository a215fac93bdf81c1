package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.solver.supper.Decoded;

/** Under us-home what is cooked is eaten on its fourth day at the latest: for supper on Friday, on Tuesday or later. */
class MadeOnTest {

  private static final int A_DAY = 1440;

  @TempDir
  private Path folder;

  private Decoded soup(String more) throws IOException {
    return Decoded.of(folder,
        """
            ovenloom: 1
            event: Supper
            rules: us-home
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen:
              burners: [large]
              cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 60 x 40 x 30 cm}]}]
              vessels: {pot: {count: 1, size: 24 x 24 x 15 cm}}
            cooks: [{name: Cook, hours: {5 days before: 8:00-20:00, 4 days before: 8:00-20:00, 3 days before: 8:00-20:00,
              on the day: 8:00-20:00}}]
            dishes:
              - dish: Soup
                arrives: cold
            %s
                steps: [{do: cook, takes: 30 min, burner: large, in: pot, keeps: {fridge: 9 days}}]
            """
            .formatted(more));
  }

  @Test
  void what_is_cooked_is_not_placed_on_a_day_that_is_too_early() throws IOException {
    assertThat(soup("").earlier("Soup/cook", 3 * A_DAY).breaks()).isEmpty();
    assertThat(soup("").earlier("Soup/cook", 4 * A_DAY).breaks()).isNotEmpty();
  }

  @Test
  void bread_and_what_need_not_be_kept_cold_may_be_made_on_any() throws IOException {
    assertThat(soup("    kind: bread").earlier("Soup/cook", 4 * A_DAY).breaks()).isEmpty();
    assertThat(soup("    tags: [not tcs]").earlier("Soup/cook", 4 * A_DAY).breaks()).isEmpty();
  }
}
