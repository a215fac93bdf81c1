package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Spread;
import ovenloom.solver.timeline.Layout;
import ovenloom.solver.timeline.RackFit;

/** How vessels stand wherever more than eight share a rack or shelf. */
final class Spreads {

  /** One vessel on a surface for a while. */
  private record Standing(Run run, Batches batches, int number, Piece piece, int from, int to) {}

  private final Draft draft;
  private final Runs runs;
  private final List<Spread> spreads = new ArrayList<>();

  private Spreads(Draft draft) {
    this.draft = draft;
    runs = draft.runs();
  }

  static List<Spread> of(Draft draft) {
    Spreads all = new Spreads(draft);
    Event event = draft.runs().event();
    for (int oven = 0; oven < event.kitchen().ovens().size(); oven++) {
      all.addOven(oven, event.kitchen().ovens().get(oven));
    }
    for (int store = 0; store < event.kitchen().stores().size(); store++) {
      all.addStore(store, event.kitchen().stores().get(store));
    }
    return all.spreads;
  }

  private void addOven(int number, Oven oven) {
    for (int level = 0; level < oven.racks().size(); level++) {
      Rack rack = oven.racks().get(level);
      List<Standing> standing = new ArrayList<>();
      for (Run run : runs.runs()) {
        BakeChoice choice = draft.choice[run.index()];
        if (choice != null && choice.oven() == number) {
          add(standing, run, draft.racks[run.index()], level, draft.outOfTheOven(run.index()));
        }
      }
      add(oven.name(), level, rack.width(), rack.depth(), standing);
    }
  }

  private void addStore(int number, Store store) {
    for (int level = 0; level < store.shelves().size(); level++) {
      Shelf shelf = store.shelves().get(level);
      List<Standing> standing = new ArrayList<>();
      for (Run run : runs.runs()) {
        if (draft.store[run.index()] == number) {
          add(standing, run, draft.shelves[run.index()], level, draft.end[run.index()]);
        }
      }
      for (int wait = 0; wait < runs.waits().size(); wait++) {
        addWait(standing, wait, number, level);
      }
      add(store.name(), level, shelf.width(), shelf.depth(), standing);
    }
  }

  private void add(List<Standing> standing, Run run, int @Nullable [] levels, int level, int to) {
    for (int i = 0; levels != null && i < run.pieces().size() && i < levels.length; i++) {
      if (levels[i] == level && run.pieces().get(i).shape() != Piece.NO_ROOM) {
        int index = run.index();
        standing.add(new Standing(
            run, run.batches(), i, run.pieces().get(i), draft.start[index], to));
      }
    }
  }

  private void addWait(List<Standing> standing, int number, int store, int level) {
    Wait wait = runs.waits().get(number);
    Run run = runs.runs().get(wait.run());
    for (WaitPart part : draft.parts(number)) {
      boolean here = part.kind() == WaitPart.Kind.STORE && part.place() == store;
      for (int i = 0; here && i < wait.pieces().size(); i++) {
        if (part.level(i) == level && wait.pieces().get(i).shape() != Piece.NO_ROOM) {
          standing.add(new Standing(run, wait.batches(), i, wait.pieces().get(i), part.from(), part.to()));
        }
      }
    }
  }

  private void add(String place, int level, Length width, Length depth, List<Standing> all) {
    if (all.size() <= RackFit.EXACT) {
      return;
    }
    TreeSet<Integer> moments = new TreeSet<>();
    all.forEach(each -> moments.addAll(List.of(each.from(), each.to())));
    int from = moments.first();
    for (int to : moments.tailSet(from, false)) {
      int began = from;
      List<Standing> there = all.stream().filter(each -> each.from() <= began && each.to() > began).toList();
      if (there.size() > RackFit.EXACT) {
        spread(place, level, width, depth, there, new Stretch(from, to));
      }
      from = to;
    }
  }

  private void spread(
      String place, int level, Length width, Length depth, List<Standing> there, Stretch when) {
    int gap = (int) runs.event().kitchen().gap().micrometres();
    RackFit fit = new RackFit(
        runs.footprints(), (int) width.micrometres(), (int) depth.micrometres(), gap);
    int[] shapes = there.stream().mapToInt(each -> each.piece().shape()).toArray();
    Layout layout = fit.layout(shapes, shapes.length);
    if (layout == null) {
      return;
    }
    List<Spread.Spot> spots = new ArrayList<>();
    for (int i = 0; i < shapes.length; i++) {
      spots.add(spot(there.get(i), layout.spots().get(i)));
    }
    spreads.add(new Spread(place, level, when, spots));
  }

  /** A layout turns the longer side; a plan turns the width. */
  private Spread.Spot spot(Standing standing, Layout.Spot spot) {
    boolean deep = standing.piece().isDeeperThanWide();
    return new Spread.Spot(
        standing.run().dish().name(),
        standing.run().step().name(),
        standing.batches(),
        standing.number(),
        new Length(spot.x()),
        new Length(spot.y()),
        spot.turned() != deep);
  }
}
