package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.audit.Surface.Place;
import ovenloom.model.audit.Surface.Standing;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;

/** Whatever is put on a shelf has room there, beside what stands on it and below the next. */
record Shelves() implements KitchenRule {

  @Override
  public String id() {
    return "shelves";
  }

  @Override
  public String sentence() {
    return "Whatever is put on a shelf has room there, beside what stands on it and below the next.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    plan.plan().placements().forEach(run -> checkIsOnOne(plan, run, breaks));
    Map<Place, Surface> shelves = new TreeMap<>();
    for (Shelved food : Shelved.of(plan)) {
      checkCount(food, breaks);
      for (int piece = 0; piece < food.places().size(); piece++) {
        put(plan, food, piece, shelves, breaks);
      }
    }
    shelves.values().forEach(shelf -> breaks.addAll(shelf.check(this, plan)));
    return breaks;
  }

  private void checkIsOnOne(Case plan, Placement run, List<Break> breaks) {
    List<BatchStep> steps = plan.steps(run);
    Need.OnShelf need = steps.isEmpty() ? null : steps.getFirst().step().shelf();
    if (need != null && run.shelves().isEmpty()) {
      breaks.add(
          Break.of(this, List.of(plan.name(run)), run.when(), 1, Unit.PIECES, "needs a shelf and has none"));
    }
    List<String> allowed = need == null ? List.of() : need.stores();
    for (ShelfPlace place : run.shelves()) {
      if (!steps.isEmpty() && !allowed.contains(place.store())) {
        breaks.add(Break.of(this, List.of(plan.name(run), place.store()), run.when(), 1, Unit.PIECES,
            need == null ? "needs no shelf and has one" : "may be in " + allowed + " only"));
      }
    }
  }

  private void checkCount(Shelved food, List<Break> breaks) {
    int wanted = Math.max(1, food.pieces().size());
    int off = Math.abs(wanted - food.places().size());
    if (off > 0) {
      breaks
          .add(broken(food, food.places().isEmpty() ? "" : food.places().getFirst().store(), off, Unit.PIECES,
              "needs " + wanted + " places and has " + food.places().size()));
    }
  }

  private void put(Case plan, Shelved food, int piece, Map<Place, Surface> shelves, List<Break> breaks) {
    ShelfPlace place = food.places().get(piece);
    Store store = plan.event().kitchen().store(place.store());
    int level = store == null ? -1
        : store.shelves().stream().map(Shelf::name).toList().indexOf(place.shelf());
    if (store == null || level < 0) {
      breaks.add(broken(food, place.store(), 1, Unit.PIECES,
          "there is no shelf " + place.shelf() + " of " + place.store() + " here"));
    } else if (piece < food.pieces().size()) {
      Shelf shelf = store.shelves().get(level);
      Piece vessel = food.pieces().get(piece);
      checkHeight(food, vessel, place, shelf, breaks);
      Size size = vessel.size();
      if (size != null) {
        shelves
            .computeIfAbsent(new Place(place.store(), level),
                at -> new Surface(at, shelf.width(), shelf.depth()))
            .put(new Standing(food.dish(), food.step(), food.batches(), piece, size, food.who()),
                food.when());
      }
    }
  }

  private void checkHeight(Shelved food, Piece piece, ShelfPlace place, Shelf shelf, List<Break> breaks) {
    long off = piece.height().micrometres() - shelf.height().micrometres();
    if (off > 0) {
      breaks.add(broken(food, place.store(), Math.ceilDiv(off, 1000), Unit.MILLIMETRES,
          "the " + piece.name() + " is " + piece.height() + " tall, and the shelf " + shelf.name() + " "
              + shelf.height()));
    }
  }

  private Break broken(Shelved food, String store, long off, Unit unit, String what) {
    return Break.of(this, List.of(food.who(), store), food.when(), off, unit, what);
  }
}
