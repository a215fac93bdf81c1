package ovenloom.solver.search;

import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;
import ovenloom.solver.wish.Scorer;

/** A decoder and a scorer, for one way in which batches share runs. */
final class Bench {

  private final Decoder decoder;
  private final Scorer scorer;
  private final int number;

  /** What became of decisions; the draft is good until the bench is used again. */
  record Tried(Draft draft, Score score) {}

  /**
   * One among many.
   *
   * @param number no other has it
   */
  Bench(Runs runs, int number) {
    this.number = number;
    decoder = new Decoder(runs);
    scorer = new Scorer(runs);
  }

  /** A number that decisions have in common only, but for odd chance, if the same plan follows from them; on another bench they have others. */
  long print(Decisions decisions) {
    return decoder.print(decisions) + number;
  }

  Tried of(Decisions decisions) {
    Draft draft = decoder.decode(decisions);
    return new Tried(draft, scorer.of(draft));
  }
}
