package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Where;

/**
 * A hot cabinet or a blast chiller, which is not on all day: switched on in time for its food, and off after it. One with hours, or
 * that others take, is left to those who have it.
 */
record PlaceActs(Book book, FreeHands hands) {

  /** It is ready so long after it is switched on, minutes. Common practice, no source. */
  private static final int READY = 30;

  /** No sooner than so long before, minutes. Common practice, as is the next. */
  private static final int A_MORNING = 240;

  /** It stays on where it is wanted again so soon, minutes. */
  private static final int SOON = 180;

  List<Act> acts() {
    List<Act> acts = new ArrayList<>();
    book.event()
        .kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind() == Store.Kind.HOT || store.air() == Air.BLAST)
        .filter(store -> store.open().equals(Availability.ALWAYS))
        .forEach(store -> uses(store).forEach(use -> acts.addAll(acts(store, use))));
    return acts;
  }

  private List<Act> acts(Store store, Stretch use) {
    Clock clock = new Clock(book.event().calendar());
    int on = inTime(use.from());
    String when = on < use.from() ? ", for " + clock.time(use.from(), on) : "";
    String ready = "Switch on: " + Math.round(store.holds().inCelsius()) + " C" + when + ".";
    return List.of(act(store, on, Turn.DIAL, ready), act(store, use.to(), Turn.OFF, "Switch off."));
  }

  private static Act act(Store store, int at, Turn turn, String words) {
    return new Act(at, turn, List.of(), Words.capital(store.name()), words,
        Places.at(Set.of(Place.all(store.name()))));
  }

  /** In time, by whoever is there last before it; else as soon as somebody is. */
  private int inTime(int wanted) {
    return IntStream.concat(
        IntStream.rangeClosed(READY, A_MORNING).map(before -> wanted - before),
        IntStream.rangeClosed(wanted - READY, wanted))
        .filter(hands::isAnyoneThere)
        .findFirst()
        .orElse(wanted);
  }

  /** When it holds food, short breaks left out. */
  private List<Stretch> uses(Store store) {
    Stream<Stretch> runs = book.plan()
        .placements()
        .stream()
        .filter(run -> run.shelves().stream().anyMatch(each -> each.store().equals(store.name())))
        .map(Placement::when);
    Stream<Stretch> stays = book.plan()
        .stays()
        .stream()
        .flatMap(stay -> stay.parts().stream())
        .filter(part -> part.where() instanceof Where.OnShelf(String name, List<String> shelves)
            && name.equals(store.name()))
        .map(part -> part.when());
    List<Stretch> uses = new ArrayList<>();
    for (Stretch next : new Stretches(Stream.concat(runs, stays).toList()).parts()) {
      if (!uses.isEmpty() && next.from() - uses.getLast().to() < SOON) {
        uses.add(new Stretch(uses.removeLast().from(), next.to()));
      } else {
        uses.add(next);
      }
    }
    return uses;
  }
}
