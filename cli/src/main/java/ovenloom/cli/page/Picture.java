package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.lane.Lane;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * The kitchen over one stretch of time.
 *
 * @param name a word without spaces, for links
 * @param pixels how wide it is on a screen at least
 */
public record Picture(String name, String heading, String pixels, Panel screen) {

  static Picture of(Plan plan, List<Lane> all, Stretch when, String name, String heading,
      double minutePixels) {
    String pixels = String.format(Locale.ROOT, "%.0f", when.minutes() * minutePixels);
    return new Picture(name, heading, pixels, Panel.of(plan, all, when, minutePixels));
  }
}
