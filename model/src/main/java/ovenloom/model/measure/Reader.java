package ovenloom.model.measure;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Reads one kind of value: by its grammar when the text is right, and by guessing at what was meant
 * when it is not. Only guesses that the grammar itself understands are offered.
 *
 * @param <T> the kind of value
 * @param expected what to say was expected
 * @param grammar takes the value from the scanner, or answers null
 * @param written prints a value so that the grammar reads it
 * @param guesses other texts the writer may have meant
 */
record Reader<T>(String expected, Grammar<T> grammar, Function<T, String> written,
    UnaryOperator<List<String>> guesses) {

  /** Bounds the work a stranger's text can cause. */
  private static final int LONGEST = 200;
  private static final int MOST_SUGGESTIONS = 3;

  /** What a value looks like. */
  interface Grammar<T> {
    @Nullable
    T read(Scanner s);
  }

  Parsed<T> read(String text) {
    if (text.length() > LONGEST) {
      return new Parsed.Bad<>(expected + ", in at most " + LONGEST + " characters", List.of(), 0,
          text.length());
    }
    var scanner = new Scanner(text);
    T value = grammar.read(scanner);
    if (value != null && scanner.ended()) {
      return new Parsed.Good<>(value);
    }
    return scanner.fault(expected, suggestions(text));
  }

  private List<String> suggestions(String text) {
    return guesses.apply(Guesses.withoutMarks(text))
        .stream()
        .map(this::understood)
        .filter(Objects::nonNull)
        .map(written)
        .distinct()
        .limit(MOST_SUGGESTIONS)
        .toList();
  }

  private @Nullable T understood(String text) {
    var scanner = new Scanner(text);
    T value = grammar.read(scanner);
    return scanner.ended() ? value : null;
  }
}
