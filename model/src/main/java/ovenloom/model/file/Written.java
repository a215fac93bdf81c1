package ovenloom.model.file;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A value as it stands in a file, before anybody knows what it means. */
sealed interface Written {

  Place place();

  /**
   * A text; what it means depends on its key.
   *
   * @param offset where its first character stands, counted from the place; absent where escapes or line breaks make
   *     places inside it meaningless
   * @param behind what follows on its line, for text without quotes
   */
  record Words(String text, Place place, @Nullable Integer offset, String behind) implements Written {}

  /** Several values. */
  record Many(List<Written> items, Place place) implements Written {
    public Many {
      items = List.copyOf(items);
    }
  }

  /** Values by key, as written; no key twice. */
  record Keyed(List<Entry> entries, Place place) implements Written {
    public Keyed {
      entries = List.copyOf(entries);
    }

    @Nullable
    Entry entry(String key) {
      return entries.stream().filter(entry -> entry.key().text().equals(key)).findFirst().orElse(null);
    }
  }

  /** Nothing at all behind a key or a dash. */
  record Nothing(boolean insideBraces, Place place) implements Written {}

  /** A key and its value. */
  record Entry(Words key, Written value) {}
}
