package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;

/** One run of a {@link HandPlan}. */
public final class HandRun {

  private final Event event;
  private final Work work;
  private final String dish;
  private final String step;
  private final int from;
  private Batches batches = Batches.only(1);
  private String cook;
  private String unloads;
  private Oven oven;
  private List<Integer> racks = List.of(0);
  private List<Integer> shelves = List.of(0);
  private @Nullable Integer minutes;
  private StartState state = StartState.RESTED;
  private double warmer;

  HandRun(Event event, Work work, String dish, String step, int from) {
    this.event = event;
    this.work = work;
    this.dish = dish;
    this.step = step;
    this.from = from;
    this.cook = event.cooks().getFirst().name();
    this.unloads = cook;
    this.oven = event.kitchen().ovens().getFirst();
  }

  public HandRun batches(int first, int last) {
    batches = new Batches(first, last);
    return this;
  }

  public HandRun minutes(int booked) {
    minutes = booked;
    return this;
  }

  HandRun from(StartState cold) {
    state = cold;
    return this;
  }

  /** By so many kelvins hotter than written. */
  HandRun hotter(double kelvins) {
    warmer = kelvins;
    return this;
  }

  public HandRun by(String name) {
    cook = name;
    unloads = name;
    return this;
  }

  HandRun takenOutBy(String name) {
    unloads = name;
    return this;
  }

  HandRun oven(int number) {
    oven = event.kitchen().ovens().get(number);
    return this;
  }

  public HandRun racks(Integer... each) {
    racks = List.of(each);
    return this;
  }

  HandRun shelves(Integer... each) {
    shelves = List.of(each);
    return this;
  }

  Placement placement() {
    BatchStep first = work.find(dish, step, batches.first());
    Batches all = first.step().once() ? first.batches() : batches;
    Stretch when = new Stretch(from, from + (minutes == null ? first.minutes() : minutes));
    return new Placement(dish, step, all, when, baking(first, when), burners(first), shelves(first),
        hands(first, when));
  }

  private @Nullable Baking baking(BatchStep first, Stretch when) {
    Need.Bake bake = first.step().bake();
    if (bake == null) {
      return null;
    }
    List<Baking.StageRun> stages = new ArrayList<>();
    int start = when.from();
    for (Need.Stage stage : bake.stages()) {
      int end = stage.minutes() == null ? when.to() : start + stage.minutes();
      stages.add(
          new Baking.StageRun(oven.dial().nearest(stage.written().temperature().plusKelvins(warmer)),
              new Stretch(start, end)));
      start = end;
    }
    return new Baking(oven.name(), oven.modes().getFirst(), stages, racks, state);
  }

  private List<String> burners(BatchStep first) {
    Need.OnBurner need = first.step().burner();
    return need == null ? List.of()
        : event.kitchen()
            .burners()
            .stream()
            .filter(burner -> burner.size().compareTo(need.atLeast()) >= 0)
            .limit(1)
            .map(burner -> burner.name())
            .toList();
  }

  private List<ShelfPlace> shelves(BatchStep first) {
    Need.OnShelf need = first.step().shelf();
    return need == null ? List.of()
        : event.kitchen()
            .stores()
            .stream()
            .filter(store -> store.name().equals(need.stores().getFirst()))
            .flatMap(store -> shelves.stream()
                .map(shelf -> new ShelfPlace(store.name(), store.shelves().get(shelf).name())))
            .toList();
  }

  private List<HandsOn> hands(BatchStep first, Stretch when) {
    List<HandsOn> hands = new ArrayList<>();
    Need.Bake bake = first.step().bake();
    if (bake != null) {
      hands.add(new HandsOn(Act.LOAD, new Stretch(from, from + bake.load()), List.of(cook)));
    }
    for (Need.Hands need : first.step().hands()) {
      hands.add(new HandsOn(Act.WORK, moment(need.moment(), when), cooks(need.cooks())));
    }
    if (bake != null) {
      hands.add(new HandsOn(Act.UNLOAD, new Stretch(when.to() - bake.unload(), when.to()), List.of(unloads)));
    }
    return hands;
  }

  private List<String> cooks(int count) {
    List<String> others = event.cooks()
        .stream()
        .map(each -> each.name())
        .filter(each -> !each.equals(cook))
        .toList();
    return IntStream.range(0, count)
        .mapToObj(i -> i == 0 ? cook : others.get(i - 1))
        .collect(Collectors.toList());
  }

  private static Stretch moment(Need.Moment moment, Stretch when) {
    return switch (moment) {
      case Need.Moment.Throughout() -> when;
      case Need.Moment.First(int minutes) -> new Stretch(when.from(), when.from() + minutes);
      case Need.Moment.Last(int minutes) -> new Stretch(when.to() - minutes, when.to());
      case Need.Moment.At(int after, int minutes, boolean sharp) ->
        new Stretch(when.from() + after, when.from() + after + minutes);
    };
  }
}
