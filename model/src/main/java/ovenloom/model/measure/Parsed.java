package ovenloom.model.measure;

import java.util.List;
import java.util.function.Function;

/**
 * What came of reading a few words: the thing they mean, or where they went wrong. Text from a
 * file is never answered with an exception.
 *
 * @param <T> what the words were to mean
 */
public sealed interface Parsed<T> {

  /** The same answer about something made from the thing; a fault stays as it is. */
  default <U> Parsed<U> map(Function<T, U> made) {
    return switch (this) {
      case Good<T>(T value) -> new Good<>(made.apply(value));
      case Bad<T>(String expected, List<String> suggestions, int from, int to) ->
        new Bad<>(expected, suggestions, from, to);
    };
  }

  /** The words were understood. */
  record Good<T>(T value) implements Parsed<T> {}

  /**
   * The words were not understood.
   *
   * @param expected what would have been, as the end of a sentence that begins "Expected":
   *     {@code an oven setting like "350 F", "180 C" or "gas 4"}
   * @param suggestions what the writer may have meant, likeliest first, each of which reads well;
   *     often none
   * @param from the first character that is wrong, counted from 0 within the text read
   * @param to the first character after it; greater than {@code from} unless the text was empty
   */
  record Bad<T>(String expected, List<String> suggestions, int from, int to) implements Parsed<T> {

    /** Copies the suggestions. */
    public Bad {
      suggestions = List.copyOf(suggestions);
    }
  }
}
