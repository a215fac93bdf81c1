package ovenloom.solver.search;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Runs;

/** A bench for each way in which batches share runs, set up when first asked for. */
final class Benches {

  /** Those asked for last are kept. */
  private static final int KEPT = 50;

  private final Event event;
  private final BakeMinutes minutes;
  private final Map<List<Integer>, Bench> benches = new LinkedHashMap<>(16, 0.75f, true);
  private int made;

  Benches(Event event, BakeMinutes minutes) {
    this.event = event;
    this.minutes = minutes;
  }

  /** For so many batches together as was decided. */
  Bench of(Decisions decisions) {
    List<Integer> key = IntStream.range(0, decisions.steps()).map(decisions::together).boxed().toList();
    Bench bench = benches.get(key);
    if (bench == null) {
      bench = new Bench(Runs.of(event, minutes, decisions::together), made++);
      benches.put(key, bench);
      if (benches.size() > KEPT) {
        benches.remove(benches.keySet().iterator().next());
      }
    }
    return bench;
  }
}
