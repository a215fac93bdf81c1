package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** Writes a draft out as a plan, in the words of the file. */
public final class FairCopy {

  private final Draft draft;
  private final Runs runs;
  private final Kitchen kitchen;

  private FairCopy(Draft draft) {
    this.draft = draft;
    runs = draft.runs();
    kitchen = runs.event().kitchen();
  }

  /** The draft as a plan. */
  public static Plan of(Draft draft, List<Plan.Source> sources, Score score) {
    return new FairCopy(draft).plan(sources, score);
  }

  private Plan plan(List<Plan.Source> sources, Score score) {
    List<Placement> placements = runs.runs()
        .stream()
        .map(this::placement)
        .sorted(Comparator.comparingInt(run -> run.when().from()))
        .toList();
    List<Stay> stays = IntStream.range(0, runs.waits().size())
        .filter(wait -> !draft.parts(wait).isEmpty())
        .mapToObj(this::stay)
        .sorted(Comparator.comparingInt(stay -> stay.parts().getFirst().when().from()))
        .toList();
    List<Wash> washes = draft.washes()
        .stream()
        .map(this::wash)
        .sorted(Comparator.comparingInt(wash -> wash.when().from()))
        .toList();
    return new Plan(
        runs.event(),
        sources,
        placements,
        stays,
        new DialLog(runs.event()).of(draft),
        washes,
        Spreads.of(draft),
        score);
  }

  private Placement placement(Run run) {
    int i = run.index();
    BakeChoice choice = draft.choice[i];
    int[] burners = draft.burners[i];
    return new Placement(
        run.dish().name(),
        run.step().name(),
        run.batches(),
        new Stretch(draft.start[i], draft.end[i]),
        choice == null ? null : baking(run, choice),
        burners == null ? List.of() : burnerNames(burners),
        shelfPlaces(i),
        hands(run, act -> !isHeld(run) || act != HandsOn.Act.UNLOAD));
  }

  private boolean isHeld(Run run) {
    return draft.outOfTheOven(run.index()) > draft.end[run.index()];
  }

  private Baking baking(Run run, BakeChoice choice) {
    List<Baking.StageRun> stages = new ArrayList<>();
    for (int stage = 0; stage < choice.marks().size(); stage++) {
      int from = draft.start[run.index()] + choice.bake().from(stage);
      stages.add(new Baking.StageRun(
          choice.marks().get(stage), new Stretch(from, from + choice.bake().minutes(stage))));
    }
    int[] racks = draft.racks[run.index()];
    return new Baking(
        kitchen.ovens().get(choice.oven()).name(),
        choice.mode(),
        stages,
        racks == null ? List.of() : Arrays.stream(racks).boxed().toList(),
        choice.state());
  }

  private List<String> burnerNames(int[] burners) {
    return Arrays.stream(burners).mapToObj(burner -> kitchen.burners().get(burner).name()).toList();
  }

  private List<ShelfPlace> shelfPlaces(int run) {
    int[] shelves = draft.shelves[run];
    if (shelves == null) {
      return List.of();
    }
    Store store = kitchen.stores().get(draft.store[run]);
    return Arrays.stream(shelves)
        .mapToObj(shelf -> new ShelfPlace(store.name(), store.shelves().get(shelf).name()))
        .toList();
  }

  private List<HandsOn> hands(Run run, Predicate<HandsOn.Act> which) {
    Crew.Taken @Nullable [] taken = draft.hands[run.index()];
    List<HandsOn> hands = new ArrayList<>();
    for (int i = 0; taken != null && i < taken.length; i++) {
      HandsOn.Act act = draft.handsNeeded(run.index()).get(i).act();
      Crew.Taken each = Objects.requireNonNull(taken[i]);
      if (which.test(act)) {
        hands.add(new HandsOn(act, new Stretch(each.from(), each.to()), names(each.cooks())));
      }
    }
    return hands;
  }

  private List<String> names(List<Integer> cooks) {
    return cooks.stream().map(cook -> runs.event().cooks().get(cook).name()).toList();
  }

  private Stay stay(int number) {
    Wait wait = runs.waits().get(number);
    Run run = runs.runs().get(wait.run());
    List<Stay.Part> parts = draft.parts(number)
        .stream()
        .map(part -> new Stay.Part(where(run, part), new Stretch(part.from(), part.to())))
        .toList();
    List<HandsOn> hands = isHeld(run) ? hands(run, act -> act == HandsOn.Act.UNLOAD) : List.of();
    return new Stay(run.dish().name(), run.step().name(), wait.batches(), parts, hands);
  }

  private Where where(Run run, WaitPart part) {
    return switch (part.kind()) {
      case COUNTER -> new Where.Counter();
      case BURNER -> new Where.OnBurner(burnerNames(part.allLevels()));
      case OVEN -> inItsOven(Objects.requireNonNull(draft.choice[run.index()]));
      case STORE -> {
        Store store = kitchen.stores().get(part.place());
        yield new Where.OnShelf(
            store.name(),
            Arrays.stream(part.allLevels()).mapToObj(shelf -> store.shelves().get(shelf).name()).toList());
      }
    };
  }

  private Where inItsOven(BakeChoice choice) {
    return new Where.InOven(kitchen.ovens().get(choice.oven()).name(), choice.hold().mark());
  }

  private Wash wash(VesselPool.Done wash) {
    return new Wash(
        kitchen.vessels().get(wash.vessel()).name(),
        wash.pieces(),
        new Stretch(wash.from(), wash.to()),
        runs.event().cooks().get(wash.cook()).name());
  }
}
