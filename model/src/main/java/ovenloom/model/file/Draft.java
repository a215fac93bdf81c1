package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is to be written, before it is YAML or JSON. */
sealed interface Draft {

  /** A text. */
  record Text(String text) implements Draft {}

  /** Several values. */
  record Items(List<Draft> items) implements Draft {
    public Items {
      items = List.copyOf(items);
    }

    static <T> Items of(List<T> things, Function<T, Draft> draft) {
      return new Items(things.stream().map(draft).toList());
    }

    static Items texts(List<String> texts) {
      return of(texts, Text::new);
    }
  }

  /** Values by key, in the order they were said. */
  final class Card implements Draft {

    private final Map<String, Draft> said = new LinkedHashMap<>();

    Map<String, Draft> said() {
      return said;
    }

    /** Says it, unless it is absent. */
    Card say(String key, @Nullable String text) {
      if (text != null) {
        said.put(key, new Text(text));
      }
      return this;
    }

    Card say(String key, Draft draft) {
      said.put(key, draft);
      return this;
    }

    /** Says it, unless there is nothing in it. */
    Card sayAny(String key, Card card) {
      return card.said.isEmpty() ? this : say(key, card);
    }

    /** Says it, unless it is what is taken for granted. */
    <T> Card sayUnless(T usual, String key, T value, Function<T, String> written) {
      return value.equals(usual) ? this : say(key, written.apply(value));
    }

    /** Says yes, or nothing. */
    Card yes(String key, boolean is) {
      return is ? say(key, "yes") : this;
    }

    /** Says the one, or a list of several, or nothing. */
    Card some(String key, List<String> texts) {
      return switch (texts.size()) {
        case 0 -> this;
        case 1 -> say(key, texts.getFirst());
        default -> say(key, Items.texts(texts));
      };
    }

    /** Says a list, unless it is empty. */
    <T> Card each(String key, List<T> things, Function<T, Draft> draft) {
      return things.isEmpty() ? this : say(key, Items.of(things, draft));
    }
  }

  /** The things in a list, where runs of equal ones are one with a count. */
  static <T> List<Counted<T>> counted(List<T> things) {
    List<Counted<T>> all = new ArrayList<>();
    for (T thing : things) {
      Counted<T> last = all.isEmpty() ? null : all.getLast();
      if (last != null && last.thing().equals(thing)) {
        all.set(all.size() - 1, new Counted<>(thing, last.count() + 1));
      } else {
        all.add(new Counted<>(thing, 1));
      }
    }
    return all;
  }

  /** How many of a thing. */
  record Counted<T>(T thing, int count) {}
}
