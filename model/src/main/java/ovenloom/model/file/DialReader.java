package ovenloom.model.file;

import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.TemperatureUnit;

/** Reads an oven's dial: from its lowest mark to its highest, and the degrees from mark to mark. */
final class DialReader {

  private static final String DIAL = "a dial like \"60 C to 260 C\", \"150 F to 500 F\" or \"gas 1/2 to gas 9\"";
  private static final Setting LOWEST = Setting.celsius(50);
  private static final Setting HIGHEST = Setting.celsius(250);
  /** Hotter than any oven people cook in. */
  private static final Temperature HOTTEST = Temperature.celsius(600);
  private static final Temperature HOLD = Temperature.celsius(80);

  private record Ends(Setting lowest, Setting highest) {}

  private final Desk desk;

  DialReader(Desk desk) {
    this.desk = desk;
  }

  Dial dial(Fields oven) {
    Ends ends = oven.read("dial", DialReader::ends, new Ends(LOWEST, HIGHEST));
    return new Dial(ends.lowest(), ends.highest(), step(oven, ends.lowest().unit()));
  }

  /** The mark at which food may wait in the oven. */
  Setting hold(Fields oven, Dial dial) {
    Setting written = oven.read("hold", Setting::read);
    if (written == null) {
      return dial.nearest(HOLD);
    }
    if (dial.within(written.temperature(), written.temperature()).isEmpty()) {
      desk.contradiction(oven.placeOf("hold"), "no mark on the dial is " + written,
          "one from " + dial.lowest() + " to " + dial.highest());
    }
    return dial.nearest(written.temperature());
  }

  private int step(Fields oven, TemperatureUnit unit) {
    boolean inFahrenheit = unit == TemperatureUnit.FAHRENHEIT;
    int usual = inFahrenheit ? Dial.FAHRENHEIT_STEP : Dial.CELSIUS_STEP;
    Temperature written = oven.read("step", Temperature::read);
    if (written == null) {
      return usual;
    }
    double degrees = inFahrenheit ? written.inFahrenheit() : written.inCelsius();
    int whole = (int) Math.round(degrees);
    if (unit == TemperatureUnit.GAS || whole < 1 || Math.abs(degrees - whole) > 1e-3) {
      desk.contradiction(oven.placeOf("step"), "this is no step from mark to mark of this dial",
          "whole degrees in the dial's own unit, like \"" + usual + (inFahrenheit ? " F\"" : " C\""));
      return usual;
    }
    return whole;
  }

  private static Parsed<Ends> ends(String text) {
    String[] ends = text.strip().split("\\s+to\\s+|\\s*[-\u2010-\u2015\u2212]\\s*", 2);
    if (ends.length < 2) {
      return Scalars.bad(text, DIAL);
    }
    Setting lowest = setting(ends[0] + (ends[0].matches(".*[0-9]") ? unit(ends[1]) : ""));
    Setting highest = setting(ends[1]);
    boolean dial = lowest != null && highest != null && lowest.unit() == highest.unit()
        && lowest.temperature().compareTo(highest.temperature()) < 0;
    boolean real = highest != null && highest.temperature().compareTo(HOTTEST) <= 0;
    return dial && real && lowest != null && highest != null ? new Parsed.Good<>(new Ends(lowest, highest))
        : Scalars.bad(text, DIAL);
  }

  /** Two figures may share the unit behind the second. */
  private static String unit(String text) {
    String plain = text.strip();
    return plain.startsWith("gas") ? "" : plain.replaceFirst("^[0-9.]+", "");
  }

  private static @Nullable Setting setting(String text) {
    return Setting.read(text) instanceof Parsed.Good<Setting>(Setting value) ? value : null;
  }
}
