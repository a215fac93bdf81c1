package ovenloom.solver.batch;

import org.jspecify.annotations.Nullable;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.model.variation.Variation;
import ovenloom.solver.search.Budget;

/**
 * All that is needed to plan one variation, here or on another machine.
 *
 * @param id what tells it from all other runs: equal ones have equal results
 * @param eventDigest of the event as understood; absent where it could not be
 * @param event as understood with its patches, or every mistake in it
 * @param from absent where its search begins as any other
 * @param version of this program: another one may come to another plan
 */
public record Run(String id, @Nullable String eventDigest, Variation variation, Reading<Event> event,
    Budget budget,
    @Nullable WarmStart from, String version) {

  public static Run of(
      Variation variation, Reading<Event> event, Budget budget, @Nullable WarmStart from, String version) {
    String digest = switch (event) {
      case Reading.Understood<Event> understood -> Digest.of(ProblemFile.json(understood.value()));
      case Reading.Mistaken<Event> mistaken -> null;
    };
    String read = event instanceof Reading.Mistaken<Event> mistaken ? MistakeText.of(mistaken.mistakes())
        : String.valueOf(digest);
    String id = Digest.of(String.join("\n", read, variation.choices().toString(),
        variation.patches().toString(), budget.toString(), from == null ? "cold" : from.digest(), version));
    return new Run(id, digest, variation, event, budget, from, version);
  }
}
