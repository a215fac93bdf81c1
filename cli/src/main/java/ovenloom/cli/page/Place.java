package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Words;
import ovenloom.cli.sheet.Wrapped;
import ovenloom.cli.stand.Scene;
import ovenloom.cli.stand.Stands;
import ovenloom.cli.stand.Stood;
import ovenloom.cli.stand.Surface;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * An oven with its racks, a fridge with its shelves, drawn to scale from above, the highest first.
 *
 * @param window all of the time in which something stands there
 * @param full the minute in which most does
 */
public record Place(String name, boolean isOven, Window window, int full, List<Level> levels) {

  /** So many letters high is a drawing wide. */
  private static final int LETTERS = 20;

  /** How wide a letter is, as a share of its height. */
  private static final double LETTER = 0.54;

  /** One rack or shelf. */
  public record Level(String name, Surface surface) {

    /** Sides in millimetres. */
    public long width() {
      return mm(surface.size().width().micrometres());
    }

    public long depth() {
      return mm(surface.size().depth().micrometres());
    }

    /** Micrometres in millimetres. */
    public long mm(long micrometres) {
      return micrometres / 1000;
    }

    /** How far its back is from the back of the surface, in millimetres. */
    public long down(Stood stood) {
      return mm(surface.size().depth().micrometres() - stood.front() - stood.depth());
    }

    /** How high letters are, in millimetres of the drawing. */
    public long letters() {
      return Math.max(1, width() / LETTERS);
    }

    /** Which dish, and in what, line by line as they have room on what stands there. */
    public List<String> words(Stood stood) {
      int columns = Math.max(1, (int) (mm(stood.width()) / (letters() * LETTER)));
      return Stream.of(stood.dish(), stood.vessel())
          .flatMap(words -> Wrapped.lines(words, columns).stream())
          .limit(mm(stood.depth()) / letters())
          .toList();
    }

    public List<Scene> scenes() {
      return surface.scenes().stream().filter(scene -> !scene.there().isEmpty()).toList();
    }
  }

  public Place {
    levels = List.copyOf(levels);
  }

  /** {@code Saturday 10 October 18:20}, when most stands there. */
  public String when() {
    return window.clock().dayAndMonth(full) + " " + window.clock().column(full);
  }

  static List<Place> of(Plan plan) {
    Map<String, List<Surface>> byPlace = new LinkedHashMap<>();
    Stands.of(plan)
        .forEach(
            surface -> byPlace.computeIfAbsent(surface.place(), place -> new ArrayList<>()).add(surface));
    return byPlace.entrySet().stream().map(each -> of(plan, each.getKey(), each.getValue())).toList();
  }

  private static Place of(Plan plan, String name, List<Surface> surfaces) {
    boolean isOven = plan.event().kitchen().oven(name) != null;
    Words words = new Words(plan.event().kitchen());
    List<Level> levels = surfaces.stream()
        .sorted(Comparator.comparingInt(surface -> isOven ? -surface.level() : surface.level()))
        .map(surface -> new Level(isOven ? words.racks(name, List.of(surface.level())) : shelf(plan, surface),
            surface))
        .toList();
    Stretch all = new Stretch(starts(surfaces).min(Comparator.naturalOrder()).orElseThrow(),
        surfaces.stream().mapToInt(surface -> surface.scenes().getLast().when().to()).max().orElseThrow());
    return new Place(name, isOven, new Window(all, new Clock(plan.event().calendar())), fullest(surfaces),
        levels);
  }

  private static String shelf(Plan plan, Surface surface) {
    Store store = plan.event().kitchen().store(surface.place());
    return store == null ? "" : new Words(plan.event().kitchen()).shelvesAlone(store.name(),
        List.of(store.shelves().get(surface.level()).name()));
  }

  private static int fullest(List<Surface> surfaces) {
    return starts(surfaces).max(Comparator.<Integer>comparingInt(minute -> standing(surfaces, minute))
        .thenComparing(Comparator.reverseOrder())).orElse(0);
  }

  private static Stream<Integer> starts(List<Surface> surfaces) {
    return surfaces.stream().flatMap(surface -> surface.scenes().stream()).map(scene -> scene.when().from());
  }

  private static int standing(List<Surface> surfaces, int minute) {
    return surfaces.stream()
        .flatMap(surface -> surface.scenes().stream())
        .filter(scene -> scene.when().contains(minute))
        .mapToInt(scene -> scene.there().size())
        .sum();
  }
}
