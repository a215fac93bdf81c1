package ovenloom.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;

/**
 * What was decided, and for which event.
 *
 * @param event the whole event as understood
 * @param sources digests of the files it came from
 * @param placements one for each run of a step, in the order of their start
 * @param stays where food waits, one for each run or batch that leaves food waiting, in the order of their start
 * @param ovens one for each oven that is used
 * @param washes in the order of their start
 * @param layouts how vessels stand on a rack or shelf, wherever more than eight do
 * @param score as the search counted it
 * @param bound what no plan can be better than; absent where nothing was proven
 */
public record Plan(
    Event event,
    List<Source> sources,
    List<Placement> placements,
    List<Stay> stays,
    List<OvenLog> ovens,
    List<Wash> washes,
    List<Spread> layouts,
    Score score,
    @Nullable Bound bound) {

  /**
   * A file the event came from.
   *
   * @param sha256 of its bytes, in hexadecimal
   */
  public record Source(String file, String sha256) {}

  public Plan {
    sources = List.copyOf(sources);
    placements = List.copyOf(placements);
    stays = List.copyOf(stays);
    ovens = List.copyOf(ovens);
    washes = List.copyOf(washes);
    layouts = List.copyOf(layouts);
  }

  /** One of which nothing is proven. */
  public Plan(Event event, List<Source> sources, List<Placement> placements, List<Stay> stays,
      List<OvenLog> ovens, List<Wash> washes, List<Spread> layouts, Score score) {
    this(event, sources, placements, stays, ovens, washes, layouts, score, null);
  }

  /** The same, with what no plan can be better than. */
  public Plan with(@Nullable Bound proven) {
    return new Plan(event, sources, placements, stays, ovens, washes, layouts, score, proven);
  }

  /** The run of a step that does a batch's share. */
  public Placement placement(String dish, String step, int batch) {
    return placements.stream()
        .filter(each -> each.dish().equals(dish) && each.step().equals(step))
        .filter(each -> each.batches().holds(new Batches(batch, batch)))
        .findFirst()
        .orElseThrow();
  }
}
