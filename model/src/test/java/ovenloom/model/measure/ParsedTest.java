package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ParsedTest {

  @Test
  void what_was_understood_may_be_made_into_something_else() {
    Parsed<Integer> understood = new Parsed.Good<>(7);

    assertThat(understood.map(n -> n + " eggs")).isEqualTo(new Parsed.Good<>("7 eggs"));
  }

  @Test
  void a_fault_stays_the_fault_it_was() {
    Parsed<Integer> fault = new Parsed.Bad<>("a number", List.of("7"), 2, 3);

    assertThat(fault.map(n -> n + " eggs")).isEqualTo(new Parsed.Bad<String>("a number", List.of("7"), 2, 3));
  }

  @Test
  void suggestions_do_not_change_behind_the_readers_back() {
    var suggestions = new ArrayList<>(List.of("7"));
    var fault = new Parsed.Bad<Integer>("a number", suggestions, 0, 1);

    suggestions.add("8");

    assertThat(fault.suggestions()).containsExactly("7");
  }
}
