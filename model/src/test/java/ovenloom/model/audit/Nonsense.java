package ovenloom.model.audit;

import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Spread;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** Plans of which nothing is right: names no one knows, racks that are not there, empty stretches, batches too many. */
final class Nonsense {

  private final Random random;
  private final Event event = supper().event();

  Nonsense(long seed) {
    random = new Random(seed);
  }

  private static Events supper() {
    return aSupperOf(
        aDish("lamb").tags("raw meat", "contains nuts")
            .step(aStep("chill").takes(60).shelf("fridge").in("tray"))
            .step(aStep("roast").takes(60)
                .bake(aStage(220, 20), aStage(160, null))
                .stands(18)
                .doorShut(10)
                .hands(new Need.Moment.At(20, 2, false))
                .keeps(20, 60, null)),
        aDish("rolls").batches(5)
            .waves()
            .tags("pastry", "free of nuts")
            .step(aStep("mix").once().takes(10).appliance("mixer").hands().in("bowl"))
            .step(aStep("bake").takes(20)
                .upTo(30)
                .together(2)
                .bake(170, 180, 190)
                .in("tray")
                .keepsOnTheCounter(60)),
        aDish("soup").batches(2)
            .tags("raw fish", "fish")
            .step(aStep("simmer").takes(30)
                .togetherInOneVessel(2)
                .burner(BurnerSize.MEDIUM)
                .in("pot")
                .unattended()
                .keeps(null, null, 60))
            .step(aStep("season").appliance("mixer")
                .after(new Link(Link.Kind.ALONGSIDE, "", "simmer", 0, null)))
            .step(aStep("plate").serve().hands().after("simmer").in("plate", 10)),
        aChore("table").tags("clean down").step(aStep("lay").hands(new Need.Moment.First(5), 2, "laying")))
        .apart("raw meat", "pastry")
        .in(aHomeKitchen()
            .ovens(anOven("oven").onCircuit("wall"),
                anOven("small oven").racks(1).open(Kitchens.open(Clock.between("17:00", "18:00"))))
            .circuit("wall", 2000));
  }

  Event event() {
    return event;
  }

  Plan plan() {
    return new Plan(event, List.of(), some(20, this::run), some(12, this::stay), some(3, this::log),
        some(4, this::wash), some(2, this::spread), new Score(random.nextInt(3), Map.of(), Map.of(), 7, -3));
  }

  private <T> List<T> some(int most, Supplier<T> one) {
    return Stream.generate(one).limit(random.nextInt(most + 1)).toList();
  }

  @SafeVarargs
  private <T> T one(T... any) {
    return any[random.nextInt(any.length)];
  }

  /** Mostly a step of the menu. */
  private List<String> dishAndStep() {
    return one(List.of("lamb", "chill"), List.of("lamb", "roast"), List.of("rolls", "mix"),
        List.of("rolls", "bake"),
        List.of("soup", "simmer"), List.of("soup", "season"), List.of("soup", "plate"),
        List.of("table", "lay"),
        List.of("lamb", "bake"), List.of("nothing", "nothing"));
  }

  private String oven() {
    return one("oven", "oven", "small oven", "kiln");
  }

  private String cook() {
    return one("Host", "Nobody");
  }

  private Batches batches() {
    int first = 1 + random.nextInt(random.nextInt(6) + 1);
    return random.nextInt(5) == 0 ? new Batches(1, 5) : new Batches(first, first + random.nextInt(2));
  }

  private Stretch stretch() {
    int from = 840 + random.nextInt(300) - (random.nextInt(10) == 0 ? 7000 : 0);
    return new Stretch(from, from + random.nextInt(90));
  }

  private Setting mark() {
    return random.nextInt(5) == 0 ? Setting.fahrenheit(350)
        : Setting.celsius(one(-20, 15, 80, 160, 180, 183, 220, 255));
  }

  private List<String> shelves() {
    return some(3, () -> one("top", "middle", "bottom", "upper", "attic"));
  }

  private List<HandsOn> hands() {
    return some(3,
        () -> new HandsOn(one(HandsOn.Act.values()), stretch(), some(2, this::cook)));
  }

  private Placement run() {
    Baking baking = random.nextBoolean() ? null
        : new Baking(oven(), one("still", "fan", "steam"),
            some(3, () -> new Baking.StageRun(mark(), stretch())),
            some(3, () -> random.nextInt(4) - 1), StartState.RESTED);
    List<ShelfPlace> places = new ArrayList<>();
    shelves().forEach(shelf -> places.add(new ShelfPlace(one("fridge", "cabinet", "cellar"), shelf)));
    List<String> step = dishAndStep();
    return new Placement(step.getFirst(), step.getLast(), batches(), stretch(), baking,
        some(2, () -> one("large", "medium", "small", "campfire")), places, hands());
  }

  private Stay stay() {
    List<String> step = dishAndStep();
    return new Stay(step.getFirst(), step.getLast(), batches(),
        some(3, () -> new Stay.Part(where(), stretch())), hands());
  }

  private Where where() {
    return switch (random.nextInt(5)) {
      case 0 -> new Where.Counter();
      case 1 -> new Where.OnShelf(one("fridge", "cabinet", "cellar"), shelves());
      case 2 -> new Where.InOven(oven(), null);
      case 3 -> new Where.InOven(oven(), mark());
      default -> new Where.OnBurner(some(2, () -> one("large", "small", "campfire")));
    };
  }

  private OvenLog log() {
    return new OvenLog(oven(),
        some(4, () -> new OvenLog.Span(one(OvenLog.Doing.values()), mark(),
            one("still", "fan"), stretch())));
  }

  private Wash wash() {
    return new Wash(one("tray", "bowl", "pot", "tub"), random.nextInt(4) - 1, stretch(), cook());
  }

  private Spread spread() {
    return new Spread(one("oven", "fridge", "cellar"), random.nextInt(3) - 1, stretch(),
        some(10, this::spot));
  }

  private Spread.Spot spot() {
    List<String> step = dishAndStep();
    return new Spread.Spot(step.getFirst(), step.getLast(), batches(), random.nextInt(5) - 1,
        Length.cm(random.nextInt(40)), Length.cm(random.nextInt(40)), random.nextBoolean());
  }
}
