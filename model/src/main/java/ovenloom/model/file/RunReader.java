package ovenloom.model.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Reads the runs and stays of a plan. */
final class RunReader {

  static final Keys RUN = Keys.of("a run", "dish", "step", "batches", "when", "baking", "burners",
      "shelves", "hands");
  static final Keys BAKING = Keys.of("a baking", "oven", "mode", "stages", "racks", "state");
  static final Keys STAGE = Keys.of("a stage", "mark", "when");
  static final Keys SHELF = Keys.of("a shelf's place", "store", "shelf");
  static final Keys HANDS = Keys.of("hands-on work", "act", "when", "cooks");
  static final Keys STAY = Keys.of("a stay", "dish", "step", "batches", "parts", "hands");
  static final Keys PART = Keys.of("a part of a stay", "on", "when", "store", "shelves", "oven",
      "mark", "burners");

  private enum On {
    COUNTER,
    SHELF,
    OVEN,
    BURNER
  }

  private final Desk desk;
  private final PlanValues values;

  RunReader(Desk desk) {
    this.desk = desk;
    this.values = new PlanValues(desk);
  }

  @Nullable
  Placement run(Written written) {
    Fields run = desk.fields(written, RUN);
    String dish = run.takeNeeded("dish", values::name);
    String step = run.takeNeeded("step", values::name);
    Batches batches = run.takeNeeded("batches", values::batches);
    Stretch when = run.takeNeeded("when", values::stretch);
    Baking baking = run.take("baking", this::baking);
    List<String> burners = run.each("burners", values::name);
    List<ShelfPlace> shelves = run.each("shelves", this::shelf);
    List<HandsOn> hands = run.each("hands", this::hands);
    return dish == null || step == null || batches == null || when == null ? null
        : new Placement(dish, step, batches, when, baking, burners, shelves, hands);
  }

  private @Nullable Baking baking(Written written) {
    Fields baking = desk.fields(written, BAKING);
    String oven = baking.takeNeeded("oven", values::name);
    String mode = baking.takeNeeded("mode", values::name);
    List<Baking.StageRun> stages = baking.eachNeeded("stages", this::stage);
    List<Integer> racks = baking.eachNeeded("racks", rack -> desk.read(rack, Scalars::countOrNone));
    StartState state = baking.needed("state", Scalars.oneOf(StartState.class));
    return oven == null || mode == null || state == null ? null
        : new Baking(oven, mode, stages, racks, state);
  }

  private Baking.@Nullable StageRun stage(Written written) {
    Fields stage = desk.fields(written, STAGE);
    Setting mark = stage.needed("mark", Setting::read);
    Stretch when = stage.takeNeeded("when", values::stretch);
    return mark == null || when == null ? null : new Baking.StageRun(mark, when);
  }

  private @Nullable ShelfPlace shelf(Written written) {
    Fields place = desk.fields(written, SHELF);
    String store = place.takeNeeded("store", values::name);
    String shelf = place.takeNeeded("shelf", values::name);
    return store == null || shelf == null ? null : new ShelfPlace(store, shelf);
  }

  private @Nullable HandsOn hands(Written written) {
    Fields hands = desk.fields(written, HANDS);
    HandsOn.Act act = hands.needed("act", Scalars.oneOf(HandsOn.Act.class));
    Stretch when = hands.takeNeeded("when", values::stretch);
    List<String> cooks = hands.eachNeeded("cooks", values::name);
    return act == null || when == null ? null : new HandsOn(act, when, cooks);
  }

  @Nullable
  Stay stay(Written written) {
    Fields stay = desk.fields(written, STAY);
    String dish = stay.takeNeeded("dish", values::name);
    String step = stay.takeNeeded("step", values::name);
    Batches batches = stay.takeNeeded("batches", values::batches);
    List<Stay.Part> parts = stay.eachNeeded("parts", this::part);
    List<HandsOn> hands = stay.each("hands", this::hands);
    return dish == null || step == null || batches == null ? null
        : new Stay(dish, step, batches, parts, hands);
  }

  private Stay.@Nullable Part part(Written written) {
    Fields part = desk.fields(written, PART);
    On on = part.needed("on", Scalars.oneOf(On.class));
    Stretch when = part.takeNeeded("when", values::stretch);
    Where where = on == null ? null : where(on, part);
    return where == null || when == null ? null : new Stay.Part(where, when);
  }

  private @Nullable Where where(On on, Fields part) {
    return switch (on) {
      case COUNTER -> new Where.Counter();
      case SHELF -> {
        String store = part.takeNeeded("store", values::name);
        yield store == null ? null : new Where.OnShelf(store, part.eachNeeded("shelves", values::name));
      }
      case OVEN -> {
        String oven = part.takeNeeded("oven", values::name);
        yield oven == null ? null : new Where.InOven(oven, part.read("mark", Setting::read));
      }
      case BURNER -> new Where.OnBurner(part.eachNeeded("burners", values::name));
    };
  }
}
