package ovenloom.model.life;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;

/** What the food of a step is as heat meets it: as its dish says, else by how the dish is cooked and what it is in. */
final class Substance {

  /** Of a vessel's height, so much is filled. Common practice. */
  private static final double FILLED = 0.8;

  /** Below this, mm, a vessel holds pieces in a layer rather than something deep. Common practice. */
  private static final double SHALLOW = 45;

  private static final double MICROMETRES_A_MILLIMETRE = 1000;
  private static final double MILLIMETRES_A_METRE = 1000;

  private final Work work;
  private final Map<String, Kind> kinds = new HashMap<>();
  private final List<Body> bodies;

  /** Of a menu laid out. */
  Substance(Work work) {
    this.work = work;
    work.event().dishes().forEach(dish -> kinds.put(dish.name(), kindOf(dish)));
    bodies = work.steps().stream().map(this::bodyOf).toList();
  }

  Kind kind(Dish dish) {
    return Objects.requireNonNull(kinds.get(dish.name()));
  }

  /** A step's food, so thick or so deep. */
  Body body(BatchStep step) {
    return bodies.get(step.index());
  }

  /** What a dish is: as it says, else a bird or a roast where it stands above its vessel, a liquid where it is only on burners. */
  private Kind kindOf(Dish dish) {
    Kind own = dish.matter().kind();
    if (own != null) {
      return own;
    }
    boolean stands = dish.steps()
        .stream()
        .map(Step::bake)
        .anyMatch(bake -> bake != null && bake.stands() != null);
    if (stands) {
      return dish.tags().contains("raw poultry") ? Kind.WHOLE_BIRD : Kind.DENSE_ROAST;
    }
    if (dish.steps().stream().allMatch(step -> step.bake() == null)) {
      return dish.steps().stream().anyMatch(Step::cooks) ? Kind.LIQUID : Kind.CASSEROLE;
    }
    return isBakedInADeepVessel(dish) ? Kind.CASSEROLE : Kind.TRAY_OF_PIECES;
  }

  private boolean isBakedInADeepVessel(Dish dish) {
    return work.steps()
        .stream()
        .filter(step -> step.dish().name().equals(dish.name()) && step.step().bake() != null)
        .map(this::height)
        .anyMatch(height -> height != null && millimetres(height) >= SHALLOW);
  }

  private Body bodyOf(BatchStep step) {
    Kind kind = kind(step.dish());
    Composition madeOf = step.dish().matter().madeOf();
    Conductivity conducts = step.dish().matter().conducts();
    Length thick = thick(step, kind);
    Body body = madeOf == null ? kind.body(thick) : kind.body(thick, madeOf);
    return conducts == null ? body : body.conducting(conducts.value());
  }

  private Length thick(BatchStep step, Kind kind) {
    Length own = step.dish().matter().thick();
    if (own != null) {
      return own;
    }
    Length height = kind.fillsItsVessel() ? height(step) : null;
    return height == null ? kind.thickness() : Length.mm(millimetres(height) * FILLED);
  }

  /** How much of the vapour that a step's food would give off in an oven gets away: none under foil. */
  double wetness(BatchStep step) {
    return Boolean.TRUE.equals(step.step().covered()) ? 0 : kind(step.dish()).wetness();
  }

  /** Whether a lid is on a step's food, off the heat; absent where no card says. */
  @Nullable
  Boolean covered(BatchStep step) {
    Boolean own = step.step().covered();
    return own == null ? step.dish().matter().covered() : own;
  }

  /** The same, as it stands in a place. */
  Body body(BatchStep step, Store store) {
    Body body = body(step);
    if (store.kind() != Store.Kind.ICE_BATH) {
      return body;
    }
    double depth = kind(step.dish()) == Kind.LIQUID ? wallsIn(step, body) : 0;
    return depth == 0 ? body.oneSided() : new Body(body.shape(), depth, body.material());
  }

  /** How deep stirred food would be that had the water below it only, metres: its volume by its vessel's bottom and sides. */
  private double wallsIn(BatchStep step, Body body) {
    Size size = size(step);
    if (size == null) {
      return 0;
    }
    double deep = 2 * body.half();
    double width = metres(size.width());
    double depth = metres(size.depth());
    return 1 / (1 / deep + 2 / width + 2 / depth);
  }

  private static double metres(Length length) {
    return millimetres(length) / MILLIMETRES_A_METRE;
  }

  private @Nullable Length height(BatchStep step) {
    return sizes(step).map(Size::height).filter(Objects::nonNull).reduce((one, next) -> next).orElse(null);
  }

  private @Nullable Size size(BatchStep step) {
    return sizes(step).reduce((one, next) -> next).orElse(null);
  }

  /** Of the vessels it is in, those it is in at last behind. */
  private Stream<Size> sizes(BatchStep step) {
    return work.fillingsOf(step.index())
        .stream()
        .map(Filling::vessel)
        .map(work.event().kitchen()::vessel)
        .filter(Objects::nonNull)
        .map(Vessel::size)
        .filter(Objects::nonNull);
  }

  private static double millimetres(Length length) {
    return length.micrometres() / MICROMETRES_A_MILLIMETRE;
  }
}
