package ovenloom.model.watch;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Work;

/** Waits that a menu asks for, and where its food can stand so long. */
record Gaps(Work work, Reach reach) {

  /**
   * A wait of at least some minutes.
   *
   * @param after the step that ends it
   * @param onTheCounter minutes it may stand on the counter at most, the free quarter of an hour with them
   * @param inPlace minutes in the oven it was baked in, or on its burner
   */
  record Gap(BatchStep after, int least, int onTheCounter, int inPlace) {}

  List<Gap> of(BatchStep step) {
    return !work.leavesAStay(step.index()) ? List.of()
        : work.outOf(step.index())
            .stream()
            .filter(BatchLink::makesAStay)
            .filter(link -> link.link().least() > 0)
            .map(link -> gap(step, link))
            .toList();
  }

  private Gap gap(BatchStep step, BatchLink link) {
    Keeps keeps = keeps(step);
    Integer most = link.link().most();
    int counter = Keeps.FREE_ON_THE_COUNTER + (most == null ? orNone(keeps.counter()) : most);
    int inPlace = Math.max(step.step().bake() == null ? 0 : orNone(keeps.oven()),
        step.step().burner() == null ? 0 : orNone(keeps.burner()));
    return new Gap(work.steps().get(link.to()), link.link().least(), counter, inPlace);
  }

  /** The keys of a step that ask it to wait for another. */
  static List<String> keys(BatchStep step, Gap gap) {
    boolean own = gap.after().dish().equals(step.dish());
    return List.of(own ? "after" : "uses", step.step().name());
  }

  Stream<Store> cold(BatchStep step) {
    return reach.keeping(step).stream().filter(store -> store.kind().isCold());
  }

  Stream<Store> hot(BatchStep step) {
    return reach.keeping(step).stream().filter(store -> store.kind() == Store.Kind.HOT);
  }

  /** Minutes that food keeps in any of these places, at most. */
  static int longest(BatchStep step, Stream<Store> stores) {
    return stores.mapToInt(store -> orNone(keeps(step).stores().get(store.name()))).max().orElse(0);
  }

  private static Keeps keeps(BatchStep step) {
    return Objects.requireNonNullElse(step.step().keeps(), Keeps.HARDLY);
  }

  private static int orNone(@Nullable Integer minutes) {
    return minutes == null ? 0 : minutes;
  }
}
