package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Life;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.life.Track;
import ovenloom.model.life.Unsaid;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** One dish cooked by itself, step after step, to see how warm it is: after the event, so that no table waits for it. */
final class Rehearsal implements MeanWarmth.Timetable {

  private final Cards cards;
  private final Event event;
  private final Map<Integer, Placement> runs = new TreeMap<>();
  private final Map<Integer, List<Stay.Part>> stays = new TreeMap<>();
  private int last;
  private int now;

  Rehearsal(Cards cards) {
    this.cards = cards;
    event = cards.work().event();
    now = event.to();
  }

  /** The next step, in one of its ways if it is a bake. */
  Rehearsal does(BatchStep step, int minutes, Bake.@Nullable Way way) {
    Stretch when = new Stretch(now, now + minutes);
    Baking baking = way == null ? null : new Baking(way.oven().name(), way.mode(),
        List.of(new Baking.StageRun(way.marks().getFirst(), when)), List.of(0), way.start().state());
    Need.OnShelf shelf = step.step().shelf();
    List<ShelfPlace> shelves = shelf == null ? List.of() : List.of(onAShelf(shelf.stores().getFirst()));
    runs.put(step.index(), new Placement(step.dish().name(), step.step().name(), step.batches(), when, baking,
        List.of(), shelves, List.of()));
    stays.put(step.index(), new ArrayList<>());
    last = step.index();
    now = when.to();
    return this;
  }

  /** Its food waits, for no time at all perhaps. */
  Rehearsal waits(Where where, int minutes) {
    if (minutes > 0) {
      Objects.requireNonNull(stays.get(last)).add(new Stay.Part(where, new Stretch(now, now + minutes)));
      now += minutes;
    }
    return this;
  }

  /** On the first shelf of a place: one is as cold as the other. */
  Rehearsal waitsIn(String store, int minutes) {
    return waits(new Where.OnShelf(store, List.of(onAShelf(store).shelf())), minutes);
  }

  private ShelfPlace onAShelf(String store) {
    Store place = Objects.requireNonNull(event.kitchen().store(store));
    return new ShelfPlace(store, place.shelves().getFirst().name());
  }

  /** Its life so far. */
  Track life(Unsaid unsaid) {
    Life life = Life.of(plan(), cards, 1, unsaid);
    return new Track(runs.keySet()
        .stream()
        .flatMap(step -> life.of(cards.work().steps().get(step)).stream())
        .toList());
  }

  int now() {
    return now;
  }

  private Plan plan() {
    List<Stay> all = new ArrayList<>();
    runs.forEach((step, run) -> all.add(new Stay(run.dish(), run.step(), run.batches(),
        Objects.requireNonNull(stays.get(step)), List.of())));
    Score none = Score.of(0, Map.of(), Map.of(), event.wishes(), 0);
    return new Plan(event, List.of(), List.copyOf(runs.values()), all, List.of(), List.of(), List.of(), none);
  }

  /** How warm the food of its last step is on the whole as that begins, C. */
  double begins(MeanWarmth warmth) {
    double[] begins = new double[cards.work().steps().size()];
    warmth.follow(this, begins);
    return begins[last];
  }

  private Stretch when(int step) {
    Placement run = runs.get(step);
    return run == null ? new Stretch(0, 0) : run.when();
  }

  private List<Stay.Part> of(int step) {
    return stays.getOrDefault(step, List.of());
  }

  private int number(String store) {
    return event.kitchen().stores().indexOf(event.kitchen().store(store));
  }

  @Override
  public int start(int step) {
    return when(step).from();
  }

  @Override
  public int end(int step) {
    return when(step).to();
  }

  @Override
  public int parts(int step) {
    return of(step).size();
  }

  @Override
  public int place(int step, int part) {
    return of(step).get(part).where() instanceof Where.OnShelf shelf ? number(shelf.store())
        : MeanWarmth.COUNTER;
  }

  @Override
  public int from(int step, int part) {
    return of(step).get(part).when().from();
  }

  @Override
  public int to(int step, int part) {
    return of(step).get(part).when().to();
  }

  @Override
  public int store(int step) {
    Placement run = runs.get(step);
    return run == null || run.shelves().isEmpty() ? MeanWarmth.COUNTER
        : number(run.shelves().getFirst().store());
  }
}
