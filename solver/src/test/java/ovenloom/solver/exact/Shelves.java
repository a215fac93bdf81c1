package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** What is put on a shelf has room there; raw food stands below what needs less cooking. */
final class Shelves {

  private final Cp cp;
  private final Steps steps;
  private final List<Shelved> all = new ArrayList<>();

  Shelves(Cp cp, Steps steps, Waits waits) {
    this.cp = cp;
    this.steps = steps;
    for (BatchStep step : steps.all()) {
      Need.OnShelf need = step.step().shelf();
      if (need != null) {
        inOneOf(step, need);
      }
    }
    for (Wait wait : waits.all()) {
      Span when = cp.maybeEmpty(wait.aside(), wait.back());
      wait.stores().forEach((name, there) -> add(wait.step(), true, store(name), when, there));
    }
    for (Store store : steps.event().kitchen().stores()) {
      for (int shelf = 0; shelf < store.shelves().size(); shelf++) {
        fit(store, shelf);
      }
    }
  }

  List<Shelved> all() {
    return all;
  }

  /** Where a step's food is while it runs, or while it waits. */
  List<Shelved> of(BatchStep step, boolean waits) {
    return all.stream().filter(each -> each.step().equals(step) && each.waits() == waits).toList();
  }

  private Store store(String name) {
    return Objects.requireNonNull(steps.event().kitchen().store(name));
  }

  private void inOneOf(BatchStep step, Need.OnShelf need) {
    List<Literal> one = new ArrayList<>();
    for (String name : need.stores()) {
      BoolVar there = cp.choice(step + " runs in " + name);
      one.add(there);
      add(step, false, store(name), steps.run(step.index()), there);
    }
    cp.model().addExactlyOne(one);
  }

  private void add(BatchStep step, boolean waits, Store store, Span when, Literal there) {
    List<List<Literal>> places = new ArrayList<>();
    for (int piece = 0; piece < Math.max(1, Pieces.of(steps, step.index()).size()); piece++) {
      List<Literal> shelves = new ArrayList<>();
      for (Shelf shelf : store.shelves()) {
        shelves.add(cp.choice(step + " on " + store.name() + "/" + shelf.name()));
      }
      cp.equal(Cp.sum(shelves), there);
      places.add(shelves);
    }
    all.add(new Shelved(step, waits, store, when, there, places));
  }

  private void fit(Store store, int level) {
    Shelf shelf = store.shelves().get(level);
    List<Standing> standing = new ArrayList<>();
    for (Shelved food : all) {
      List<Vessel> pieces = Pieces.of(steps, food.step().index());
      for (int piece = 0; food.store().equals(store) && piece < pieces.size(); piece++) {
        Standing one = new Standing(food.when(), pieces.get(piece).size(),
            food.places().get(piece).get(level));
        standing.add(one);
        if (one.height() > shelf.height().micrometres()) {
          cp.model().addImplication(one.here(), one.here().not());
        }
      }
    }
    Crowding.forbid(cp, new Fit(shelf.width(), shelf.depth(), steps.event().kitchen().gap()), standing);
  }

  /** The choice of a place for the vessels of a step, as it was solved: its shelves by name. */
  @Nullable
  static List<String> shelves(Shelved food, Answers answers) {
    if (!answers.is(food.there())) {
      return null;
    }
    List<String> names = new ArrayList<>();
    for (List<Literal> place : food.places()) {
      names.add(food.store().shelves().get(answers.which(place)).name());
    }
    return names;
  }
}
