package ovenloom.cli.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** All lanes of a plan in which anything is, in the order in which the kitchen names its things. */
public final class Lanes {

  private static final Batches NONE = Batches.only(1);

  private final Plan plan;

  private Lanes(Plan plan) {
    this.plan = plan;
  }

  /** Ovens, burners, cooks, shelves, vessels. */
  public static List<Lane> of(Plan plan) {
    Lanes lanes = new Lanes(plan);
    List<Lane> all = new ArrayList<>();
    plan.event().kitchen().ovens().forEach(oven -> all.add(lanes.oven(oven)));
    plan.event().kitchen().burners().forEach(burner -> all.add(lanes.burner(burner)));
    plan.event().cooks().forEach(cook -> all.add(lanes.cook(cook)));
    plan.event()
        .kitchen()
        .stores()
        .forEach(store -> store.shelves().forEach(shelf -> all.add(lanes.shelf(store, shelf))));
    all.addAll(VesselLanes.of(plan));
    all.removeIf(lane -> lane.boxes().stream().allMatch(box -> box.use() == Box.Use.BREAK));
    return all;
  }

  /** On each rack from the load to the end of the bake, and what waits there after it. */
  private Lane oven(Oven oven) {
    List<Box> boxes = new ArrayList<>();
    for (Placement run : plan.placements()) {
      if (run.baking() != null && run.baking().oven().equals(oven.name())) {
        run.baking().racks().stream().distinct().forEach(rack -> boxes.add(Box.of(run).inRow(rack)));
      }
    }
    parts(where -> where instanceof Where.InOven in && in.oven().equals(oven.name()))
        .forEach(box -> racks(box).forEach(rack -> boxes.add(box.inRow(rack))));
    return new Lane(Lane.Kind.OVEN, oven.name(), oven.name(), boxes).stackedByLevel();
  }

  /** On which racks its step was baked. */
  private List<Integer> racks(Box wait) {
    Placement run = plan.placement(wait.dish(), wait.step(), wait.batches().first());
    return run.baking() == null ? List.of() : run.baking().racks().stream().distinct().toList();
  }

  private Lane burner(Burner burner) {
    List<Box> boxes = new ArrayList<>();
    plan.placements()
        .stream()
        .filter(run -> run.burners().contains(burner.name()))
        .map(Box::of)
        .forEach(boxes::add);
    parts(where -> where instanceof Where.OnBurner on && on.burners().contains(burner.name()))
        .forEach(boxes::add);
    return new Lane(Lane.Kind.BURNER, burner.name(), burner.name(), boxes);
  }

  private Lane shelf(Store store, Shelf shelf) {
    ShelfPlace here = new ShelfPlace(store.name(), shelf.name());
    List<Box> boxes = new ArrayList<>();
    plan.placements().stream().filter(run -> run.shelves().contains(here)).map(Box::of).forEach(boxes::add);
    parts(where -> where instanceof Where.OnShelf on && on.store().equals(store.name())
        && on.shelves().contains(shelf.name())).forEach(boxes::add);
    return new Lane(Lane.Kind.SHELF, store.name(), shelf.name(), boxes).stacked();
  }

  private Stream<Box> parts(Predicate<Where> here) {
    return plan.stays()
        .stream()
        .flatMap(stay -> stay.parts()
            .stream()
            .filter(part -> here.test(part.where()))
            .map(part -> Box.of(stay, part)))
        .filter(box -> box.when().minutes() > 0);
  }

  private Lane cook(Cook cook) {
    List<Box> boxes = new ArrayList<>();
    for (Placement run : plan.placements()) {
      hands(run.hands(), cook).forEach(when -> boxes.add(Box.of(run).during(when)));
    }
    for (Stay stay : plan.stays()) {
      hands(stay.hands(), cook).forEach(when -> boxes.add(
          new Box(Box.Use.WORK, when, stay.dish(), stay.step(), stay.batches(), 1, 0)));
    }
    for (Wash wash : plan.washes()) {
      if (wash.cook().equals(cook.name())) {
        boxes.add(VesselLanes.box(wash));
      }
    }
    cook.breaks().forEach(when -> boxes.add(new Box(Box.Use.BREAK, when, "", "", NONE, 1, 0)));
    return new Lane(Lane.Kind.COOK, cook.name(), cook.name(), Box.together(boxes)).stacked();
  }

  private static Stream<Stretch> hands(List<HandsOn> all, Cook cook) {
    return all.stream().filter(hands -> hands.cooks().contains(cook.name())).map(HandsOn::when);
  }
}
