package ovenloom.solver.batch;

import java.util.List;
import java.util.Map;
import ovenloom.model.file.Reading;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Variation;
import ovenloom.solver.search.Budget;

/** Runs that ask for nothing but to be told apart, and their results. */
final class Errands {

  private Errands() {}

  static Run run(String name) {
    return Run.of("event", new Variation(Map.of("errand", name), List.of("{}")),
        () -> new Reading.Mistaken<>(List.of()), new Budget(null, 1L, 1, 1), null, "test");
  }

  static Result result(String name) {
    return result(run(name));
  }

  static Result result(Run run) {
    return new Result(run.id(), run.base(), run.variation().choices(), run.variation().patches(), 1L, null, 1,
        false, "test",
        Result.Answer.MISTAKEN, "Nobody can read it.", null, null, null, null);
  }
}
