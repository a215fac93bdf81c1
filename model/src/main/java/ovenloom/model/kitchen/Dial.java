package ovenloom.model.kitchen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ovenloom.model.measure.GasMark;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.TemperatureUnit;

/**
 * The marks an oven can be set to. Only marks are set-points.
 *
 * @param lowest the lowest mark, in the unit the dial is printed in
 * @param highest the highest mark, in the same unit
 * @param step degrees from mark to mark in that unit (5 C or 25 F as a rule); a gas dial has its table and ignores it
 */
public record Dial(Setting lowest, Setting highest, int step) {

  /** Degrees from mark to mark where a file does not say: 5 C. Common practice. */
  public static final int CELSIUS_STEP = 5;

  /** Degrees from mark to mark where a file does not say: 25 F. Common practice. */
  public static final int FAHRENHEIT_STEP = 25;

  /** Kelvins by which a difference of two temperatures, each kept to a thousandth, may be off. */
  private static final double ROUNDING = 0.0021;

  public Dial {
    if (lowest.unit() != highest.unit() || lowest.temperature().compareTo(highest.temperature()) > 0
        || step < 1) {
      throw new IllegalArgumentException("no dial from " + lowest + " to " + highest + " by " + step);
    }
  }

  public TemperatureUnit unit() {
    return lowest.unit();
  }

  /** All marks, coolest first. */
  public List<Setting> marks() {
    return switch (unit()) {
      case CELSIUS, FAHRENHEIT -> degreeMarks();
      case GAS -> Arrays.stream(GasMark.values()).map(Setting::gas).filter(this::reaches).toList();
    };
  }

  /** The mark nearest to a temperature; of two as near, the cooler. */
  public Setting nearest(Temperature wanted) {
    Setting best = lowest;
    for (Setting mark : marks()) {
      if (distance(mark, wanted) < distance(best, wanted) - ROUNDING) {
        best = mark;
      }
    }
    return best;
  }

  /** The marks inside a window, or within half a step of it, coolest first. */
  public List<Setting> within(Temperature from, Temperature to) {
    double half = stepInKelvins() / 2 + ROUNDING;
    return marks().stream()
        .filter(mark -> from.kelvinsAbove(mark.temperature()) <= half)
        .filter(mark -> mark.temperature().kelvinsAbove(to) <= half)
        .toList();
  }

  /** Kelvins from one mark to the next. */
  public double stepInKelvins() {
    return switch (unit()) {
      case CELSIUS -> step;
      case FAHRENHEIT -> step / 1.8;
      case GAS -> FAHRENHEIT_STEP / 1.8;
    };
  }

  private List<Setting> degreeMarks() {
    List<Setting> marks = new ArrayList<>();
    for (int steps = 0; reaches(mark(steps)); steps++) {
      marks.add(mark(steps));
    }
    return marks;
  }

  /** Each counted from the lowest: counted from one another, roundings add up, and 400 F is no longer 400 F. */
  private Setting mark(int steps) {
    return unit() == TemperatureUnit.FAHRENHEIT
        ? Setting.fahrenheit(toTheHundredth(lowest.temperature().inFahrenheit()) + steps * step)
        : Setting.celsius(lowest.temperature().inCelsius() + steps * step);
  }

  private static double toTheHundredth(double degrees) {
    return Math.rint(degrees * 100) / 100;
  }

  private boolean reaches(Setting mark) {
    return mark.temperature().compareTo(lowest.temperature()) >= 0
        && mark.temperature().compareTo(highest.temperature()) <= 0;
  }

  private static double distance(Setting mark, Temperature wanted) {
    return Math.abs(mark.temperature().kelvinsAbove(wanted));
  }
}
