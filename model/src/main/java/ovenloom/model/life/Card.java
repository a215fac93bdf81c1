package ovenloom.model.life;

import java.util.List;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Kind;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
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
 * What a recipe card says of a bake: by its written setting, start, finish and minutes, how fast the food takes up heat is
 * fixed.
 *
 * @param work the menu laid out
 * @param substance of its food
 */
record Card(Work work, Substance substance) {

  /** On a burner, C: food that boils or simmers. */
  static final double SIMMERING = 95;

  private static final double SLOWEST = 2;
  private static final double IN_AIR = 60;
  private static final double IN_STEAM = 400;

  /** How much thinner food is taken to be, again and again, until its card can come true. */
  private static final double THINNER = 0.85;
  private static final double THINNEST = 0.001;
  private static final int HALVINGS = 16;

  /** How warm the middle is at the end of a step on an oven or a burner, C. */
  double done(BatchStep step) {
    Need.Bake bake = step.step().bake();
    Need.OnBurner burner = step.step().burner();
    Temperature core = bake != null ? bake.core() : burner != null ? burner.core() : null;
    if (core != null) {
      return core.inCelsius();
    }
    return bake == null ? SIMMERING : substance.kind(step.dish()).done().inCelsius();
  }

  /** Whether a machine heats it: a hot drink from an urn, say, that no oven or burner has made hot. */
  boolean isMadeHotByAMachine(BatchStep step) {
    return !step.step().appliances().isEmpty() && step.dish().arrives() == Arrives.HOT
        && step.dish().steps().stream().noneMatch(Step::cooks);
  }

  /**
   * The food as it is baked: as its step has it, or thinner where no oven could do it in time, such as beans, which lie loose in
   * their pan.
   */
  Body body(BatchStep step, Need.Bake bake) {
    Body body = substance.body(step);
    while (canComeTrue(step, bake) && !isDone(step, bake, body, fastest(bake))) {
      body = new Body(body.shape(), body.half() * THINNER, body.material());
    }
    return body;
  }

  /** Whether any food, however thin, is done in that time at that mark. A roast of eight hours near boiling never is by this law. */
  boolean canComeTrue(BatchStep step, Need.Bake bake) {
    Body body = substance.body(step);
    Body thinnest = new Body(body.shape(), Math.min(body.half(), THINNEST), body.material());
    return isDone(step, bake, thinnest, fastest(bake));
  }

  private static double fastest(Need.Bake bake) {
    String mode = bake.stages().getFirst().mode();
    return mode.equals(Oven.STILL) || mode.equals(Oven.FAN) ? IN_AIR : IN_STEAM;
  }

  private boolean isDone(BatchStep step, Need.Bake bake, Body body, double coefficient) {
    TemperatureProfile food = TemperatureProfile.uniform(body, start(step));
    return baked(food, bake, step.minutes(), coefficient, substance.kind(step.dish())).middle() >= done(step);
  }

  /** Heat transfer, W/(m2 K), at which the card comes true for a body of its food. */
  double coefficient(BatchStep step, Need.Bake bake, Body body) {
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

  private static TemperatureProfile baked(
      TemperatureProfile food, Need.Bake bake, int minutes, double coefficient, Kind kind) {
    TemperatureProfile now = food;
    int left = minutes;
    for (Need.Stage stage : bake.stages()) {
      Integer own = stage.minutes();
      int lasts = own == null ? left : Math.min(own, left);
      Surroundings there = new Surroundings(stage.written().temperature(), coefficient, kind.wetness());
      for (int minute = 0; minute < lasts; minute++) {
        now = Spell.aMinute(now, there);
      }
      left -= lasts;
    }
    return now;
  }

  /**
   * How warm the food is that the card means: as it says, else as its own steps leave it: cold from a cold place or a start that
   * is, hot straight from the heat, and otherwise as warm as the room.
   */
  private double start(BatchStep step) {
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
    if (!before.step().cooks()) {
      return start(before);
    }
    Keeps keeps = before.step().keeps();
    return keeps == null || keeps.equals(Keeps.HARDLY) ? done(before) : room();
  }

  private double room() {
    return work.event().kitchen().room().inCelsius();
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
