package ovenloom.model.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Temperature;

/** Reads a cold or a hot place. */
final class StoreReader {

  static final Keys STORE = Keys.of("a cold or hot place", "name", "holds", "air", "warm load", "shelves",
      "hours", "taken");
  static final Keys SHELF = Keys.of("a shelf", "name", "size", "count", "hours", "taken");

  /** What holds this or colder is a freezer. Common practice. */
  private static final Temperature FREEZER = Temperature.celsius(-12);

  private static final int MOST_SHELVES = 200;

  private final Desk desk;
  private final HoursReader hours;

  StoreReader(Desk desk, HoursReader hours) {
    this.desk = desk;
    this.hours = hours;
  }

  @Nullable
  Store cold(Written written) {
    return store(written, false);
  }

  @Nullable
  Store hot(Written written) {
    return store(written, true);
  }

  private @Nullable Store store(Written written, boolean hot) {
    Fields store = desk.fields(written, STORE);
    String name = store.takeNeeded("name", named -> desk.newName(named, Names.Kind.STORE));
    if (KeepsReader.isTaken(name)) {
      desk.contradiction(store.placeOf("name"), "\"" + name + "\" has a meaning of its own in \"keeps:\"",
          "another name");
    }
    Temperature holds = store.needed("holds", Temperature::read);
    Air air = store.read("air", Scalars.oneOf(Air.class), Air.STILL);
    Mass own = store.read("warm load", StoreReader::someMass);
    Written levels = store.needed("shelves");
    store.refuseEmpty("shelves");
    List<Shelf> shelves = levels == null ? List.of() : shelves(levels);
    var open = hours.availability(store);
    if (name == null || holds == null || shelves.isEmpty()) {
      return null;
    }
    Store.Kind kind = kind(holds, air, hot);
    if (own != null && kind != Store.Kind.FRIDGE) {
      desk.contradiction(store.placeOf("warm load"),
          "\"" + name + "\" is " + called(kind) + ", and only a fridge has a warm load",
          "no \"warm load\" here");
      return null;
    }
    return new Store(
        name, kind, holds, air, shelves, own == null ? Store.usualWarmLoad(kind, air) : own, open);
  }

  private static String called(Store.Kind kind) {
    return kind == Store.Kind.HOT ? "a hot place" : kind == Store.Kind.ICE_BATH ? "an ice bath" : "a freezer";
  }

  /** More than nothing. */
  static Parsed<Mass> someMass(String text) {
    return Scalars.checked(Mass.read(text), text, mass -> mass.milligrams() > 0 ? mass : null,
        "more than nothing, like \"6 kg\"");
  }

  private static Store.Kind kind(Temperature holds, Air air, boolean hot) {
    if (hot) {
      return Store.Kind.HOT;
    }
    if (air == Air.ICE_WATER) {
      return Store.Kind.ICE_BATH;
    }
    return holds.compareTo(FREEZER) <= 0 ? Store.Kind.FREEZER : Store.Kind.FRIDGE;
  }

  private List<Shelf> shelves(Written written) {
    List<Shelf> shelves = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Written each : desk.items(written)) {
      Fields shelf = desk.fields(each, SHELF);
      int count = shelf.read("count", Scalars::count, 1);
      String name = shelf.take("name", desk::name);
      Size size = shelf.needed("size", Size::read);
      Length height = size == null ? null : height(shelf, size);
      var open = hours.availability(shelf);
      if (shelves.size() + count > MOST_SHELVES) {
        desk.mistake(shelf.place(), new Fault.TooMuch("shelves in a place", MOST_SHELVES));
        return shelves;
      }
      for (int i = 1; i <= count; i++) {
        String called = name == null ? "shelf " + (shelves.size() + 1) : count == 1 ? name : name + " " + i;
        if (!names.add(called)) {
          desk.mistake(shelf.placeOf("name"), new Fault.RepeatedName(called, "shelf"));
        } else if (size != null && height != null) {
          shelves.add(new Shelf(called, size.width(), size.depth(), height, open));
        }
      }
    }
    return shelves;
  }

  private @Nullable Length height(Fields shelf, Size size) {
    if (size.height() == null) {
      desk.contradiction(shelf.placeOf("size"), "a shelf of " + size + " has no height",
          "width, depth and height, like \"50 x 35 x 20 cm\"");
    }
    return size.height();
  }
}
