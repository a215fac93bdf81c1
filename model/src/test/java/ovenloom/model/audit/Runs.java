package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;

/** Runs for tests: batch 1 unless it says otherwise. */
public final class Runs {

  private final String dish;
  private final String step;
  private final Stretch when;
  private Batches batches = Batches.only(1);
  private @Nullable String oven;
  private String mode = Oven.STILL;
  private final List<Baking.StageRun> stages = new ArrayList<>();
  private List<Integer> racks = List.of(0);
  private List<String> burners = List.of();
  private final List<ShelfPlace> shelves = new ArrayList<>();
  private final List<HandsOn> hands = new ArrayList<>();

  private Runs(String dish, String step, Stretch when) {
    this.dish = dish;
    this.step = step;
    this.when = when;
  }

  /** {@code aRun("bread", "bake", "18:00", 30)}: from then, for so many minutes. */
  public static Runs aRun(String dish, String step, String from, int minutes) {
    return aRun(dish, step, Clock.at(from), minutes);
  }

  public static Runs aRun(String dish, String step, int from, int minutes) {
    return new Runs(dish, step, new Stretch(from, from + minutes));
  }

  public Runs batch(int batch) {
    return batches(batch, batch);
  }

  public Runs batches(int first, int last) {
    batches = new Batches(first, last);
    return this;
  }

  /** One stage in the still oven, on the lowest rack. */
  public Runs oven(String name, int celsius) {
    return oven(name, Setting.celsius(celsius));
  }

  public Runs oven(String name, Setting mark) {
    oven = name;
    stages.add(new Baking.StageRun(mark, when));
    return this;
  }

  /** Instead of the one stage. */
  public Runs stages(Baking.StageRun... all) {
    stages.clear();
    stages.addAll(Arrays.asList(all));
    return this;
  }

  public static Baking.StageRun aStage(int celsius, String from, String to) {
    return new Baking.StageRun(Setting.celsius(celsius), Clock.between(from, to));
  }

  public Runs mode(String wanted) {
    mode = wanted;
    return this;
  }

  public Runs racks(Integer... all) {
    racks = List.of(all);
    return this;
  }

  public Runs burners(String... all) {
    burners = List.of(all);
    return this;
  }

  public Runs shelves(String store, String... names) {
    for (String name : names) {
      shelves.add(new ShelfPlace(store, name));
    }
    return this;
  }

  /** In the first minute. */
  public Runs load(String cook) {
    return hands(Act.LOAD, when.from(), when.from() + 1, cook);
  }

  /** In the last minute. */
  public Runs unload(String cook) {
    return hands(Act.UNLOAD, when.to() - 1, when.to(), cook);
  }

  /** From end to end. */
  public Runs work(String... cooks) {
    return hands(Act.WORK, when.from(), when.to(), cooks);
  }

  public Runs hands(Act act, int from, int to, String... cooks) {
    hands.add(new HandsOn(act, new Stretch(from, to), List.of(cooks)));
    return this;
  }

  public Placement run() {
    Baking baking = oven == null ? null : new Baking(oven, mode, stages, racks, StartState.RESTED);
    return new Placement(dish, step, batches, when, baking, burners, shelves, hands);
  }
}
