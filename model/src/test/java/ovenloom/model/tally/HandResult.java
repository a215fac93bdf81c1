package ovenloom.model.tally;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

/** Results made by hand. */
final class HandResult {

  private HandResult() {}

  /** With a plan that Roast decides. */
  static Result plan(Map<String, String> choices, long table, long wishes, long hands, long energy) {
    Figures figures = new Figures(900, 900, 240, hands, 1100, 4, 3, energy,
        new EnumMap<>(Figures.Scarce.class));
    return result(choices, Answer.PLAN, "Roast", new Score(0, Map.of("Roast", table), Map.of(), wishes, 0),
        figures);
  }

  /** Without one, for which Soup stands in the way. */
  static Result without(Map<String, String> choices, Answer answer) {
    return result(choices, answer, "Soup", null, null);
  }

  private static Result result(Map<String, String> choices, Answer answer, String decides,
      @Nullable Score score,
      @Nullable Figures figures) {
    return new Result(choices.toString(), "event", choices, List.of(), 100L, null, 1, false, "1", answer,
        score == null ? "Too much" : null, decides, score, null, figures);
  }
}
