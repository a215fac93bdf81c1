package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.cli.stand.Stood;
import ovenloom.cli.stand.Surface;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.Batches;

/** What is written on a vessel that stands on a shelf 50 cm wide, in letters 25 mm high. */
class PlaceTest {

  private static final Place.Level SHELF = new Place.Level("top shelf",
      new Surface("fridge", 0, new Size(Length.mm(500), Length.mm(350)), List.of()));

  private static List<String> words(String dish, String vessel, int width, int depth) {
    return SHELF.words(
        new Stood(dish, "set", Batches.only(1), vessel, 0, 0, width * 1000L, depth * 1000L));
  }

  @Test
  void what_has_no_room_side_by_side_stands_line_by_line() {
    assertThat(words("Lemon creams", "tray", 300, 200)).containsExactly("Lemon creams", "tray");
    assertThat(words("Lemon creams", "small bowl", 100, 100))
        .containsExactly("Lemon", "creams", "small", "bowl");
  }

  @Test
  void no_line_runs_over_the_front() {
    assertThat(words("Lemon creams", "small bowl", 100, 60)).containsExactly("Lemon", "creams");
  }
}
