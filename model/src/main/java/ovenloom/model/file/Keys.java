package ovenloom.model.file;

import java.util.List;

/**
 * The keys that may stand in one kind of place.
 *
 * @param of what they describe: {@code a step}
 * @param names all of them
 */
record Keys(String of, List<String> names) {

  Keys {
    names = List.copyOf(names);
  }

  static Keys of(String what, String... names) {
    return new Keys(what, List.of(names));
  }
}
