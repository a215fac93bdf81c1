package ovenloom.solver.place;

import java.util.stream.IntStream;

/** When food is carried: as a run begins, as one comes off the heat, as a wait goes on elsewhere or is over. */
final class Carrying {

  private final Runs runs;

  Carrying(Runs runs) {
    this.runs = runs;
  }

  /** The moments of a draft; food that stays on its shelf counts as carried. */
  IntStream moments(Draft draft) {
    IntStream begun = runs.runs()
        .stream()
        .filter(run -> run.dish().food())
        .flatMapToInt(run -> moments(draft, run));
    return IntStream.concat(begun,
        IntStream.range(0, runs.waits().size()).flatMap(wait -> moments(draft, wait)));
  }

  private static IntStream moments(Draft draft, Run run) {
    boolean isHot = run.footing().cooks() || run.footing().onAMachine();
    int start = draft.start(run.index());
    return isHot ? IntStream.of(start, draft.end(run.index())) : IntStream.of(start);
  }

  private IntStream moments(Draft draft, int wait) {
    boolean stays = runs.runs().get(runs.waits().get(wait).run()).footing().onTheWorktop();
    return draft.parts(wait)
        .stream()
        .flatMapToInt(part -> stays && part.kind() == WaitPart.Kind.COUNTER ? IntStream.of(part.to())
            : IntStream.of(part.from(), part.to()));
  }
}
