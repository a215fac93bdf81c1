package ovenloom.model.plan;

import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;

/**
 * Where a step's food waits, from its end until the last of it is taken to a later step or to the table.
 *
 * @param dish of the step
 * @param step whose food it is
 * @param batches one batch; all where the step is done once; those of a run in one vessel
 * @param parts one after the other, without a gap; none where nothing waits
 * @param hands who unloads, for a stay in an oven
 */
public record Stay(String dish, String step, Batches batches, List<Part> parts, List<HandsOn> hands) {

  /** A part of a stay in one place. */
  public record Part(Where where, Stretch when) {}

  public Stay {
    parts = List.copyOf(parts);
    hands = List.copyOf(hands);
  }
}
