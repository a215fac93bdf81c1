package ovenloom.model.life;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Kind;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Temperature;
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
  private static final double FASTEST = 400;
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

  /** Heat transfer, W/(m2 K), at which the card comes true; the fastest there is where none is fast enough. */
  double coefficient(BatchStep step, Need.Bake bake) {
    Body body = substance.body(step);
    TemperatureProfile food = TemperatureProfile.uniform(body, start(step));
    double slow = SLOWEST;
    double fast = FASTEST;
    for (int i = 0; i < HALVINGS; i++) {
      double between = Math.sqrt(slow * fast);
      if (baked(food, bake, step.minutes(), between, substance.kind(step.dish())).middle() < done(step)) {
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
      now = now.after(lasts, new Surroundings(stage.written().temperature(), coefficient, kind.wetness()));
      left -= lasts;
    }
    return now;
  }

  /** How warm the food is that the card means: as it says; else as it comes from the step before, where it comes at once. */
  private double start(BatchStep step) {
    StartState says = step.step().starts();
    double warmest = room();
    for (BatchLink link : work.into(step.index())) {
      BatchStep before = work.steps().get(link.from());
      if (says == null && link.carriesFood() && before.dish().food()) {
        Double comes = comes(before);
        if (comes != null && (comes < room() || before.step().cooks())) {
          return comes;
        }
      }
    }
    return says == null ? warmest : celsius(says);
  }

  private @Nullable Double comes(BatchStep before) {
    Step step = before.step();
    Need.OnShelf shelf = step.shelf();
    if (shelf != null) {
      Store store = work.event().kitchen().store(shelf.stores().getFirst());
      return store == null ? null : store.holds().inCelsius();
    }
    Keeps keeps = step.keeps();
    boolean atOnce = keeps == null || keeps.equals(Keeps.HARDLY);
    return atOnce && step.cooks() ? (Double) done(before) : null;
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
