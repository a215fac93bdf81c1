package ovenloom.solver.place;

import java.util.List;
import java.util.stream.IntStream;

/** When food is carried: as a run begins, as its food goes elsewhere to wait, and as a wait is over. */
final class Carrying {

  private final Runs runs;

  Carrying(Runs runs) {
    this.runs = runs;
  }

  /** The moments of a draft; food that goes on to a next step where it is counts as carried. */
  IntStream moments(Draft draft) {
    IntStream begun = runs.runs()
        .stream()
        .filter(run -> run.dish().food())
        .mapToInt(run -> draft.start(run.index()));
    return IntStream.concat(begun,
        IntStream.range(0, runs.waits().size()).flatMap(wait -> moments(draft, wait)));
  }

  private IntStream moments(Draft draft, int number) {
    Wait wait = runs.waits().get(number);
    List<WaitPart> parts = draft.parts(number);
    if (parts.isEmpty()) {
      return IntStream.of(draft.end(wait.run()));
    }
    IntStream first = stays(draft, wait, parts.getFirst()) ? IntStream.of()
        : IntStream.of(parts.getFirst().from());
    return IntStream.concat(first, parts.stream().mapToInt(WaitPart::to));
  }

  /** Whether food goes on standing where its step had it. */
  private boolean stays(Draft draft, Wait wait, WaitPart part) {
    int run = wait.run();
    return switch (part.kind()) {
      case COUNTER -> runs.runs().get(run).footing().onTheWorktop();
      case STORE -> draft.shelves[run] != null && draft.store[run] == part.place();
      case BURNER, OVEN -> true;
    };
  }
}
