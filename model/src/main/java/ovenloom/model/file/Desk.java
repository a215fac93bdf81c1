package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Part;
import ovenloom.model.chill.ChillCard;
import ovenloom.model.measure.Parsed;

/**
 * Where one event is read: understands single values, knows the names, and keeps the mistakes. What is not understood is
 * null, and a mistake has been noted.
 *
 * @param chills the steps that cool food in one of several ways, to be chosen once all is read
 */
record Desk(
    Mistakes mistakes, Mistakes notes, Names names, Register register, List<ChillCard> chills) {

  Desk() {
    this(new Mistakes(), new Mistakes(), new Names(), new Register(), new ArrayList<>());
  }

  /** A part of the event, which is sound if nothing was wrong with it. */
  <T> T part(Part part, Supplier<T> reading) {
    int before = faults();
    T read = reading.get();
    if (faults() > before) {
      register.spoil(part);
    }
    return read;
  }

  /** How much was wrong so far; it grows with everything that is not as its writer meant it. */
  int faults() {
    return mistakes.count() + register.holes();
  }

  void mistake(Place place, Fault fault) {
    mistakes.add(place, fault);
  }

  void contradiction(Place place, String what, String expected) {
    mistakes.add(place, new Fault.Contradiction(what, expected));
  }

  /** Whether a file says it is of a version nobody here knows, so that nothing else can be said of it. */
  boolean isOfAnotherVersion(Written written, String key, String known) {
    Written.Entry entry = written instanceof Written.Keyed keyed ? keyed.entry(key) : null;
    if (entry == null || entry.value() instanceof Written.Nothing) {
      return false;
    }
    return read(entry.value(), text -> text.equals(known) ? new Parsed.Good<>(text)
        : Scalars.bad(text, "a version that this program reads like \"" + known + "\"")) == null;
  }

  /** A text as a measure, a count or a word. */
  <T> @Nullable T read(Written written, Function<String, Parsed<T>> reader) {
    Written.Words words = words(written);
    if (words == null) {
      return null;
    }
    return switch (reader.apply(words.text())) {
      case Parsed.Good<T>(T value) -> value;
      case Parsed.Bad<T> bad -> {
        mistakes.add(place(words, bad),
            new Fault.NotUnderstood(words.text(), bad.expected(), bad.suggestions()));
        yield null;
      }
    };
  }

  /** A text that names something: any words without a comma. */
  @Nullable
  String name(Written written) {
    Written.Words words = words(written);
    if (words == null) {
      return null;
    }
    if (words.text().isBlank()) {
      mistakes.add(words.place(), new Fault.NotUnderstood(words.text(), "a name", List.of()));
      return null;
    }
    if (words.text().contains(",")) {
      mistakes.add(words.place(), new Fault.CommaInside(words.text()));
      return null;
    }
    if (words.behind().matches("\\s+#\\S.*")) {
      mistakes.add(words.place(), new Fault.CutShort(words.text() + words.behind()));
      return null;
    }
    return words.text().strip();
  }

  /** A name that nothing else of the kind has. */
  @Nullable
  String newName(Written written, Names.Kind kind) {
    String name = name(written);
    if (name != null && !names.add(kind, name)) {
      mistakes.add(written.place(), new Fault.RepeatedName(name, kind.word()));
    }
    return name;
  }

  /** A name that something has. */
  @Nullable
  String reference(Written written, Names.Kind kind) {
    return reference(written, kind.word(), names.all(kind));
  }

  @Nullable
  String reference(Written written, String kind, Set<String> known) {
    String name = name(written);
    if (name == null || known.contains(name)) {
      return name;
    }
    mistakes.add(written.place(),
        new Fault.UnknownName(name, kind, Nearest.to(name, known), List.copyOf(known), names.isAtHome()));
    return null;
  }

  Written.@Nullable Words words(Written written) {
    if (written instanceof Written.Words words) {
      return words;
    }
    wrongShape(written, "this", "a single text");
    return null;
  }

  /** The values of a list; one value stands for a list of one. */
  List<Written> items(Written written) {
    return switch (written) {
      case Written.Many(List<Written> items, Place place) -> items;
      case Written.Words one -> List.of(one);
      case Written.Keyed one -> List.of(one);
      case Written.Nothing nothing -> List.of();
    };
  }

  /** The values of a list, each understood; those that are not are left out. */
  <T> List<T> each(Written written, Function<Written, @Nullable T> reader) {
    List<T> all = new ArrayList<>();
    for (Written item : items(written)) {
      T value = reader.apply(item);
      if (value != null) {
        all.add(value);
      }
    }
    return all;
  }

  /** Values by keys that are names, not words of ours. */
  List<Written.Entry> entries(Written written, String key, String like) {
    if (written instanceof Written.Keyed keyed) {
      return keyed.entries().stream().filter(this::hasValue).toList();
    }
    wrongShape(written, "\"" + key + ":\"", "names with their values, like \"" + like + "\"");
    return List.of();
  }

  private boolean hasValue(Written.Entry entry) {
    if (entry.value() instanceof Written.Nothing nothing) {
      mistakes.add(entry.key().place(), nothing.fault(entry.key().text()));
      return false;
    }
    return true;
  }

  Fields fields(Written written, Keys keys) {
    if (written instanceof Written.Keyed keyed) {
      return new Fields(this, keyed, keys);
    }
    wrongShape(written, keys.of(), "keys like \"" + keys.names().getFirst() + ":\"");
    return new Fields(this, new Written.Keyed(List.of(), false, written.place()), keys);
  }

  private void wrongShape(Written written, String of, String expected) {
    switch (written) {
      case Written.Words words ->
        mistakes.add(words.place(), new Fault.WrongShape(of, Fault.Shape.TEXT, expected));
      case Written.Many many ->
        mistakes.add(many.place(), new Fault.WrongShape(of, Fault.Shape.LIST, expected));
      case Written.Keyed keyed ->
        mistakes.add(keyed.place(), new Fault.WrongShape(of, Fault.Shape.KEYS, expected));
      case Written.Nothing nothing ->
        mistakes.add(nothing.place(), nothing.fault(""));
    }
  }

  /** The whole value, or what is wrong in it where it is more than a number and its unit. */
  private static Place place(Written.Words words, Parsed.Bad<?> bad) {
    Integer offset = words.offset();
    boolean isLong = words.text().strip().split("\\s+").length > 2;
    if (offset == null || !isLong || bad.to() <= bad.from()) {
      return words.place();
    }
    return words.place().part(offset + bad.from(), offset + bad.to());
  }
}
