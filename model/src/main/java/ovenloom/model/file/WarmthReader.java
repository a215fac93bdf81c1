package ovenloom.model.file;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;

/** Reads how an oven warms and cools, which a line each says. */
final class WarmthReader {

  private static final String HEATS = "a time to heat from room temperature like \"180 C in 12 min\"";
  private static final String COOLS = "a time to cool like \"200 C to 150 C in 15 min\"";
  private static final Pattern HEATING = Pattern.compile("(.+?)\\s+in\\s+(.+)");
  private static final Pattern COOLING = Pattern.compile("(.+?)\\s+to\\s+(.+?)\\s+in\\s+(.+)");
  /** Common practice: a home oven is at 180 C in a quarter of an hour, and cools slower than that. */
  private static final Heats USUAL_HEATS = new Heats(Temperature.celsius(180), 15);
  private static final Cools USUAL_COOLS = new Cools(Temperature.celsius(200), Temperature.celsius(150), 20);

  private record Heats(Temperature to, int in) {}

  private record Cools(Temperature from, Temperature to, int in) {}

  private WarmthReader() {}

  static Warmth warmth(Desk desk, Fields oven, Temperature room) {
    Heats heats = oven.read("heats", WarmthReader::heats, USUAL_HEATS);
    Cools cools = oven.read("cools", WarmthReader::cools, USUAL_COOLS);
    if (heats.to().compareTo(room) <= 0) {
      desk.contradiction(oven.placeOf("heats"),
          "an oven that heats to " + heats.to() + " in a room of " + room,
          "more than room temperature");
      heats = USUAL_HEATS;
    }
    if (cools.to().compareTo(room) <= 0) {
      desk.contradiction(oven.placeOf("cools"),
          "an oven that cools to " + cools.to() + " in a room of " + room,
          "more than room temperature");
      cools = USUAL_COOLS;
    }
    return new Warmth(room, heats.to(), heats.in(), cools.from(), cools.to(), cools.in());
  }

  private static Parsed<Heats> heats(String text) {
    Matcher line = HEATING.matcher(text.strip());
    Temperature to = line.matches() ? temperature(line.group(1)) : null;
    Integer in = line.matches() ? minutes(line.group(2)) : null;
    return to == null || in == null ? Scalars.bad(text, HEATS) : new Parsed.Good<>(new Heats(to, in));
  }

  private static Parsed<Cools> cools(String text) {
    Matcher line = COOLING.matcher(text.strip());
    Temperature from = line.matches() ? temperature(line.group(1)) : null;
    Temperature to = line.matches() ? temperature(line.group(2)) : null;
    Integer in = line.matches() ? minutes(line.group(3)) : null;
    return from == null || to == null || in == null || from.compareTo(to) <= 0 ? Scalars.bad(text, COOLS)
        : new Parsed.Good<>(new Cools(from, to, in));
  }

  private static @Nullable Temperature temperature(String text) {
    return Setting.read(text) instanceof Parsed.Good<Setting>(Setting value) ? value.temperature() : null;
  }

  private static @Nullable Integer minutes(String text) {
    return Scalars.someMinutes(text) instanceof Parsed.Good<Integer>(Integer value) ? value : null;
  }
}
