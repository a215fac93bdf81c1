package ovenloom.cli.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Parsed;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Placement;

/**
 * Why not then: {@code roast of Leg of lamb at day before 16:00}.
 *
 * @param name of a step
 * @param time of day, perhaps with its day
 */
record Question(String name, String time) {

  private static final Pattern AT = Pattern.compile("(.+) at (.*[0-9].*)");

  /** Null for words that ask for no time. */
  static @Nullable Question of(String words) {
    Matcher at = AT.matcher(words.strip());
    return at.matches() ? new Question(at.group(1), at.group(2).strip()) : null;
  }

  /** The minute that is asked for; a time without a day is of the day on which the run begins. */
  Parsed<Integer> minute(Event event, Placement run) {
    return new Moment(time).minute(event, event.calendar().at(run.when().from()).toLocalDate());
  }
}
