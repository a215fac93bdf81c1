package ovenloom.model.life;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Cooling;
import ovenloom.model.heat.Kind;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;

/**
 * What the recipe cards of a menu say of its bakes: by the written setting, start, finish and minutes of each, how fast its food
 * takes up heat is fixed. Works that out once for each bake; may be shared by threads.
 */
public final class Cards {

  /** On a burner, C: food that boils or simmers. */
  static final double SIMMERING = 95;

  private static final double SLOWEST = 2;
  private static final double IN_AIR = 60;
  private static final double IN_STEAM = 400;

  /** How much thinner food is taken to be, again and again, until its card can come true. */
  private static final double THINNER = 0.85;
  private static final double THINNEST = 0.001;
  private static final int HALVINGS = 16;

  private final Work work;
  private final Substance substance;
  private final Map<String, Fit> fits = new ConcurrentHashMap<>();
  private final Map<Cooled, Cooling> coolings = new ConcurrentHashMap<>();
  private final LegMemory legs = new LegMemory();

  private record Cooled(Body body, Surroundings there) {}

  /**
   * A card made to come true.
   *
   * @param bends whether the laws of heat can tell of it at all; a roast of eight hours near boiling never is done by them
   * @param body the food as it is baked: as its step has it, or thinner where no oven could do it in time, such as beans, which
   * lie loose in their pan
   * @param coefficient heat transfer, W/(m2 K)
   * @param minutes that the food takes by these laws, in the card's oven
   */
  record Fit(boolean bends, Body body, double coefficient, int minutes) {}

  /** Of a menu laid out. */
  public Cards(Work work) {
    this.work = work;
    substance = new Substance(work);
  }

  /** The menu laid out, whose cards these are. */
  public Work work() {
    return work;
  }

  Substance substance() {
    return substance;
  }

  /** What was followed of plans of this menu. */
  LegMemory legs() {
    return legs;
  }

  /** In air as it mostly is. */
  Lids lids(Unsaid unsaid) {
    return new Lids(substance, work.event().kitchen(), 1, unsaid);
  }

  /** How the mean of a step's food comes down in room air. */
  Cooling coolingOnTheCounter(BatchStep step, Unsaid unsaid) {
    return cooling(substance.body(step), lids(unsaid).onTheCounter(step));
  }

  /** How the mean of food comes down in surroundings; worked out once for all that are alike. */
  Cooling cooling(Body body, Surroundings there) {
    return coolings.computeIfAbsent(new Cooled(body, there), each -> Cooling.of(body, there));
  }

  Fit fit(BatchStep step, Need.Bake bake) {
    return fits.computeIfAbsent(step.dish().name() + "/" + step.step().name(), each -> newFit(step, bake));
  }

  private Fit newFit(BatchStep step, Need.Bake bake) {
    boolean bends = canComeTrue(step, bake);
    Body body = body(step, bake, bends);
    double coefficient = coefficient(step, bake, body);
    int minutes = minutes(step, bake, body, coefficient);
    return new Fit(bends && minutes > 0, body, coefficient, minutes);
  }

  /**
   * How warm the middle is at the end of a step on an oven or a burner, C: as its card says, else as its kind is done, or a stew as hot
   * as its card has it come.
   */
  double done(BatchStep step) {
    Need.Bake bake = step.step().bake();
    Need.OnBurner burner = step.step().burner();
    Temperature core = bake != null ? bake.core() : burner != null ? burner.core() : null;
    if (core != null) {
      return core.inCelsius();
    }
    if (bake == null) {
      return SIMMERING;
    }
    Kind kind = substance.kind(step.dish());
    double done = kind.done().inCelsius();
    return kind == Kind.CASSEROLE ? Math.max(done, start(step)) : done;
  }

  /** Whether a step makes its food hot: on an oven or a burner, or in a machine. */
  public boolean heats(BatchStep step) {
    return step.step().cooks() || isMadeHotByAMachine(step);
  }

  /**
   * Whether a machine heats it: one that is said to; or, if it comes hot, as a drink does from an urn, whatever it is in where no
   * oven or burner has made it hot.
   */
  boolean isMadeHotByAMachine(BatchStep step) {
    return step.step().appliances().stream().map(Need.OnAppliance::appliance).anyMatch(this::isAHeater)
        || (!step.step().appliances().isEmpty() && step.dish().arrives() == Arrives.HOT
            && step.dish().steps().stream().noneMatch(Step::cooks));
  }

  private boolean isAHeater(String appliance) {
    Appliance machine = work.event().kitchen().appliance(appliance);
    return machine != null && machine.heats();
  }

  private Body body(BatchStep step, Need.Bake bake, boolean bends) {
    Body body = substance.body(step);
    while (bends && !isDone(step, bake, body, fastest(bake))) {
      body = new Body(body.shape(), body.half() * THINNER, body.material());
    }
    return body;
  }

  /** Whether any food, however thin, is done in that time at that mark. */
  private boolean canComeTrue(BatchStep step, Need.Bake bake) {
    Body body = substance.body(step);
    Body thinnest = new Body(body.shape(), Math.min(body.half(), THINNEST), body.material());
    return isDone(step, bake, thinnest, fastest(bake));
  }

  private static double fastest(Need.Bake bake) {
    String mode = bake.stages().getFirst().mode();
    return mode.equals(Oven.STILL) || mode.equals(Oven.FAN) ? IN_AIR : IN_STEAM;
  }

  private boolean isDone(BatchStep step, Need.Bake bake, Body body, double coefficient) {
    return minutes(step, bake, body, coefficient) != BakeMinutes.NEVER;
  }

  /** Until its middle is done, as the card has it; {@link BakeMinutes#NEVER} if that is later than written. */
  private int minutes(BatchStep step, Need.Bake bake, Body body, double coefficient) {
    double wetness = substance.wetness(step);
    List<Surroundings> stages = bake.stages()
        .stream()
        .map(stage -> new Surroundings(stage.written().temperature(), coefficient, wetness))
        .toList();
    TemperatureProfile food = TemperatureProfile.uniform(body, start(step));
    return minutesUntil(done(step), food, bake, stages, step.minutes());
  }

  /**
   * Minutes until the middle of food is as warm as it is to be, in a bake in stages.
   *
   * @param stages what surrounds it, stage by stage
   * @param most minutes; {@link BakeMinutes#NEVER} if it takes longer
   */
  static int minutesUntil(
      double done, TemperatureProfile start, Need.Bake bake, List<Surroundings> stages, int most) {
    TemperatureProfile now = start;
    for (int minute = 0; minute < most; minute++) {
      if (now.middle() >= done) {
        return minute;
      }
      now = Spell.inAnOven(now, stages.get(stage(bake, minute)));
    }
    return now.middle() >= done ? most : BakeMinutes.NEVER;
  }

  /** The stage that a minute of a bake is in. */
  private static int stage(Need.Bake bake, int minute) {
    int end = 0;
    for (int stage = 0; stage < bake.stages().size(); stage++) {
      Integer own = bake.stages().get(stage).minutes();
      end = own == null ? Integer.MAX_VALUE : end + own;
      if (minute < end) {
        return stage;
      }
    }
    return bake.stages().size() - 1;
  }

  /** At which the card comes true. */
  private double coefficient(BatchStep step, Need.Bake bake, Body body) {
    double slow = SLOWEST;
    double fast = fastest(bake);
    for (int i = 0; i < HALVINGS; i++) {
      double between = Math.sqrt(slow * fast);
      if (!isDone(step, bake, body, between)) {
        slow = between;
      } else {
        fast = between;
      }
    }
    return fast;
  }

  /**
   * How warm the food is that the card means: as it says, else as its own steps leave it: cold from a cold place, or where it keeps only in one, or a start that
   * is, hot straight from the heat, and otherwise as warm as the room.
   */
  double start(BatchStep step) {
    StartState says = step.step().starts();
    if (says != null) {
      return celsius(says);
    }
    return work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .filter(before -> before.dish().food())
        .mapToDouble(this::left)
        .average()
        .orElse(room());
  }

  /** How a step leaves its food, to the next that asks. */
  private double left(BatchStep before) {
    Need.OnShelf shelf = before.step().shelf();
    Store store = shelf == null ? null : work.event().kitchen().store(shelf.stores().getFirst());
    if (store != null) {
      return store.holds().inCelsius();
    }
    Keeps keeps = before.step().keeps();
    if (keeps != null && keeps.counter() == null && !colds(keeps).isEmpty()) {
      return colds(keeps).stream().mapToDouble(each -> each.holds().inCelsius()).min().orElseThrow();
    }
    if (!heats(before)) {
      return start(before);
    }
    return keeps == null || keeps.equals(Keeps.HARDLY) ? done(before) : room();
  }

  private List<Store> colds(Keeps keeps) {
    return work.event()
        .kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind() == Store.Kind.FRIDGE && keeps.stores().containsKey(store.name()))
        .toList();
  }

  private double room() {
    return work.event().kitchen().room().inCelsius();
  }

  /** How warm food is that nothing was done to before, C. */
  double fresh(BatchStep step) {
    StartState starts = step.step().starts();
    return celsius(starts == null ? StartState.RESTED : starts);
  }

  /** How warm food is that starts so, C. */
  double celsius(StartState state) {
    return switch (state) {
      case STRAIGHT_ON -> SIMMERING;
      case RESTED -> room();
      case CHILLED -> coldest(Store.Kind.FRIDGE, 4);
      case FROZEN -> coldest(Store.Kind.FREEZER, -18);
    };
  }

  private double coldest(Store.Kind kind, double otherwise) {
    List<Store> stores = work.event()
        .kitchen()
        .stores()
        .stream()
        .filter(each -> each.kind() == kind)
        .toList();
    return stores.stream().mapToDouble(each -> each.holds().inCelsius()).min().orElse(otherwise);
  }
}
