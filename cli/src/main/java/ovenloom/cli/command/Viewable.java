package ovenloom.cli.command;

import java.util.List;
import java.util.stream.Stream;
import ovenloom.cli.command.Named.Thing;
import ovenloom.cli.sheet.Place;
import ovenloom.cli.sheet.View;
import ovenloom.cli.sheet.Words;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Event;

/** The parts that a plan can be seen by, with all they are called. */
record Viewable(Event event) {

  Named<View> cooks() {
    return new Named<>("cook", event.cooks().stream().map(Viewable::cook).toList());
  }

  private static Thing<View> cook(Cook cook) {
    return new Thing<>(new View.OfCook(cook.name()), cook.name(), List.of(cook.name()));
  }

  /** The only one there is may be called the oven, whatever its name. */
  Named<View> ovens() {
    return new Named<>("oven", kitchen().ovens().stream().map(this::oven).toList());
  }

  private Thing<View> oven(Oven oven) {
    String name = words().oven(oven.name());
    return new Thing<>(new View.OfPlace(Place.all(oven.name()), name), oven.name(),
        List.of(oven.name(), name, bare(name)));
  }

  /** Cold and hot places, each as a whole and by its shelves: {@code fridge, top shelf}, {@code fridge/top}. */
  Named<View> shelves() {
    return new Named<>("cold or hot place or shelf",
        kitchen().stores().stream().flatMap(this::shelves).toList());
  }

  private Stream<Thing<View>> shelves(Store store) {
    return Stream.concat(Stream.of(whole(store)), store.shelves().stream().map(shelf -> shelf(store, shelf)));
  }

  private Thing<View> whole(Store store) {
    String name = "the " + store.name();
    List<String> shelves = store.shelves().stream().map(Shelf::name).toList();
    String shown = shelves.size() == 1 ? store.name()
        : store.name() + " (" + words().shelvesAlone(store.name(), shelves) + ")";
    return new Thing<>(new View.OfPlace(Place.all(store.name()), name), shown, List.of(store.name(), name));
  }

  private Thing<View> shelf(Store store, Shelf shelf) {
    String name = words().shelves(store.name(), List.of(shelf.name()));
    return new Thing<>(new View.OfPlace(new Place(store.name(), shelf.name()), name), "",
        List.of(bare(name), name, store.name() + "/" + shelf.name(), store.name() + ", " + shelf.name(),
            store.name() + " " + shelf.name(), bare(name).replace(",", "")));
  }

  private static String bare(String name) {
    return name.substring("the ".length());
  }

  private Words words() {
    return new Words(kitchen());
  }

  private Kitchen kitchen() {
    return event.kitchen();
  }
}
