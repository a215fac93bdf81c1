package ovenloom.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ovenloom.model.file.Nearest;

/**
 * Things of one kind that are asked for by name, in small or capital letters.
 *
 * @param kind of what: {@code cook}
 */
record Named<T>(String kind, List<Thing<T>> things) {

  /**
   * One of them.
   *
   * @param shown where all there are must be told; empty for what is told with another
   * @param names all it is called
   */
  record Thing<T>(T thing, String shown, List<String> names) {
    Thing {
      names = List.copyOf(names);
    }

    private boolean isCalled(String name) {
      return names.stream().anyMatch(each -> plain(each).equals(plain(name)));
    }
  }

  Named {
    things = List.copyOf(things);
  }

  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** The one that is called so, or what to say where none is. */
  Asked<T> asked(String name) {
    for (Thing<T> each : things) {
      if (each.isCalled(name)) {
        return new Asked.For<>(each.thing());
      }
    }
    return new Asked.Wrong<>(none(name));
  }

  private List<String> none(String name) {
    List<String> lines = new ArrayList<>(List.of("there is no " + kind + " \"" + name + "\""));
    String nearest = Nearest.to(name, things.stream().flatMap(each -> each.names().stream()).toList());
    if (nearest != null) {
      lines.add("Did you mean \"" + nearest + "\"?");
    }
    List<String> shown = things.stream().map(Thing::shown).filter(each -> !each.isEmpty()).toList();
    lines.add(shown.isEmpty() ? "There is none." : "There is: " + String.join(", ", shown));
    return lines;
  }
}
