package ovenloom.solver.place;

import java.util.List;
import java.util.function.IntConsumer;

/** When food is carried: as a run begins, as its food goes elsewhere to wait, and as a wait is over. */
final class Carrying {

  private final Runs runs;

  Carrying(Runs runs) {
    this.runs = runs;
  }

  /** Tells each moment of a draft, some more than once; food that goes on to a next step where it is counts as carried. */
  void each(Draft draft, IntConsumer moment) {
    for (Run run : runs.runs()) {
      if (run.dish().food()) {
        moment.accept(draft.start(run.index()));
      }
    }
    for (int wait = 0; wait < runs.waits().size(); wait++) {
      each(draft, wait, moment);
    }
  }

  private void each(Draft draft, int number, IntConsumer moment) {
    Wait wait = runs.waits().get(number);
    List<WaitPart> parts = draft.parts(number);
    if (parts.isEmpty()) {
      moment.accept(draft.end(wait.run()));
    } else if (!stays(draft, wait, parts.getFirst())) {
      moment.accept(parts.getFirst().from());
    }
    for (WaitPart part : parts) {
      moment.accept(part.to());
    }
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
