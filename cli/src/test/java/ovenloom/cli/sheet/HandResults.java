package ovenloom.cli.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.audit.score.Figures.Scarce;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

/** What came of six runs, made by hand: three kitchens, 80 or 120 guests. */
public final class HandResults {

  public static final Axis KITCHEN = new Axis("kitchen", List.of("club", "club with a second oven", "hall"));
  public static final Axis GUESTS = new Axis("guests", List.of("80", "120"));
  public static final List<Axis> AXES = List.of(KITCHEN, GUESTS);

  private HandResults() {}

  /** All of them, in the order of their choices. */
  public static List<Result> all() {
    return List.of(
        plan(choices("club", "80"), 1_210, 300, 90, 81),
        without(choices("club", "120"), Answer.NO_PLAN, "More is asked\n  of the oven than there is."),
        plan(choices("club with a second oven", "80"), 0, 340, 40, 104),
        plan(choices("club with a second oven", "120"), 0, 461, 75, 135),
        without(choices("hall", "80"), Answer.NONE_FOUND, "No plan found in 100 schedules."),
        without(choices("hall", "120"), Answer.MISTAKEN, "there are 3 pots"));
  }

  /** What they come to. */
  public static Tally tally() {
    return tally(all());
  }

  public static Tally tally(List<Result> results) {
    Tally tally = new Tally(AXES);
    results.forEach(tally::add);
    return tally;
  }

  public static Map<String, String> choices(String kitchen, String guests) {
    Map<String, String> choices = new LinkedHashMap<>();
    choices.put("kitchen", kitchen);
    choices.put("guests", guests);
    return choices;
  }

  /** One that Roast decides; work begins the day before at 16:30, on the day at 8:05, and 18:45 is the hottest minute. */
  public static Result plan(Map<String, String> choices, long table, long wishes, long hands, long energy) {
    Figures figures = new Figures(-450, 485, 620, hands, 1_125, 5, 3, energy,
        Map.of(Scarce.HANDS, 61, Scarce.OVENS, 40, Scarce.BURNERS, 25));
    return result(choices, Answer.PLAN, null, "Roast",
        new Score(0, Map.of("Roast", table), Map.of(), wishes, 5_000), new Bound(0, wishes - 100), figures);
  }

  /** One for which Soup stands in the way. */
  public static Result without(Map<String, String> choices, Answer answer, String why) {
    return result(choices, answer, why, answer == Answer.MISTAKEN ? null : "Soup", null, null, null);
  }

  private static Result result(Map<String, String> choices, Answer answer, @Nullable String why,
      @Nullable String decides, @Nullable Score score, @Nullable Bound bound, @Nullable Figures figures) {
    String run = Integer.toHexString(choices.hashCode());
    return new Result(run, "event", choices, List.of("{}"), 100L, null, 1, false, "1", answer, why, decides,
        score, bound, figures);
  }
}
