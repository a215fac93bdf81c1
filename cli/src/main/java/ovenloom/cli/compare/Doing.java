package ovenloom.cli.compare;

import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Words;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;

/**
 * When, where and by whom a step is done in one plan.
 *
 * @param from the minute in which it begins
 * @param where in which oven at which marks, on which burners or shelves; empty for what takes none
 * @param who in the order of their names; empty where nobody's hands are needed
 */
public record Doing(int from, String when, String where, String who) {

  /**
   * One of the three.
   *
   * @param isOther than in the first plan
   */
  public record Part(String words, boolean isOther) {}

  static Doing of(Event event, Placement run) {
    return new Doing(run.when().from(), new Clock(event.calendar()).time(run.when().from(), 0),
        where(event.kitchen(), run), who(run));
  }

  private static String where(Kitchen kitchen, Placement run) {
    Words words = new Words(kitchen);
    String oven = run.baking() == null ? "" : oven(words, run.baking());
    String burners = run.burners().isEmpty() ? "" : words.burners(run.burners());
    return Stream.concat(Stream.of(oven, burners), shelves(words, run.shelves()))
        .filter(each -> !each.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** By its own name, since the only one of a kitchen may be one of two in another. */
  private static String oven(Words words, Baking baking) {
    String marks = baking.stages()
        .stream()
        .map(stage -> stage.mark().toString())
        .collect(Collectors.joining(", then "));
    return baking.oven() + ", " + words.mode(baking.oven(), baking.mode()) + marks;
  }

  private static Stream<String> shelves(Words words, List<ShelfPlace> places) {
    return places.stream()
        .collect(Collectors.groupingBy(ShelfPlace::store, TreeMap::new,
            Collectors.mapping(ShelfPlace::shelf, Collectors.toList())))
        .entrySet()
        .stream()
        .map(store -> words.shelves(store.getKey(), store.getValue()));
  }

  private static String who(Placement run) {
    TreeSet<String> cooks = new TreeSet<>();
    run.hands().forEach(hands -> cooks.addAll(hands.cooks()));
    return Words.and(List.copyOf(cooks));
  }

  /** When, where and by whom, as far as there is something to say, beside how it is done in the first plan, if it is. */
  public List<Part> beside(@Nullable Doing first) {
    return Stream.of(part(first, Doing::when), part(first, Doing::where), part(first, Doing::who))
        .filter(part -> !part.words().isEmpty())
        .toList();
  }

  private Part part(@Nullable Doing first, Function<Doing, String> words) {
    String own = words.apply(this);
    return new Part(own, first != null && !words.apply(first).equals(own));
  }
}
