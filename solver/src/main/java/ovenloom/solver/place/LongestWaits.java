package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;

/** How long the food of each run keeps at most, wherever it waits: in places that its vessels fit into. What is no wait has no limit. */
final class LongestWaits {

  private final Runs runs;
  private final Floor floor;
  private final int[] longest;

  LongestWaits(Runs runs, Floor floor) {
    this.runs = runs;
    this.floor = floor;
    longest = new int[runs.runs().size()];
    Arrays.fill(longest, runs.event().to() - runs.event().from());
    runs.waits().forEach(wait -> longest[wait.run()] = longest(wait));
  }

  /** Minutes from the end of a run until its food is taken. */
  int of(int run) {
    return longest[run];
  }

  /** Minutes of the gap of a link from a run. */
  int gap(Link link, int run) {
    Integer most = link.most();
    return most != null ? most : longest[run];
  }

  /** Whether food may wait on its burner, or in its oven. */
  boolean mayStayOnTheHeat(Wait wait) {
    return onTheHeat(wait) > 0;
  }

  /** The stores in which food keeps and its vessels fit, by number. */
  List<Integer> stores(Wait wait) {
    return IntStream.range(0, floor.stores.length)
        .filter(store -> keeps(wait, store) > 0 && fits(wait, store))
        .boxed()
        .toList();
  }

  /** What rises in an oven counts there with a height that is not its vessel's. */
  private boolean fits(Wait wait, int store) {
    Need.Bake bake = runs.runs().get(wait.run()).step().bake();
    return (bake != null && bake.stands() != null) || floor.stores[store].admits(wait.pieces());
  }

  private int onTheHeat(Wait wait) {
    Run run = runs.runs().get(wait.run());
    return Math.max(
        run.footing().onABurner() ? orNone(wait.keeps().burner()) : 0,
        run.footing().bakes() ? orNone(wait.keeps().oven()) : 0);
  }

  private int keeps(Wait wait, int store) {
    return orNone(wait.keeps().stores().get(store(store).name()));
  }

  private Store store(int number) {
    return runs.event().kitchen().stores().get(number);
  }

  private static int orNone(@Nullable Integer minutes) {
    return minutes == null ? 0 : minutes;
  }

  /** On its burner, in its oven and in a hot place food waits from the first minute to the last; before and after the cold on the counter. */
  private int longest(Wait wait) {
    IntStream elsewhere = stores(wait).stream()
        .mapToInt(
            store -> keeps(wait, store) + (store(store).kind().isCold() ? Keeps.FREE_ON_THE_COUNTER : 0));
    int counter = Keeps.FREE_ON_THE_COUNTER + orNone(wait.keeps().counter());
    return IntStream.concat(IntStream.of(counter, onTheHeat(wait)), elsewhere).max().orElseThrow();
  }
}
