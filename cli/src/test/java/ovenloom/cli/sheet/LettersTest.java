package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which letter stands for which dish. */
class LettersTest {

  private static List<Character> letters(String... dishes) {
    Letters letters = Letters.of(List.of(dishes));
    return Stream.of(dishes).map(letters::of).toList();
  }

  @Test
  void a_dish_is_the_letter_with_which_a_word_of_its_name_begins() {
    assertThat(letters("Roast chicken", "Roast potatoes", "Lemon creams")).containsExactly('R', 'P', 'L');
    assertThat(letters("\u00c9pinards")).containsExactly('E');
  }

  @Test
  void no_dish_takes_the_first_letter_of_one_further_down() {
    assertThat(letters("Roast", "Relish of olives", "Olives", "Onions")).containsExactly('R', 'E', 'O', 'N');
  }

  @Test
  void where_all_of_its_letters_are_taken_it_is_one_of_them_small() {
    assertThat(letters("Ab", "Ba", "Aba", "Bab")).containsExactly('A', 'B', 'a', 'b');
  }

  @Test
  void where_none_of_its_letters_is_free_it_is_any_other() {
    assertThat(letters("A", "a", "aa", "\u00d8")).containsExactly('A', 'a', 'B', 'C');
  }

  @Test
  void beyond_sixty_two_all_are_one_more() {
    var many = letters(IntStream.range(0, 64).mapToObj(number -> "Dish " + number).toArray(String[]::new));

    assertThat(many.subList(0, 62)).doesNotHaveDuplicates().doesNotContain(Letters.ANOTHER);
    assertThat(many.subList(62, 64)).containsOnly(Letters.ANOTHER);
  }
}
