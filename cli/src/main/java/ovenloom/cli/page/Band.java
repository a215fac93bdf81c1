package ovenloom.cli.page;

import java.util.Comparator;
import ovenloom.model.menu.Event;
import ovenloom.model.safety.Profile;

/**
 * The temperatures between which food should not stay for long, C: above the least that is cold by the rules of an event, below
 * the most that is hot by them.
 */
public record Band(double cold, double hot) {

  static Band of(Event event) {
    Profile rules = Profile.of(event.rules());
    return new Band(
        rules.cold()
            .stream()
            .map(Profile.Limit::temperature)
            .min(Comparator.naturalOrder())
            .orElseThrow()
            .inCelsius(),
        rules.hot()
            .stream()
            .map(Profile.Limit::temperature)
            .max(Comparator.naturalOrder())
            .orElseThrow()
            .inCelsius());
  }

  /** {@code 5 C} */
  public static String words(double celsius) {
    return Math.round(celsius) + " C";
  }
}
