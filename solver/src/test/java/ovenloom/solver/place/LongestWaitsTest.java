package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Suppers;

/** A quarter of an hour on the counter is free; it goes with the counter and with the cold, and with no place that is hot. */
class LongestWaitsTest {

  @TempDir
  private Path folder;

  /** As its hands take it out of the oven, and as it rises above its tin. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      hands: {last: 2 min}, keeps: {oven: 40 min} | 40
      stands: 14 cm, keeps: {fridge: 2 h}         | 135
      """)
  void a_bake_waits_in_its_oven_whoever_takes_it_out_and_in_the_fridge_however_it_rose(String how,
      int minutes)
      throws IOException {
    Extents extents = Extents.of(Suppers.read(folder,
        """
            ovenloom: 1
            event: Supper
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen:
              from: home
              cold: [{name: fridge, holds: 4 C, shelves: [{size: 60 x 40 x 10 cm}]}]
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - {dish: Ham, tags: [not tcs], steps: [{do: bake, takes: 60 min, bake: {at: 180 C}, in: roasting tin, %s}]}
            """
            .formatted(how)));

    assertThat(extents.longestWait(0)).isEqualTo(minutes);
  }

  @ParameterizedTest(name = "{0} in a {1}: {2} min")
  @CsvSource(delimiter = '|', textBlock = """
      counter: 20 min              | pan  | 35
      counter: 20 min, fridge: 2 h | pan  | 135
      counter: 20 min, fridge: 2 h | tray | 35
      burner: 40 min               | pan  | 40
      burner: 10 min               | pan  | 15
      cabinet: 50 min              | pan  | 50
      """)
  void food_waits_as_long_as_it_keeps_in_the_best_place_that_its_vessel_fits_into(String keeps, String vessel,
      int minutes) throws IOException {
    Extents extents = Extents.of(Suppers.read(folder,
        """
            ovenloom: 1
            event: Supper
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen:
              burners: [large]
              cold: [{name: fridge, holds: 4 C, shelves: [{size: 30 x 30 x 20 cm}]}]
              hot: [{name: cabinet, holds: 70 C, shelves: [{size: 60 x 40 x 20 cm}]}]
              vessels: {pan: {count: 1, size: 24 x 24 x 15 cm}, tray: {count: 1, size: 42 x 30 x 3 cm}}
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - {dish: Stew, arrives: hot, tags: [not tcs], steps: [{do: cook, takes: 30 min, burner: large, in: %s, keeps: {%s}}]}
            """
            .formatted(vessel, keeps)));

    assertThat(extents.longestWait(0)).isEqualTo(minutes);
  }
}
