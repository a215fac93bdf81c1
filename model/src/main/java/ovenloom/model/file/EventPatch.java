package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Lays patches over an event as it is written. What the kitchen and the dishes take in with {@code from:} is there for the patches as if it
 * stood in the event; a patch that says {@code from:} itself has that file taken in instead, before any patch is laid over.
 */
final class EventPatch {

  private static final String FROM = "from";
  private static final String KITCHEN = "kitchen";
  private static final String DISHES = "dishes";

  /** What an event says of a dish, and no recipe. */
  private static final Set<String> PART_IN_THE_MENU = Set.of("course", "for");

  private final Includes includes;
  private final MergePatch patch;

  EventPatch(Includes includes, Desk desk) {
    this.includes = includes;
    patch = new MergePatch(desk);
  }

  /** What comes of the patches, one after the other. */
  Written over(Written.Keyed event, List<Written> patches) {
    Written.Keyed files = event;
    List<Written> rest = new ArrayList<>();
    for (Written each : patches) {
      Written.Keyed named = withFiles(files, each);
      rest.add(withoutFiles(each, files, named));
      files = named;
    }
    Written patched = filledIn(files, patches);
    for (Written each : rest) {
      patched = patch.over(patched, each);
    }
    return patched;
  }

  /** The event with the files a patch names in place of those it named itself, or of what it wrote. */
  private Written.Keyed withFiles(Written.Keyed event, Written change) {
    Written.Keyed kitchen = keyed(change, KITCHEN);
    Written.Keyed dishes = keyed(change, DISHES);
    Written.Keyed named = event;
    if (isFromAFile(kitchen)) {
      named = with(named, KITCHEN, fromItsFile(kitchen(event), kitchen));
    }
    if (dishes != null && value(named, DISHES) instanceof Written.Many list) {
      List<Written> all = list.items()
          .stream()
          .map(dish -> fromItsFile(dish, value(dishes, name(dish))))
          .toList();
      named = with(named, DISHES, new Written.Many(all, list.place()));
    }
    return named;
  }

  /** What was written in place goes, but for a dish's part in this menu; what stood beside another file stays. */
  private static Written fromItsFile(Written thing, @Nullable Written change) {
    if (!isFromAFile(change) || !(change instanceof Written.Keyed keyed)
        || !(thing instanceof Written.Keyed old)) {
      return thing;
    }
    Written file = Objects.requireNonNull(value(keyed, FROM));
    Written.Keyed kept = isFromAFile(old) ? old : new Written.Keyed(
        old.entries().stream().filter(entry -> PART_IN_THE_MENU.contains(entry.key().text())).toList(),
        old.whole(),
        old.place());
    return with(kept, FROM, file);
  }

  private String name(Written dish) {
    Written name = includes.dish(dish) instanceof Written.Keyed keyed ? value(keyed, "dish") : null;
    return name instanceof Written.Words words ? words.text() : "";
  }

  /** With all that kitchen and dishes take in. A home's kitchen is written only where a patch changes it. */
  private Written filledIn(Written.Keyed event, List<Written> patches) {
    Written.Keyed filled = event;
    if (patches.stream().anyMatch(change -> keyed(change, KITCHEN) != null)) {
      filled = with(filled, KITCHEN, includes.kitchen(kitchen(event)));
    }
    return value(event, DISHES) instanceof Written.Many dishes
        ? with(filled, DISHES,
            new Written.Many(dishes.items().stream().map(includes::dish).toList(), dishes.place()))
        : filled;
  }

  private Written kitchen(Written.Keyed event) {
    Written kitchen = value(event, KITCHEN);
    return kitchen == null ? includes.home() : kitchen;
  }

  /** What is left of a patch once its files are taken in: of a dish under the name that its file gives it. A new dish still names its own. */
  private Written withoutFiles(Written change, Written.Keyed before, Written.Keyed after) {
    Written.Keyed kitchen = keyed(change, KITCHEN);
    Written.Keyed dishes = keyed(change, DISHES);
    Written rest = change;
    if (rest instanceof Written.Keyed keyed && kitchen != null) {
      rest = with(keyed, KITCHEN, withoutFile(kitchen));
    }
    if (rest instanceof Written.Keyed keyed && dishes != null) {
      List<String> old = names(before);
      List<String> now = names(after);
      List<Written.Entry> all = dishes.entries()
          .stream()
          .map(entry -> withoutFile(entry, old.indexOf(entry.key().text()), now))
          .toList();
      rest = with(keyed, DISHES, new Written.Keyed(all, dishes.whole(), dishes.place()));
    }
    return rest;
  }

  private static Written.Entry withoutFile(Written.Entry dish, int index, List<String> now) {
    return index < 0 || !isFromAFile(dish.value()) || !(dish.value() instanceof Written.Keyed keyed) ? dish
        : new Written.Entry(new Written.Words(now.get(index), dish.key().place(), null, ""),
            withoutFile(keyed));
  }

  private List<String> names(Written.Keyed event) {
    return value(event, DISHES) instanceof Written.Many list ? list.items().stream().map(this::name).toList()
        : List.of();
  }

  private static boolean isFromAFile(@Nullable Written change) {
    return change instanceof Written.Keyed keyed && keyed.entry(FROM) != null;
  }

  private static Written withoutFile(Written.Keyed keyed) {
    return new Written.Keyed(
        keyed.entries().stream().filter(entry -> !entry.key().text().equals(FROM)).toList(), keyed.whole(),
        keyed.place());
  }

  private static Written.@Nullable Keyed keyed(Written thing, String key) {
    return thing instanceof Written.Keyed keyed && value(keyed, key) instanceof Written.Keyed inside ? inside
        : null;
  }

  private static @Nullable Written value(Written.Keyed keyed, String key) {
    Written.Entry entry = keyed.entry(key);
    return entry == null ? null : entry.value();
  }

  /** The same keys with another value for one, which may be new. */
  private static Written.Keyed with(Written.Keyed keyed, String key, Written value) {
    Written.Entry old = keyed.entry(key);
    Written.Words name = old == null ? new Written.Words(key, value.place(), null, "") : old.key();
    Written.Entry now = new Written.Entry(name, value);
    List<Written.Entry> entries = old == null
        ? Stream.concat(keyed.entries().stream(), Stream.of(now)).toList()
        : new ArrayList<>(
            keyed.entries().stream().map(entry -> entry.key().text().equals(key) ? now : entry).toList());
    return new Written.Keyed(entries, keyed.whole(), keyed.place());
  }
}
