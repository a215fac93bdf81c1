package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which letter stands for which dish. */
class LettersTest {

  private static List<Character> letters(String... dishes) {
    return new ArrayList<>(Letters.of(List.of(dishes)).byDish().values());
  }

  @Test
  void a_dish_is_a_letter_of_its_name_that_is_still_free() {
    assertThat(letters("Roast chicken", "Roast potatoes", "Lemon creams")).containsExactly('R', 'O', 'L');
  }

  @Test
  void where_none_of_its_letters_is_free_it_is_any_other() {
    assertThat(letters("A", "Aa", "\u00d8")).containsExactly('A', 'B', 'C');
  }

  @Test
  void beyond_sixty_two_all_are_one_more() {
    var many = letters(IntStream.range(0, 64).mapToObj(number -> "Dish " + number).toArray(String[]::new));

    assertThat(many.subList(0, 62)).doesNotHaveDuplicates().doesNotContain(Letters.ANOTHER);
    assertThat(many.subList(62, 64)).containsOnly(Letters.ANOTHER);
  }
}
