package ovenloom.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;

/** Plans by seed, for laws: every kind of thing a plan can hold. That they keep any rule is not promised. */
public final class RandomPlans {

  private final Random random;

  private RandomPlans(long seed) {
    this.random = new Random(seed);
  }

  /** The plan of a seed for an event. */
  public static Plan plan(long seed, Event event) {
    return new RandomPlans(seed).plan(event);
  }

  private Plan plan(Event event) {
    List<Placement> runs = new ArrayList<>();
    List<Stay> stays = new ArrayList<>();
    for (BatchStep step : Work.of(event).steps()) {
      runs.add(run(step));
      stays.add(new Stay(step.dish().name(), step.step().name(), step.batches(), parts(), hands()));
    }
    List<OvenLog> ovens = List.of(new OvenLog("oven", List.of(
        new OvenLog.Span(OvenLog.Doing.WARMING, Setting.fahrenheit(375), "fan", when()),
        new OvenLog.Span(OvenLog.Doing.AT, Setting.celsius(180.5), "still", when()))));
    List<Wash> washes = List.of(new Wash("half sheet", 1 + random.nextInt(5), when(), "Host"));
    Placement any = runs.getFirst();
    List<Spread> layouts = List.of(new Spread("oven", random.nextInt(3), when(),
        List.of(new Spread.Spot(any.dish(),
            any.step(), any.batches(), random.nextInt(9), Length.in(1.5), Length.mm(0),
            random.nextBoolean()))));
    Score score = new Score(random.nextInt(3), Map.of("dish 1", random.nextLong(1_000), "12", 0L),
        random.nextBoolean() ? Map.of() : Map.of(Wish.CALM, random.nextLong(1_000_000_000_000L)),
        random.nextInt(99), random.nextLong(1_000));
    return new Plan(event, List.of(new Plan.Source("dishes/a, b.yaml", "0".repeat(64))), runs, stays, ovens,
        washes, layouts, score);
  }

  private Placement run(BatchStep step) {
    Baking baking = step.step().bake() == null ? null : new Baking("oven", "steam, 50 %",
        List.of(new Baking.StageRun(Setting.celsius(180), when())), List.of(0, random.nextInt(9)),
        StartState.STRAIGHT_ON);
    return new Placement(step.dish().name(), step.step().name(), step.batches(), when(), baking,
        random.nextBoolean() ? List.of() : List.of("large burner 1", "no"),
        random.nextBoolean() ? List.of() : List.of(new ShelfPlace("fridge", "top")), hands());
  }

  private List<Stay.Part> parts() {
    List<Stay.Part> parts = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      parts.add(new Stay.Part(switch (random.nextInt(4)) {
        case 0 -> new Where.Counter();
        case 1 -> new Where.OnShelf("fridge", List.of("top", "12"));
        case 2 -> new Where.InOven("oven", maybe(Setting.celsius(80)));
        default -> new Where.OnBurner(List.of("large burner 1"));
      }, when()));
    }
    return parts;
  }

  private List<HandsOn> hands() {
    return random.nextBoolean() ? List.of()
        : List.of(new HandsOn(HandsOn.Act.LOAD, when(), List.of("Host")),
            new HandsOn(HandsOn.Act.WORK, when(), List.of("A", "B")));
  }

  private Stretch when() {
    int from = random.nextInt(10_000) - 8_000;
    return new Stretch(from, from + random.nextInt(500));
  }

  private <T> @Nullable T maybe(T thing) {
    return random.nextBoolean() ? thing : null;
  }
}
