package ovenloom.model.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;

/** Reads where food keeps and for how long, and which cold or hot place a step stands in. */
final class KeepsReader {

  static final String COUNTER = "counter";
  static final String OVEN = "oven";
  static final String BURNER = "burner";

  private final Desk desk;
  private final Kitchen kitchen;

  KeepsReader(Desk desk, Kitchen kitchen) {
    this.desk = desk;
    this.kitchen = kitchen;
  }

  /** Whether a place of this name could not be told from others. */
  static boolean isTaken(@Nullable String name) {
    return COUNTER.equals(name) || OVEN.equals(name) || BURNER.equals(name);
  }

  /** A store that is named so wins over the kind; a kind this kitchen lacks allows nothing. */
  Keeps keeps(Written written) {
    Map<String, Integer> minutes = new TreeMap<>();
    Map<String, Integer> stores = new TreeMap<>();
    for (Written.Entry entry : desk.entries(written, "keeps", "fridge: 2 days")) {
      Integer time = desk.read(entry.value(), Scalars::minutes);
      String place = place(entry.key(), List.of(COUNTER, OVEN, BURNER));
      if (time == null || place == null) {
        continue;
      }
      if (named(place)) {
        stores.put(place, time);
      } else if (kind(place) == null) {
        minutes.put(place, time);
      } else {
        ofKind(place).forEach(store -> stores.putIfAbsent(store, time));
      }
    }
    return new Keeps(minutes.get(COUNTER), minutes.get(OVEN), minutes.get(BURNER), stores);
  }

  /** The stores that will do for a step. */
  Need.@Nullable OnShelf shelf(Fields step, String key) {
    Set<String> stores = new LinkedHashSet<>();
    for (Written each : step.each(key, each -> each)) {
      String place = place(each, List.of());
      if (place != null) {
        stores.addAll(named(place) ? List.of(place) : found(each, place));
      }
    }
    return stores.isEmpty() ? null : new Need.OnShelf(List.copyOf(stores));
  }

  private List<String> found(Written written, String place) {
    List<String> all = ofKind(place);
    if (all.isEmpty()) {
      Set<String> known = desk.names().all(Names.Kind.STORE);
      desk.mistake(written.place(),
          new Fault.UnknownName(place, "cold or hot place", null, List.copyOf(known),
              desk.names().isAtHome()));
    }
    return all;
  }

  private @Nullable String place(Written written, List<String> others) {
    Set<String> known = new LinkedHashSet<>(desk.names().all(Names.Kind.STORE));
    known.addAll(others);
    for (Store.Kind kind : Store.Kind.values()) {
      known.add(Scalars.word(kind));
    }
    return desk.reference(written, "place to keep food", known);
  }

  private boolean named(String place) {
    return desk.names().all(Names.Kind.STORE).contains(place);
  }

  private static Store.@Nullable Kind kind(String word) {
    for (Store.Kind kind : Store.Kind.values()) {
      if (Scalars.word(kind).equals(word)) {
        return kind;
      }
    }
    return null;
  }

  private List<String> ofKind(String word) {
    return kitchen.stores()
        .stream()
        .filter(store -> store.kind() == kind(word))
        .map(Store::name)
        .collect(Collectors.toList());
  }
}
