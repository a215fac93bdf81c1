package ovenloom.model.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ovenloom.model.variation.Axis;

class PairsTest {

  private static final Axis MENU = axis("menu", 40);
  private static final Axis KITCHEN = axis("kitchen", 5);
  private static final Axis GUESTS = new Axis("guests", List.of("80", "120", "160"));
  private static final Axis CHILDREN = new Axis("children", List.of("0", "20"));

  @Test
  void guests_come_first_with_what_has_most_choices() {
    assertThat(pairs(KITCHEN, MENU, CHILDREN, GUESTS)).containsExactly("menu by guests", "kitchen by guests",
        "guests by children", "menu by kitchen", "menu by children", "kitchen by children");
  }

  @Test
  void another_number_does_where_nobody_counts_guests() {
    assertThat(pairs(KITCHEN, MENU, CHILDREN)).startsWith("menu by children");
  }

  @Test
  void without_numbers_the_two_with_most_choices_come_first() {
    assertThat(pairs(axis("hours", 2), KITCHEN, MENU)).startsWith("menu by kitchen");
  }

  @Test
  void a_map_that_nobody_could_read_is_left_out() {
    assertThat(pairs(axis("menu", 300), axis("hour", 3), KITCHEN)).containsExactly("kitchen by hour");
  }

  @Test
  void one_axis_alone_makes_no_map() {
    assertThat(pairs(MENU)).isEmpty();
  }

  @Test
  void there_is_an_end_to_maps() {
    Axis[] seven = IntStream.range(0, 7).mapToObj(i -> axis("axis " + i, 2)).toArray(Axis[]::new);

    assertThat(pairs(seven)).hasSize(Pairs.MAPS);
  }

  private static Axis axis(String name, int choices) {
    return new Axis(name, IntStream.range(0, choices).mapToObj(i -> name + " " + i).toList());
  }

  private static List<String> pairs(Axis... axes) {
    return Pairs.of(List.of(axes))
        .stream()
        .map(fit -> fit.rows().name() + " by " + fit.columns().name())
        .toList();
  }
}
