package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.lane.Lanes;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.menu.Batches;

/** What goes on just before a minute: what each oven does, what is in which place and until when, whose hands are at what. */
final class UnderWay {

  private final Book book;
  private final int at;
  private final Words words;
  private final Clock clock;
  private final List<Standing> food;

  UnderWay(Book book, int at) {
    this.book = book;
    this.at = at;
    this.words = new Words(book.event().kitchen());
    this.clock = new Clock(book.event().calendar());
    this.food = Standing.all(book, at)
        .stream()
        .sorted(Comparator.comparingInt(each -> each.spot().fromTop(book.event().kitchen())))
        .toList();
  }

  /** Ovens, burners, cold and hot places, machines, the worktop, cooks. */
  List<Going> all() {
    Kitchen kitchen = book.event().kitchen();
    List<Going> all = new ArrayList<>();
    kitchen.ovens().forEach(oven -> all.addAll(oven(oven.name())));
    all.addAll(in("burners"));
    kitchen.stores().forEach(store -> all.addAll(in("store " + store.name())));
    kitchen.appliances().forEach(machine -> all.addAll(in("machine " + machine.name())));
    all.addAll(in("bench"));
    Lanes.of(book.plan())
        .stream()
        .filter(lane -> lane.kind() == Lane.Kind.COOK)
        .forEach(cook -> all.addAll(hands(cook)));
    return all;
  }

  private List<Going> oven(String oven) {
    List<Going> inside = in("oven " + oven);
    String dial = new OvenDial(book, oven).words(at);
    if (dial.isEmpty() && inside.isEmpty()) {
      return List.of();
    }
    List<Going> all = new ArrayList<>(inside);
    all.addFirst(Going.at(Places.at(Set.of(Place.all(oven))), words.ovenAlone(oven),
        dial.isEmpty() ? "Off." : dial));
    return all;
  }

  private List<Going> in(String place) {
    return food.stream().filter(each -> each.spot().place().equals(place)).map(this::going).toList();
  }

  private Going going(Standing standing) {
    String what = standing.words(book, clock, at);
    String rack = standing.spot() instanceof Spot.InOven(String oven, List<Integer> racks)
        ? Words.capital(words.racks(oven, racks)) + ": "
        : "";
    return Going.at(Places.at(standing.spot()), thing(standing.spot()), rack + what);
  }

  private String thing(Spot spot) {
    return switch (spot) {
      case Spot.InOven(String oven, List<Integer> racks) -> words.ovenAlone(oven);
      case Spot.OnBurners(List<String> burners) -> Words.bare(words.burners(burners));
      case Spot.OnShelves(String store, List<String> shelves) -> Words.bare(words.shelves(store, shelves));
      case Spot.InMachine(String machine) -> Words.capital(machine);
      case Spot.Bench() -> "Counter";
    };
  }

  private List<Going> hands(Lane cook) {
    return cook.boxes()
        .stream()
        .filter(box -> box.when().from() < at && at < box.when().to())
        .map(box -> new Going(cook.name(), Places.NONE, cook.name(),
            doing(box) + " until " + time(box.when().to()) + "."))
        .toList();
  }

  private String doing(Box box) {
    return switch (box.use()) {
      case WASH -> "Wash up " + Words.counted(box.count(), box.dish());
      case BREAK -> "Break";
      case WORK, WAIT, FULL ->
        box.dish() + batches(box.dish(), box.batches()) + " (" + box.step() + "), hands-on";
    };
  }

  private String batches(String dish, Batches batches) {
    boolean isAll = batches.count() == book.event().dish(dish).batches();
    return isAll ? "" : ", " + Words.batches(batches);
  }

  private String time(int minute) {
    return clock.time(minute, at);
  }
}
