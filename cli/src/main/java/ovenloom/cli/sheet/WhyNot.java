package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.model.menu.Event;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.proof.Claim;
import ovenloom.solver.proof.Clash;
import ovenloom.solver.search.Found;

/** Why an event has no plan, in a few lines. */
public final class WhyNot {

  private WhyNot() {}

  /**
   * What is proven to clash; or, where nothing is proven, the break that weighs most in the best try.
   *
   * @param width of a line, in characters
   * @throws IllegalArgumentException where there is a plan
   */
  public static String of(Event event, Outcome outcome, int width) {
    return switch (outcome) {
      case Outcome.APlan plan -> throw new IllegalArgumentException("there is a plan of " + event.name());
      case Outcome.TooMuch(Clash clash) -> ClashText.of(event, clash, width);
      case Outcome.Clashing(List<Claim> claims) -> ClaimsText.of(claims, width);
      case Outcome.NoneFound(Found found) -> new Page(width, false)
          .line("No plan found in %s schedules. The best try is no plan: %s, most of all this."
              .formatted(String.format(Locale.ENGLISH, "%,d", found.schedules()),
                  BreakList.count(found.breaks())))
          .line(BreakList.worst(event, found.breaks()))
          .toString();
    };
  }
}
