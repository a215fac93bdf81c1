package ovenloom.model.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.measure.Parsed;

/** The keys of one thing, taken one by one; a key that nobody could ask for is a mistake. */
final class Fields {

  private final Desk desk;
  private final Written.Keyed written;
  private final Keys keys;
  private final Set<String> misspelt = new HashSet<>();
  private final Set<String> tooLong = new HashSet<>();

  Fields(Desk desk, Written.Keyed written, Keys keys) {
    this.desk = desk;
    this.written = written;
    this.keys = keys;
    if (!written.whole()) {
      desk.register().hole();
    }
    for (Written.Entry entry : written.entries()) {
      check(entry);
    }
  }

  private void check(Written.Entry entry) {
    Written.Words key = entry.key();
    if (entry.value() instanceof Written.Nothing nothing) {
      desk.mistake(key.place(), nothing.fault(key.text()));
    } else if (!keys.names().contains(key.text())) {
      String nearest = Nearest.to(key.text(), keys.names());
      desk.mistake(key.place(), new Fault.UnknownKey(key.text(), keys.of(), nearest, keys.names()));
      if (nearest != null) {
        misspelt.add(nearest);
      }
    }
  }

  /** Notes where all of this stands, for what is found out later; as a whole it is called by one of its keys. */
  void standFor(Subject subject, String name) {
    desk.register().stands(subject, placeOf(name));
    for (Written.Entry entry : written.entries()) {
      Subject part = subject.key(entry.key().text());
      desk.register().stands(part, entry.value().place());
      if (entry.value() instanceof Written.Keyed inside) {
        inside.entries()
            .forEach(each -> desk.register().stands(part.key(each.key().text()), each.key().place()));
      }
    }
  }

  /** Whether all that was written here could be read. */
  boolean isWhole() {
    return written.whole();
  }

  /** Where these keys begin. */
  Place place() {
    return written.place();
  }

  /** Where a key stands, or where all begin if it does not. */
  Place placeOf(String key) {
    Written.Entry entry = written.entry(key);
    return entry == null ? place() : entry.value().place();
  }

  /** Whether some key that nobody knows was probably meant to be one of these. */
  boolean isMisspelt(String... these) {
    return Arrays.stream(these).anyMatch(misspelt::contains);
  }

  boolean has(String key) {
    return value(key) != null;
  }

  @Nullable
  Written value(String key) {
    Written.Entry entry = written.entry(key);
    return entry == null || entry.value() instanceof Written.Nothing ? null : entry.value();
  }

  @Nullable
  Written needed(String key) {
    if (written.entry(key) == null && written.whole() && !misspelt.contains(key)) {
      desk.mistake(place(), new Fault.MissingKey(key, keys.of()));
    }
    return value(key);
  }

  <T> @Nullable T read(String key, Function<String, Parsed<T>> reader) {
    Written value = value(key);
    return value == null ? null : desk.read(value, reader);
  }

  <T> T read(String key, Function<String, Parsed<T>> reader, T otherwise) {
    T read = read(key, reader);
    return read == null ? otherwise : read;
  }

  <T> @Nullable T needed(String key, Function<String, Parsed<T>> reader) {
    Written value = needed(key);
    return value == null ? null : desk.read(value, reader);
  }

  boolean yes(String key) {
    return read(key, Scalars::yesOrNo, false);
  }

  /** A value that is more than a text. */
  <T> @Nullable T take(String key, Function<Written, @Nullable T> reader) {
    Written value = value(key);
    return value == null ? null : reader.apply(value);
  }

  /** A value that has to be there and is more than a text. */
  <T> @Nullable T takeNeeded(String key, Function<Written, @Nullable T> reader) {
    Written value = needed(key);
    return value == null ? null : reader.apply(value);
  }

  /** The values of a list that has to be there. */
  <T> List<T> eachNeeded(String key, Function<Written, @Nullable T> reader) {
    Written value = needed(key);
    return value == null ? new ArrayList<>() : desk.each(value, reader);
  }

  /** The values of a list that has to be there and must not be empty. */
  <T> List<T> someNeeded(String key, Function<Written, @Nullable T> reader) {
    needed(key);
    refuseEmpty(key);
    return each(key, reader);
  }

  /** Refuses a list without values. */
  void refuseEmpty(String key) {
    if (value(key) instanceof Written.Many many && many.items().isEmpty()) {
      desk.contradiction(many.place(), "\"" + key + "\" is an empty list", "at least one");
    }
  }

  /** Refuses a list of more values than any kitchen has, and reads nothing of it. */
  void refuseMany(String key, int most) {
    if (value(key) instanceof Written.Many many && many.items().size() > most) {
      desk.mistake(many.place(), new Fault.TooMuch(key, most));
      tooLong.add(key);
      desk.register().hole();
    }
  }

  /** The values of a list, or the one value that stands for a list of one; none where the key is absent. */
  <T> List<T> each(String key, Function<Written, @Nullable T> reader) {
    Written value = value(key);
    return value == null || tooLong.contains(key) ? new ArrayList<>() : desk.each(value, reader);
  }
}
