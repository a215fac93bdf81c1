package ovenloom.model.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Plan;

/**
 * Brings in what stands in a file of its own: {@code from: dishes/x.yaml}. Keys beside it win; of what is listed by name,
 * each name does. What would stand in the file may stand in place of its name.
 */
final class Includes {

  private static final String HOME = "home-kitchen.yaml";
  private static final String AT_HOME = "home";
  private static final Set<String> LISTED_BY_NAME = Set.of("vessels", "appliances", "circuits");

  /**
   * How one came to some keys.
   *
   * @param kitchen whether they are a kitchen's, which may be a home's
   * @param within the files that are being taken in
   */
  private record Way(boolean kitchen, List<Path> within) {}

  private final @Nullable Folder folder;
  private final Desk desk;
  private final Map<String, Sheet> sheets;
  private final Map<Path, Written> known;
  private final Set<Path> opened = new HashSet<>();

  Includes(Folder folder, Desk desk) {
    this(desk, folder, new HashMap<>(), new HashMap<>());
  }

  private Includes(Desk desk, @Nullable Folder folder, Map<String, Sheet> sheets, Map<Path, Written> known) {
    this.folder = folder;
    this.desk = desk;
    this.sheets = sheets;
    this.known = known;
  }

  /** For what is whole by itself: no file may be taken in. */
  static Includes none(Desk desk) {
    return new Includes(desk, null, new HashMap<>(), new HashMap<>());
  }

  /** The same files, with mistakes kept elsewhere; what was read is not read again. */
  Includes at(Desk another) {
    Includes same = new Includes(another, folder, sheets, known);
    same.opened.addAll(opened);
    return same;
  }

  /** Every file that was read here, with a digest of its bytes. */
  List<Plan.Source> sources() {
    return folder == null ? List.of() : folder.sources(opened);
  }

  /** The first file. */
  @Nullable
  Written first(Path file, Limits limits) {
    return first(file, file.toString(), limits);
  }

  /** The first file, with its name in messages. */
  @Nullable
  Written first(Path file, String called, Limits limits) {
    return switch (Objects.requireNonNull(folder, "a folder").open(file, called, called)) {
      case Folder.Opened.Open(Sheet sheet) -> read(sheet, limits);
      case Folder.Opened.Shut(Fault fault) -> {
        desk.mistake(new Place(called, 1, 1, "", 1), fault);
        yield null;
      }
    };
  }

  /** The kitchen a home is taken to have where a file says nothing of one. */
  Written home() {
    Sheet sheet = new Sheet(HOME, Path.of(HOME), homeText());
    return Objects.requireNonNull(new WrittenReader(sheet, Limits.PROBLEM, desk.mistakes()).read(),
        "the home kitchen can be read");
  }

  private static String homeText() {
    try (InputStream in = Includes.class.getResourceAsStream(HOME)) {
      return new String(Objects.requireNonNull(in, HOME).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same keys, with those of the file they name filled in. */
  Written dish(Written written) {
    return filledIn(written, new Way(false, List.of()));
  }

  /** The same keys, with those of the file they name filled in, or of a home's kitchen. */
  Written kitchen(Written written) {
    return filledIn(written, new Way(true, List.of()));
  }

  /**
   * What stands in a file that is named behind {@code from}, with all that it takes in itself; null where it cannot be read, and of a home's
   * kitchen, which is in no file.
   */
  @Nullable
  Written content(Written.Words name, boolean ofAKitchen) {
    return ofAKitchen && name.text().equals(AT_HOME) ? null
        : include(name, new Way(ofAKitchen, List.of()));
  }

  /** What stands in a file that is named as a value. */
  @Nullable
  Written beside(Written.Words name) {
    return include(name, new Way(false, List.of()));
  }

  private Written filledIn(Written written, Way way) {
    if (!(written instanceof Written.Keyed keyed)) {
      return written;
    }
    Written.Entry from = keyed.entry("from");
    if (from == null || from.value() instanceof Written.Nothing) {
      return written;
    }
    return takenIn(from.value(), way) instanceof Written.Keyed others ? merged(keyed, others)
        : merged(keyed, new Written.Keyed(List.of(), false, keyed.place()));
  }

  /** What stands in a file by its name; or the keys themselves, where somebody has written them in its place. */
  private @Nullable Written takenIn(Written from, Way way) {
    if (from instanceof Written.Keyed content) {
      return filledIn(content, way);
    }
    Written.Words name = desk.words(from);
    return name == null ? null : include(name, way);
  }

  private static Written.Entry beside(Written.Entry other, Written.Entry own) {
    return LISTED_BY_NAME.contains(own.key().text()) && own.value() instanceof Written.Keyed mine
        && other.value() instanceof Written.Keyed others
            ? new Written.Entry(own.key(), merged(mine, others)) : own;
  }

  private @Nullable Written include(Written.Words name, Way way) {
    if (way.kitchen() && name.text().equals(AT_HOME)) {
      return home();
    }
    Sheet here = sheets.get(name.place().file());
    if (here == null || folder == null) {
      desk.mistake(name.place(), new Fault.NoSuchFile(name.text(), Fault.Obstacle.OUTSIDE));
      return null;
    }
    return switch (folder.beside(here, name.text())) {
      case Folder.Opened.Shut(Fault fault) -> {
        desk.mistake(name.place(), fault);
        yield null;
      }
      case Folder.Opened.Open(Sheet sheet) when sheet.path().equals(here.path())
          || way.within().contains(sheet.path()) -> {
        desk.mistake(name.place(), new Fault.NoSuchFile(name.text(), Fault.Obstacle.CIRCLE));
        yield null;
      }
      case Folder.Opened.Open(Sheet sheet) -> included(name, sheet, way);
    };
  }

  private @Nullable Written included(Written.Words name, Sheet sheet, Way way) {
    Written read = read(sheet, Limits.PROBLEM);
    if (read != null && !(read instanceof Written.Keyed)) {
      desk.mistake(read.place(), new Fault.WrongShape("a file", Fault.Shape.LIST, "keys"));
    }
    List<Path> further = new ArrayList<>(way.within());
    further.add(sheets.getOrDefault(name.place().file(), sheet).path());
    return read == null ? null : filledIn(read, new Way(way.kitchen(), further));
  }

  private @Nullable Written read(Sheet sheet, Limits limits) {
    sheets.put(sheet.name(), sheet);
    opened.add(sheet.path());
    Written before = known.get(sheet.path());
    if (before != null) {
      return before;
    }
    int faults = desk.faults();
    Written read = new WrittenReader(sheet, limits, desk.mistakes()).read();
    if (read == null && desk.mistakes().none()) {
      desk.mistake(sheet.first(), new Fault.NotLaidOut(Fault.Slip.EMPTY, ""));
    }
    if (read != null && desk.faults() == faults) {
      known.put(sheet.path(), read);
    }
    return read;
  }

  private static Written.Keyed merged(Written.Keyed own, Written.Keyed others) {
    Map<String, Written.Entry> all = new LinkedHashMap<>();
    others.entries()
        .stream()
        .filter(entry -> !entry.key().text().equals("ovenloom"))
        .forEach(entry -> all.put(entry.key().text(), entry));
    own.entries().forEach(entry -> all.merge(entry.key().text(), entry, Includes::beside));
    all.remove("from");
    return new Written.Keyed(new ArrayList<>(all.values()), own.whole() && others.whole(), own.place());
  }
}
