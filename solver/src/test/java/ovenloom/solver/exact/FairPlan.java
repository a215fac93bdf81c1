package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** Writes down as a plan what a solved model chose. */
record FairPlan(Event event, Answers answers, Steps steps, Waits waits, List<Bake> bakes,
    Map<Oven, List<OvenUse>> ovens,
    Racks racks, Shelves shelves, Stove stove, Tasks tasks, Roster roster, Vessels vessels, TableLoss loss,
    Points points) {

  Plan plan() {
    List<Placement> placements = new ArrayList<>();
    List<Stay> stays = new ArrayList<>();
    for (BatchStep step : steps.all()) {
      placements.add(placement(step));
      Wait wait = waits.of(step.index());
      if (wait != null) {
        stays.add(stay(wait));
      }
    }
    placements.sort(Comparator.comparingInt(each -> each.when().from()));
    List<OvenLog> logs = event.kitchen()
        .ovens()
        .stream()
        .map(oven -> new DialLog(answers, oven, ovens.getOrDefault(oven, List.of())).log())
        .filter(log -> !log.spans().isEmpty())
        .toList();
    return new Plan(event, List.of(), placements, stays, logs, washes(), List.of(), score());
  }

  private Placement placement(BatchStep step) {
    Stretch when = stretch(steps.start(step.index()), steps.end(step.index()));
    List<HandsOn> hands = new ArrayList<>();
    for (Task task : tasks.all()) {
      if (step.equals(task.step()) && !(task.act() == HandsOn.Act.UNLOAD && staysInOven(step))) {
        hands.add(hands(task));
      }
    }
    Baking baking = bakes.stream()
        .filter(bake -> bake.step().equals(step))
        .map(this::baking)
        .findFirst()
        .orElse(null);
    List<ShelfPlace> places = new ArrayList<>();
    for (Shelved food : shelves.of(step, false)) {
      List<String> names = Shelves.shelves(food, answers);
      if (names != null) {
        names.forEach(name -> places.add(new ShelfPlace(food.store().name(), name)));
      }
    }
    return new Placement(step.dish().name(), step.step().name(), step.batches(), when, baking, burners(step),
        places,
        hands);
  }

  private boolean staysInOven(BatchStep step) {
    Wait wait = waits.of(step.index());
    return wait != null && answers.anyIs(wait.oven());
  }

  private HandsOn hands(Task task) {
    int from = answers.of(task.start());
    return new HandsOn(task.act(), new Stretch(from, from + task.minutes()), roster.cooks(task));
  }

  private Stretch stretch(LinearArgument from, LinearArgument to) {
    return new Stretch(answers.of(from), answers.of(to));
  }

  private Baking baking(Bake bake) {
    Bake.Way way = bake.ways().stream().filter(each -> answers.is(each.taken())).findFirst().orElseThrow();
    List<Baking.StageRun> stages = new ArrayList<>();
    for (int i = 0; i < way.marks().size(); i++) {
      Span when = bake.stages().get(i);
      stages.add(new Baking.StageRun(way.marks().get(i), stretch(when.from(), when.to())));
    }
    List<Integer> on = racks.of(bake, way.oven()).stream().map(answers::which).toList();
    return new Baking(way.oven().name(), way.mode(), stages, on, way.start().state());
  }

  private List<String> burners(BatchStep step) {
    List<Burner> all = event.kitchen().burners();
    return stove.pots(step.index()).stream().map(pot -> all.get(answers.which(pot)).name()).toList();
  }

  private Stay stay(Wait wait) {
    List<Stay.Part> parts = new ArrayList<>();
    add(parts, new Where.Counter(), wait.from(), wait.aside());
    if (answers.of(wait.aside()) < answers.of(wait.back())) {
      add(parts, place(wait), wait.aside(), wait.back());
    }
    add(parts, new Where.Counter(), wait.back(), wait.to());
    List<HandsOn> hands = new ArrayList<>();
    for (Task task : tasks.all()) {
      if (wait.step().equals(task.step()) && task.act() == HandsOn.Act.UNLOAD && staysInOven(wait.step())) {
        hands.add(hands(task));
      }
    }
    return new Stay(wait.step().dish().name(), wait.step().step().name(), wait.step().batches(), parts,
        hands);
  }

  private void add(List<Stay.Part> parts, Where where, LinearArgument from, LinearArgument to) {
    Stretch when = stretch(from, to);
    if (when.minutes() > 0) {
      parts.add(new Stay.Part(where, when));
    }
  }

  private Where place(Wait wait) {
    for (Shelved food : shelves.of(wait.step(), true)) {
      List<String> names = Shelves.shelves(food, answers);
      if (names != null) {
        Store store = food.store();
        return new Where.OnShelf(store.name(), names);
      }
    }
    if (answers.anyIs(wait.burner())) {
      return new Where.OnBurner(burners(wait.step()));
    }
    Bake bake = bakes.stream().filter(each -> each.step().equals(wait.step())).findFirst().orElseThrow();
    Oven oven = bake.ways()
        .stream()
        .filter(each -> answers.is(each.taken()))
        .findFirst()
        .orElseThrow()
        .oven();
    Setting mark = answers.anyIs(wait.hold()) ? oven.hold() : null;
    return new Where.InOven(oven.name(), mark);
  }

  private List<Wash> washes() {
    List<Wash> washes = new ArrayList<>();
    List<Task> hands = tasks.all().stream().filter(task -> task.step() == null).toList();
    for (int i = 0; i < vessels.washes().size(); i++) {
      WashUp wash = vessels.washes().get(i);
      if (answers.is(wash.isDone())) {
        int count = 0;
        for (int j = 0; j < wash.takes().size(); j++) {
          count += answers.is(wash.takes().get(j)) ? wash.counts().get(j) : 0;
        }
        HandsOn by = hands(hands.get(i));
        washes.add(new Wash(wash.vessel(), count, by.when(), by.cooks().getFirst()));
      }
    }
    return washes;
  }

  private Score score() {
    Map<String, Long> lost = new TreeMap<>();
    loss.byDish().forEach((dish, minutes) -> lost.put(dish, (long) answers.of(minutes)));
    Map<Wish, Long> byWish = new EnumMap<>(Wish.class);
    points.byWish().forEach((wish, number) -> byWish.put(wish, (long) answers.of(number)));
    long early = 0;
    for (BatchStep step : steps.all()) {
      early += step.step().serve() ? 0
          : event.courseOf(step.dish()).at() - answers.of(steps.start(step.index()));
    }
    return Score.of(0, lost, byWish, event.wishes(), early);
  }
}
