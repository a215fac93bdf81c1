package ovenloom.model.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Parsed;
import ovenloom.model.menu.Event;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Take;

/** A what-if file: an event, axes along which it varies with a patch for each choice, and which variations to take. */
public final class WhatIfFile {

  /** The key by which such a file is known. */
  public static final String KEY = "what if";

  static final Keys WHAT_IF = Keys.of("a what-if file", "ovenloom", KEY, "event", "axes", "take");
  static final Keys SAMPLE = Keys.of("a sample", "sample", "seed");

  /** How many variations may be asked for, and how many of them are looked at for each choice before any is planned. */
  static final int MOST = 1_000_000;
  private static final int LOOKED_AT = 50;

  private static final String AS_IT_IS = "as it is";
  private static final String EACH = "each with each";

  private final Desk desk;
  private final Includes includes;
  private final List<Axis> axes = new ArrayList<>();
  private final List<List<Written>> patches = new ArrayList<>();

  private WhatIfFile(Desk desk, Includes includes) {
    this.desk = desk;
    this.includes = includes;
  }

  /**
   * Reads a what-if file with the event it names.
   *
   * @param root the folder that every file must be in
   * @return the variations, or every mistake: in this file, in the event, and in each choice that no variation can be read with
   */
  public static Reading<WhatIf> read(Path file, Path root) {
    Desk desk = new Desk();
    Folder folder;
    try {
      folder = new Folder(root, Limits.WHAT_IF);
    } catch (IOException e) {
      desk.mistake(new Place(file.toString(), 1, 1, "", 1),
          new Fault.NoSuchFile(root.toString(), Fault.Obstacle.MISSING));
      return new Reading.Mistaken<>(desk.mistakes().all());
    }
    Includes includes = new Includes(folder, desk);
    // A result tells of its mistakes; it is the same from whatever folder the file was named.
    Written written = includes.first(file, String.valueOf(file.getFileName()), Limits.PROBLEM);
    WhatIf whatIf = written == null ? null : new WhatIfFile(desk, includes).whatIf(written);
    if (whatIf == null || !desk.mistakes().none()) {
      return new Reading.Mistaken<>(desk.mistakes().all());
    }
    List<Mistake> mistakes = mistakes(whatIf);
    return mistakes.isEmpty() ? new Reading.Understood<>(whatIf, includes.sources(), List.of())
        : new Reading.Mistaken<>(mistakes);
  }

  private @Nullable WhatIf whatIf(Written written) {
    if (desk.isOfAnotherVersion(written, "ovenloom", EventReader.VERSION)) {
      return null;
    }
    Fields file = desk.fields(written, WHAT_IF);
    file.needed("ovenloom");
    String name = file.takeNeeded(KEY, desk::name);
    Written base = file.takeNeeded("event", this::base);
    file.takeNeeded("axes", this::axes);
    if (name == null || !(base instanceof Written.Keyed event) || axes.isEmpty() || !desk.mistakes().none()) {
      return null;
    }
    Written asked = file.value("take");
    Take take = asked == null ? everything(file.placeOf("axes")) : take(asked);
    return take == null ? null : new WhatIf(name, event, axes, patches, take, includes);
  }

  private @Nullable Written base(Written written) {
    Written.Words file = desk.words(written);
    return file == null ? null : includes.beside(file);
  }

  private @Nullable Boolean axes(Written written) {
    for (Written.Entry entry : desk.entries(written, "axes", "guests: [80, 120]")) {
      List<String> names = new ArrayList<>();
      List<Written> changes = new ArrayList<>();
      String axis = desk.name(entry.key());
      if (entry.value() instanceof Written.Many many) {
        many.items().forEach(item -> value(entry.key(), item, names, changes));
      } else {
        desk.entries(entry.value(), entry.key().text(), "two ovens: {kitchen: {from: two-ovens.yaml}}")
            .forEach(choice -> choice(choice, names, changes));
      }
      if (names.isEmpty()) {
        desk.contradiction(entry.value().place(), "nothing to choose from", "one choice or more");
      } else if (axis != null) {
        axes.add(new Axis(axis, names));
        patches.add(List.copyOf(changes));
      }
    }
    return null;
  }

  /** A list gives the key of the event that the axis is called after each of its values in turn. */
  private void value(Written.Words key, Written item, List<String> names, List<Written> changes) {
    String value = desk.name(item);
    if (value != null && names.contains(value)) {
      desk.mistake(item.place(), new Fault.RepeatedName(value, "choice"));
    } else if (value != null) {
      names.add(value);
      changes.add(new Written.Keyed(List.of(new Written.Entry(key, item)), true, item.place()));
    }
  }

  private void choice(Written.Entry choice, List<String> names, List<Written> changes) {
    String name = desk.name(choice.key());
    Written change = choice.value();
    if (change instanceof Written.Words words && words.text().equals(AS_IT_IS)) {
      change = new Written.Keyed(List.of(), true, words.place());
    }
    if (!(change instanceof Written.Keyed)) {
      desk.mistake(change.place(), new Fault.WrongShape("a choice",
          change instanceof Written.Many ? Fault.Shape.LIST : Fault.Shape.TEXT,
          "the keys of the event that change, or \"" + AS_IT_IS + "\""));
    } else if (name != null) {
      names.add(name);
      changes.add(change);
    }
  }

  private @Nullable Take take(Written written) {
    return switch (written) {
      case Written.Words words -> desk.read(words, text -> text.equals(EACH) ? new Parsed.Good<>(text)
          : Scalars.oneOfThese(text, List.of(EACH))) == null ? null : everything(words.place());
      case Written.Keyed keyed -> sample(keyed);
      case Written.Many many -> listed(many);
      case Written.Nothing nothing -> null;
    };
  }

  private @Nullable Take everything(Place place) {
    Take all = new Take.EachWithEach();
    return count() > MOST ? tooMany(place) : all;
  }

  private long count() {
    try {
      return new Take.EachWithEach().size(axes);
    } catch (ArithmeticException beyondCounting) {
      return Long.MAX_VALUE;
    }
  }

  private @Nullable Take tooMany(Place place) {
    desk.mistake(place, new Fault.TooMuch("variations", MOST));
    return null;
  }

  private @Nullable Take sample(Written.Keyed written) {
    Fields sample = desk.fields(written, SAMPLE);
    Integer count = sample.needed("sample", text -> Scalars.upTo(text, MOST));
    Integer seed = sample.read("seed", text -> Scalars.upTo(text, MOST));
    if (count() == Long.MAX_VALUE) {
      return tooMany(written.place());
    }
    return count == null ? null : Take.Drawn.of(count, seed == null ? 1 : seed, count());
  }

  private Take listed(Written.Many written) {
    List<List<Integer>> all = new ArrayList<>();
    for (Written item : written.items()) {
      Fields choices = desk.fields(item, new Keys("a variation", axes.stream().map(Axis::name).toList()));
      List<Integer> picks = new ArrayList<>();
      for (Axis axis : axes) {
        Written choice = choices.needed(axis.name());
        String name = choice == null ? null
            : desk.reference(choice, "choice for \"" + axis.name() + "\"",
                new LinkedHashSet<>(axis.choices()));
        picks.add(name == null ? 0 : axis.choices().indexOf(name));
      }
      all.add(picks);
    }
    return new Take.Listed(all);
  }

  /** Those of the event as it is; or of each choice alone, unless it can be read together with others. What cannot be done is none. */
  private static List<Mistake> mistakes(WhatIf whatIf) {
    if (whatIf.base() instanceof Reading.Mistaken<Event> base && !base.isWellWritten()) {
      return base.mistakes();
    }
    List<Mistake> all = new ArrayList<>();
    for (int axis = 0; axis < whatIf.axes().size(); axis++) {
      for (int choice = 0; choice < whatIf.axes().get(axis).choices().size(); choice++) {
        if (whatIf.event(axis, choice) instanceof Reading.Mistaken<Event> alone && !alone.isWellWritten()
            && !whatIf.isEverRead(axis, choice, LOOKED_AT)) {
          all.addAll(alone.mistakes());
        }
      }
    }
    return all.stream().distinct().sorted(Comparator.comparing(Mistake::place)).toList();
  }
}
