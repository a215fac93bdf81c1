package ovenloom.solver.bench;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.menu.Event;
import ovenloom.solver.exact.JustImpossible;

/**
 * A small kitchen that was made just impossible, as it is kept.
 *
 * @param taken what is missing in it
 */
public record Impossible(long seed, List<String> taken) {

  public Impossible {
    taken = List.copyOf(taken);
  }

  /** All that CP-SAT refuted. */
  public static List<Impossible> kept() {
    return References.in(References.IMPOSSIBLE)
        .all()
        .filter(words -> words.get(1).equals(JustImpossible.Verdict.IMPOSSIBLE.name()))
        .map(words -> new Impossible(Long.parseLong(words.getFirst()),
            Stream.of(String.join(" ", words.subList(2, words.size())).split(", ")).toList()))
        .toList();
  }

  public Event event() throws IOException {
    return Kitchens.inAFolder(folder -> JustImpossible.without(seed, taken, folder));
  }
}
