package ovenloom.solver.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.solver.exact.LargeKitchen;
import ovenloom.solver.search.RandomSupper;

/** A kitchen and its menu, drawn by lot. */
record Drawn(long seed, String text, Event event) {

  /**
   * How large they are to be.
   *
   * @param kitchens how many of them
   * @param fewestDishes and one more for each next seed, as often as {@code spread} says, then the fewest again
   * @param ovens how many the smallest has; one with twice the dishes has twice as many
   */
  record Size(int kitchens, int least, int most, int fewestDishes, int spread, int ovens) {

    static final Size TO_60_STEPS = new Size(20, 10, 60, 2, 7, 1);
    static final Size TO_120_STEPS = new Size(20, 61, 120, 9, 6, 2);
    static final Size TO_300_STEPS = new Size(6, 250, 300, 34, 5, 6);
    static final Size OF_600_STEPS = new Size(4, 570, 630, 72, 6, 12);

    private int dishes(long seed) {
      return fewestDishes + Math.floorMod(seed, spread);
    }

    private int ovens(long seed) {
      return ovens * dishes(seed) / fewestDishes;
    }
  }

  /** The fewest dishes of a {@link LargeKitchen}; each next seed has two more, so many sizes in turn. */
  private static final int DISHES = 68;
  private static final int SPREAD = 5;

  /** As many as there are of 250 to 300 steps, but in kitchens of which CP-SAT can be told all rules. */
  static List<Drawn> forTheFullModel() {
    return all(Size.TO_300_STEPS, seed -> LargeKitchen.text(seed, DISHES + 2 * Math.floorMod(seed, SPREAD)));
  }

  String digest() {
    return Digest.of(text);
  }

  /** The first so many seeds with as many steps as there are to be. */
  static List<Drawn> all(Size size) {
    return all(size, seed -> RandomSupper.feast(seed, size.dishes(seed), size.ovens(seed)));
  }

  private static List<Drawn> all(Size size, LongFunction<String> text) {
    try {
      Path folder = Files.createTempDirectory("drawn");
      List<Drawn> all = LongStream.iterate(0, seed -> seed + 1)
          .mapToObj(seed -> drawn(seed, size, text.apply(seed), folder))
          .filter(Objects::nonNull)
          .limit(size.kitchens())
          .toList();
      Files.delete(folder);
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static @Nullable Drawn drawn(long seed, Size size, String text, Path folder) {
    Event event = read(text, folder);
    int steps = event == null ? 0 : Work.of(event).steps().size();
    return event != null && steps >= size.least() && steps <= size.most() ? new Drawn(seed, text, event)
        : null;
  }

  private static @Nullable Event read(String text, Path folder) {
    try {
      Path file = Files.writeString(folder.resolve("drawn.yaml"), text);
      Reading<Event> reading = ProblemFile.read(file, folder, null);
      Files.delete(file);
      return reading instanceof Reading.Understood<Event>(var event, var sources, var notes) ? event : null;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
