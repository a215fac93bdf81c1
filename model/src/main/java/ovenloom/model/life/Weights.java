package ovenloom.model.life;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Quantity;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Volume;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;

/**
 * What the food of a step weighs, as nobody puts it on a scale: by its ingredients, else by its portions, and never more than its
 * vessels hold.
 */
public final class Weights {

  /** A portion of one dish. Common practice. */
  private static final double KILOGRAMS_A_PORTION = 0.25;

  /** An ingredient that is counted: an egg. Common practice. */
  private static final double KILOGRAMS_APIECE = 0.05;

  private static final double KILOGRAMS_A_LITRE = 1;
  private static final double MILLION = 1e6;

  private final Cards cards;

  /** Of the food of these cards. */
  public Weights(Cards cards) {
    this.cards = cards;
  }

  /** All food of a step's batches, kg; each step is taken to have all that its dish is made of. */
  public double kilograms(BatchStep step) {
    List<Quantity> ingredients = List.copyOf(step.dish().ingredients().values());
    double whole = ingredients.isEmpty() ? step.portions() * KILOGRAMS_A_PORTION
        : step.batches().count() * ingredients.stream().mapToDouble(Weights::kilograms).sum();
    return Math.min(whole, mostInItsVessels(step));
  }

  /** One roast: what weighs most in a batch, shared among its vessels; nothing where no scales say. */
  Mass roast(BatchStep step) {
    long most = step.dish()
        .ingredients()
        .values()
        .stream()
        .map(Quantity::mass)
        .filter(Objects::nonNull)
        .mapToLong(Mass::milligrams)
        .max()
        .orElse(0);
    int batches = step.batches().count();
    int vessels = cards.work().fillingsOf(step.index()).stream().mapToInt(Filling::count).sum();
    return new Mass(Math.ceilDiv(most * batches, Math.max(batches, vessels)));
  }

  private static double kilograms(Quantity quantity) {
    Mass mass = quantity.mass();
    Volume volume = quantity.volume();
    if (mass != null) {
      return mass.milligrams() / MILLION;
    }
    return volume == null ? quantity.amount().doubleValue() * KILOGRAMS_APIECE
        : volume.microlitres() / MILLION * KILOGRAMS_A_LITRE;
  }

  /** As deep as it is in them; infinite for what does not fill them, or where one has no size. */
  private double mostInItsVessels(BatchStep step) {
    List<Filling> fillings = cards.work().fillingsOf(step.index());
    if (fillings.isEmpty() || !cards.substance().kind(step.dish()).fillsItsVessel()) {
      return Double.POSITIVE_INFINITY;
    }
    Body body = cards.substance().body(step);
    double area = fillings.stream().mapToDouble(each -> each.count() * area(each)).sum();
    return area * 2 * body.half() * body.material().density();
  }

  private double area(Filling filling) {
    Vessel vessel = cards.work().event().kitchen().vessel(filling.vessel());
    @Nullable
    Size size = vessel == null ? null : vessel.size();
    return size == null ? Double.POSITIVE_INFINITY : metres(size.width()) * metres(size.depth());
  }

  private static double metres(Length length) {
    return length.micrometres() / MILLION;
  }
}
