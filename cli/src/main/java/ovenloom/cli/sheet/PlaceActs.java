package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Where;

/** A hot cabinet or a blast chiller, which is not on all day: switched on in time for its food, and off after it. */
record PlaceActs(Book book) {

  /** It is ready so long after it is switched on, minutes. Common practice, no source. */
  private static final int READY = 30;

  /** It stays on where it is wanted again so soon, minutes. */
  private static final int SOON = 180;

  List<Act> acts() {
    List<Act> acts = new ArrayList<>();
    book.event()
        .kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind() == Store.Kind.HOT || store.air() == Air.BLAST)
        .forEach(store -> uses(store).forEach(use -> acts.addAll(acts(store, use))));
    return acts;
  }

  private List<Act> acts(Store store, Stretch use) {
    Clock clock = new Clock(book.event().calendar());
    int on = inHours(use.from());
    String when = on < use.from() ? ", for " + clock.time(use.from(), on) : "";
    String ready = "Switch on: " + Math.round(store.holds().inCelsius()) + " C" + when + ".";
    return List.of(act(store, on, ready), act(store, use.to(), "Switch off."));
  }

  private static Act act(Store store, int at, String words) {
    return new Act(at, Turn.DIAL, List.of(), Words.capital(store.name()), words);
  }

  /** In time, if somebody is there by then. */
  private int inHours(int wanted) {
    return book.event()
        .cooks()
        .stream()
        .flatMap(cook -> cook.hours().stream())
        .filter(hours -> hours.from() <= wanted && wanted <= hours.to())
        .mapToInt(hours -> Math.max(hours.from(), wanted - READY))
        .min()
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
