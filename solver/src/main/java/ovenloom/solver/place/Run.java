package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.HandsOn;

/**
 * A run to be placed: a step for one batch, or for the batches that share it.
 *
 * @param index its number among the {@link Runs}
 * @param units the steps it does, batch by batch
 * @param minutes booked unless the planner stretches it
 * @param most minutes that may be booked
 * @param notBefore the first minute it may begin in
 * @param due when its food must be at the table; when it may begin, for one that serves
 * @param endOfService of its dish
 * @param pieces its vessels, batch by batch
 * @param hands whose hands it needs when
 * @param footing what sort of places it takes
 * @param requires the cooking temperature its food still asks for, in millikelvin; 0 for ready-to-eat
 */
public record Run(
    int index,
    List<BatchStep> units,
    int minutes,
    int most,
    int notBefore,
    int due,
    int endOfService,
    List<Piece> pieces,
    List<HandsNeed> hands,
    Footing footing,
    long requires) {

  public Run {
    units = List.copyOf(units);
    pieces = List.copyOf(pieces);
    hands = List.copyOf(hands);
  }

  public Dish dish() {
    return units.getFirst().dish();
  }

  public Step step() {
    return units.getFirst().step();
  }

  /** The batches that share it. */
  public Batches batches() {
    return new Batches(units.getFirst().batches().first(), units.getLast().batches().last());
  }

  /** The hands that only take it out of the oven; null for a run that has none. */
  @Nullable
  HandsNeed unloading() {
    for (HandsNeed need : hands) {
      if (need.act() == HandsOn.Act.UNLOAD) {
        return need;
      }
    }
    return null;
  }

  /** Whether it may run on by itself for longer, in place: nobody's hands, no oven, no burner, no machine. */
  boolean stretches() {
    return most > minutes && hands.isEmpty() && !footing.cooks() && !footing.onAMachine();
  }

  @Override
  public String toString() {
    return units.toString();
  }
}
