package ovenloom.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;

/**
 * One run of a step.
 *
 * @param batches those that share the run; all of the dish where the step is done once
 * @param baking where and how, for a bake
 * @param burners one for each pot, for a step on burners
 * @param shelves one for each vessel, batch by batch, for a step on shelves; one in all where the food has no vessel
 * @param hands who does what when: loading, then each stretch of hands in the order the step states them, then unloading
 */
public record Placement(
    String dish,
    String step,
    Batches batches,
    Stretch when,
    @Nullable Baking baking,
    List<String> burners,
    List<ShelfPlace> shelves,
    List<HandsOn> hands) {

  public Placement {
    burners = List.copyOf(burners);
    shelves = List.copyOf(shelves);
    hands = List.copyOf(hands);
  }
}
