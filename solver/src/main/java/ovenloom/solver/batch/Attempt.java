package ovenloom.solver.batch;

import java.io.IOException;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;
import ovenloom.solver.search.Budget;

/** Reads and plans a run and makes a result of what comes of it, whatever comes but too little memory: that may be there the next time. */
public record Attempt(Wording wording, Keeping keeping, BooleanSupplier stop) implements Runner.Doing {

  private static final double NANOS = 1e9;

  /** Says why there is no plan. */
  @FunctionalInterface
  public interface Wording {
    String why(Event event, Outcome outcome);
  }

  /** Keeps a plan, if plans are kept. */
  @FunctionalInterface
  public interface Keeping {
    void keep(String run, Plan plan) throws IOException;
  }

  @Override
  public @Nullable Result of(Run run) throws IOException {
    try {
      return switch (run.event().get()) {
        case Reading.Mistaken<Event> mistaken ->
          without(run, mistaken.isWellWritten() ? Answer.NO_PLAN : Answer.MISTAKEN,
              MistakeText.of(mistaken.mistakes()), null);
        case Reading.Understood<Event>(Event event, List<Plan.Source> sources, var notes) ->
          planned(run, event, sources);
      };
    } catch (RuntimeException | StackOverflowError fault) {
      return without(run, Answer.FAILED, fault.toString(), null);
    }
  }

  private @Nullable Result planned(Run run, Event event, List<Plan.Source> sources) throws IOException {
    Outcome outcome = Outcome.planned(event, sources, run.budget(), run.from(), stop);
    return stop.getAsBoolean() ? null : of(run, event, outcome);
  }

  private Result of(Run run, Event event, Outcome outcome) throws IOException {
    if (outcome instanceof Outcome.APlan(Plan plan)) {
      keeping.keep(run.id(), plan);
      return result(run, Answer.PLAN, null, DecidingDish.of(event, outcome), plan);
    }
    return without(run, answer(outcome), wording.why(event, outcome), DecidingDish.of(event, outcome));
  }

  private static Answer answer(Outcome outcome) {
    return switch (outcome) {
      case Outcome.APlan plan -> Answer.PLAN;
      case Outcome.TooMuch clash -> Answer.NO_PLAN;
      case Outcome.Clashing claims -> Answer.NO_PLAN;
      case Outcome.NoneFound none -> none.found().isOurFault() ? Answer.FAILED : Answer.NONE_FOUND;
    };
  }

  private static Result without(Run run, Answer answer, String why, @Nullable String decides) {
    return result(run, answer, why.strip(), decides, null);
  }

  private static Result result(
      Run run, Answer answer, @Nullable String why, @Nullable String decides, @Nullable Plan plan) {
    Budget budget = run.budget();
    Double seconds = budget.time() == null ? null : budget.time().toNanos() / NANOS;
    return new Result(run.id(), run.base(), run.variation().choices(), run.variation().patches(),
        budget.tries(),
        seconds, budget.seed(), run.from() != null, run.version(), answer, why, decides,
        plan == null ? null : plan.score(), plan == null ? null : plan.bound(),
        plan == null ? null : Figures.of(plan));
  }
}
