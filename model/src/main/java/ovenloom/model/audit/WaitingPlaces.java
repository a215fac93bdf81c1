package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Setting;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** The places in which food waits, one after the other, and what is wrong with them. */
final class WaitingPlaces {

  record Fault(int off, Break.Unit unit, String what) {}

  private final Case plan;
  private final Wait wait;
  private final Stay stay;
  private final List<Stay.Part> parts;
  private final List<Fault> faults = new ArrayList<>();

  WaitingPlaces(Case plan, Wait wait, Stay stay) {
    this.plan = plan;
    this.wait = wait;
    this.stay = stay;
    this.parts = stay.parts().stream().filter(part -> part.when().minutes() > 0).toList();
  }

  List<Fault> faults() {
    for (Stay.Part part : parts) {
      switch (part.where()) {
        case Where.Counter() -> {}
        case Where.OnShelf where -> onShelf(where);
        case Where.InOven where -> inOven(where);
        case Where.OnBurner where -> onBurner(where);
      }
    }
    order();
    return faults;
  }

  private void onShelf(Where.OnShelf where) {
    Store store = plan.event().kitchen().store(where.store());
    if (store == null) {
      add(1, Break.Unit.TIMES, "there is no \"" + where.store() + "\"");
      return;
    }
    List<String> known = store.shelves().stream().map(Shelf::name).toList();
    for (String shelf : where.shelves()) {
      if (!known.contains(shelf)) {
        add(1, Break.Unit.TIMES, where.store() + " has no shelf \"" + shelf + "\"");
      }
    }
    int vessels = Math.max(1, Piece.of(plan, stay).size());
    if (where.shelves().size() != vessels) {
      add(Math.abs(where.shelves().size() - vessels), Break.Unit.PIECES,
          "it stands on " + where.shelves().size() + " shelves, and takes one for each of " + vessels);
    }
  }

  private void inOven(Where.InOven where) {
    Baking baking = wait.run().baking();
    if (baking == null || !baking.oven().equals(where.oven())) {
      add(1, Break.Unit.TIMES, "it waits in " + where.oven() + ", where it was not baked");
    }
    Oven oven = plan.event().kitchen().oven(where.oven());
    Setting mark = where.mark();
    if (oven != null && mark != null && !mark.temperature().equals(oven.hold().temperature())) {
      add(kelvins(mark, oven.hold()), Break.Unit.KELVINS,
          "food waits in " + where.oven() + " at " + oven.hold() + " or with it off, not at " + mark);
    }
  }

  private static int kelvins(Setting one, Setting other) {
    return Math.max(1, (int) Math.abs(one.temperature().kelvinsAbove(other.temperature())));
  }

  private void onBurner(Where.OnBurner where) {
    Placement run = wait.run();
    List<String> own = wait.steps().size() > 1 ? run.burners()
        : Share.of(plan, run, wait.steps().getFirst(), run.burners());
    if (own.isEmpty() || !own.equals(where.burners())) {
      add(1, Break.Unit.TIMES, "it waits on " + where.burners() + " and was cooked on " + own);
    }
  }

  /** Counter, one cold place, counter, and each of them may be missing; anything else for all of the time. */
  private void order() {
    String order = parts.stream().map(this::letter).collect(Collectors.joining());
    if (!order.matches("c?(fc?)?|.")) {
      boolean tooMany = order.matches("[cf]*");
      add(Math.max(1, tooMany ? parts.size() - 3 : parts.size() - 1), Break.Unit.TIMES, tooMany
          ? "it is moved more often than counter, one cold place, counter"
          : "it waits in a hot place, an oven or on a burner for some of the time: all of it, or none");
    }
  }

  private String letter(Stay.Part part) {
    return switch (part.where()) {
      case Where.Counter() -> "c";
      case Where.OnShelf where -> isCold(where.store()) ? "f" : "h";
      case Where.InOven where -> "o";
      case Where.OnBurner where -> "b";
    };
  }

  private boolean isCold(String name) {
    Store store = plan.event().kitchen().store(name);
    return store == null || store.kind().isCold();
  }

  private void add(int off, Break.Unit unit, String what) {
    faults.add(new Fault(off, unit, what));
  }
}
