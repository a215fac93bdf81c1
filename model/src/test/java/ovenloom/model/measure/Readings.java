package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.fail;

import java.util.List;
import java.util.function.Function;

/** Takes answers apart for tests: the thing, or the fault, or the test fails. */
final class Readings {

  /** Every kind of value that is read from text. */
  static final List<Kind> KINDS = List.of(new Kind("setting", Setting::read),
      new Kind("temperature", Temperature::read),
      new Kind("length", Length::read), new Kind("size", Size::read), new Kind("range", Range::read),
      new Kind("pace", Pace::read), new Kind("mass", Mass::read), new Kind("volume", Volume::read),
      new Kind("power", Power::read), new Kind("conductivity", Conductivity::read),
      new Kind("percent", Percent::read),
      new Kind("quantity", Quantity::read));

  record Kind(String name, Function<String, Parsed<?>> read) {
    @Override
    public String toString() {
      return name;
    }
  }

  private Readings() {}

  static <T> T good(Parsed<T> parsed) {
    return switch (parsed) {
      case Parsed.Good<T>(T value) -> value;
      case Parsed.Bad<T> bad -> fail("not understood: " + bad);
    };
  }

  static <T> Parsed.Bad<T> bad(Parsed<T> parsed) {
    return switch (parsed) {
      case Parsed.Good<T>(T value) -> fail("understood as " + value);
      case Parsed.Bad<T> bad -> bad;
    };
  }

  /** The part of the text that was marked as wrong. */
  static String marked(String text, Parsed<?> parsed) {
    Parsed.Bad<?> bad = bad(parsed);
    return text.substring(bad.from(), bad.to());
  }
}
