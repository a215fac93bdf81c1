package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Mass;
import ovenloom.model.menu.Event;

class StoreReaderTest {

  @TempDir
  Path folder;

  private Desktop desk(String cold, String more) {
    return new Desktop(folder).put("it.yaml", Desktop.SUPPER
        + "kitchen: {%s: [{name: place, %s, shelves: {size: 50 x 50 x 20 cm}}]}%n".formatted(cold, more)
        + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n");
  }

  private static Store place(Event event) {
    return Objects.requireNonNull(event.kitchen().store("place"));
  }

  @Test
  void a_fridge_takes_four_kilograms_of_warm_food_a_blast_chiller_any_and_either_what_its_file_says() {
    assertThat(place(desk("cold", "holds: 4 C").event("it.yaml")).warmLoad()).isEqualTo(Mass.grams(4000));
    assertThat(place(desk("cold", "holds: 4 C, air: blast").event("it.yaml")).warmLoad()).isNull();
    assertThat(place(desk("cold", "holds: 4 C, air: blast, warm load: 20 kg").event("it.yaml")).warmLoad())
        .isEqualTo(Mass.grams(20_000));
    assertThat(place(desk("cold", "holds: 4 C, warm load: 6 kg").event("it.yaml")).warmLoad())
        .isEqualTo(Mass.grams(6000));
  }

  @ParameterizedTest
  @CsvSource({"cold, holds: -18 C, a freezer", "hot, holds: 70 C, a hot place"})
  void only_a_fridge_has_one(String list, String holds, String what) {
    assertThat(desk(list, holds + ", warm load: 6 kg").mistakes("it.yaml")).contains("is " + what);
    assertThat(place(desk(list, holds).event("it.yaml")).warmLoad()).isNull();
  }

  @Test
  void none_at_all_is_a_mistake() {
    assertThat(desk("cold", "holds: 4 C, warm load: 0 g").mistakes("it.yaml")).contains("more than nothing");
  }
}
