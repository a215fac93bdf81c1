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
  record Words(String text, Place place, @Nullable Integer offset, String behind) implements Written {

    /** Whether it stands without quotes. */
    boolean isBare() {
      return offset != null && offset == 0;
    }
  }

  /** Several values. */
  record Many(List<Written> items, Place place) implements Written {
    public Many {
      items = List.copyOf(items);
    }
  }

  /**
   * Values by key, as written; no key twice.
   *
   * @param whole false where more belongs to it that could not be read, so that nobody need complain of what is missing
   */
  record Keyed(List<Entry> entries, boolean whole, Place place) implements Written {
    public Keyed {
      entries = List.copyOf(entries);
    }

    @Nullable
    Entry entry(String key) {
      return entries.stream().filter(entry -> entry.key().text().equals(key)).findFirst().orElse(null);
    }
  }

  /**
   * Nothing at all behind a key or a dash.
   *
   * @param before the text of the value before it, inside braces
   */
  record Nothing(boolean insideBraces, @Nullable String before, Place place) implements Written {

    /** What to say of a key with nothing behind it. */
    Fault fault(String key) {
      boolean decimal = before != null && before.matches(".*[0-9]") && key.matches("[0-9].*");
      return new Fault.NoValue(key, insideBraces, decimal ? before + "." + key : null);
    }
  }

  /** A key and its value. */
  record Entry(Words key, Written value) {}
}
