package ovenloom.model.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;

/**
 * The limits of one jurisdiction, each with its source. Several that say something of one thing all hold, so that the strictest
 * of all profiles is all of them together. Local codes and licensed practice come first.
 *
 * @param name what it is called: one of those in the house, or a file of one's own
 * @param cook raw food
 * @param roastOven the oven in which a whole roast is cooked
 * @param reheat what was cooked and cooled, to be hot again
 * @param cool what was cooked
 * @param hot at least, while it is held
 * @param cold at most, while it is held
 * @param thawed outside, while it is frozen inside
 * @param days that it may be kept
 * @param out of temperature, in all
 * @param timeOnly standing out by the clock, with no other control
 */
public record Profile(
    String name,
    List<Cook> cook,
    List<RoastOven> roastOven,
    List<Reheat> reheat,
    List<CoolDown> cool,
    List<Limit> hot,
    List<Limit> cold,
    List<Limit> thawed,
    List<Days> days,
    List<OutOfTemperature> out,
    List<TimeOnly> timeOnly) {

  /** Those in the house, by name. */
  public static final List<String> NAMES = List.of("us-home", "us-service", "uk");

  /** Read once: every layout of an event asks for them. */
  private static final Map<String, Profile> HOUSE = new ConcurrentHashMap<>();

  /**
   * How hot a food must get in all its parts.
   *
   * @param food its tag
   */
  public record Cook(String food, HoldTime hold) {}

  /**
   * How hot an oven must be at least for a whole roast.
   *
   * @param mode of the oven
   * @param under what one roast weighs; absent where it holds for all
   */
  public record RoastOven(String mode, @Nullable Mass under, Temperature at, Source source) {

    /** Whether it holds for a roast of a weight, in a mode of an oven. */
    public boolean isFor(Mass weight, String there) {
      return mode.equals(there) && (under == null || weight.compareTo(under) < 0);
    }
  }

  /**
   * How hot, and how fast.
   *
   * @param within absent where nobody says
   */
  public record Reheat(HoldTime hold, @Nullable Within within) {}

  /**
   * A time in which food gets from cold to hot.
   *
   * @param from where it begins to count
   */
  public record Within(Temperature from, int minutes) {}

  /** A temperature that is not to be passed. */
  public record Limit(Temperature temperature, Source source) {}

  /**
   * Calendar days.
   *
   * @param most the day of preparation counting as the first
   */
  public record Days(int most, Source source) {}

  /**
   * How long food may be between two temperatures in all its life.
   *
   * @param minutes in a kitchen
   * @param hotAir from which on it is less
   * @param then minutes in such air
   */
  public record OutOfTemperature(
      Temperature from, Temperature to, int minutes, Temperature hotAir, int then, Source source) {}

  /**
   * How long food may stand out since it was last cold or hot all through, if time is the only control of it.
   *
   * @param cold at most, to begin with
   * @param hot at least, to begin with
   * @param afterHot minutes for what was hot
   * @param afterCold minutes for what was cold
   * @param cool for what was cold and gets nowhere warmer, it is another time; absent where it is not
   * @param once whether it may stand out only once
   */
  public record TimeOnly(Temperature cold, Temperature hot, int afterHot, int afterCold, @Nullable Cool cool,
      boolean once, Source source) {}

  /**
   * What stays cool, and how long it may.
   *
   * @param most in its warmest part
   */
  public record Cool(Temperature most, int minutes) {}

  public Profile {
    cook = List.copyOf(cook);
    roastOven = List.copyOf(roastOven);
    reheat = List.copyOf(reheat);
    cool = List.copyOf(cool);
    hot = List.copyOf(hot);
    cold = List.copyOf(cold);
    thawed = List.copyOf(thawed);
    days = List.copyOf(days);
    out = List.copyOf(out);
    timeOnly = List.copyOf(timeOnly);
  }

  /** The one an event asks for; the strictest of each where it asks for none. */
  public static Profile of(@Nullable Profile asked) {
    return asked == null ? strictest() : asked;
  }

  /**
   * One of those in the house.
   *
   * @throws IllegalArgumentException for a name that is not one of {@link #NAMES}
   */
  public static Profile read(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException("there is no profile " + name);
    }
    return HOUSE.computeIfAbsent(name, ProfileReader::read);
  }

  /** The strictest of each: all that are in the house, together, but for what is only practice. */
  public static Profile strictest() {
    List<Profile> all = NAMES.stream().map(Profile::read).toList();
    return new Profile(
        "the strictest of each",
        together(all, Profile::cook),
        together(all, Profile::roastOven),
        together(all, Profile::reheat),
        together(all, Profile::cool).stream().filter(each -> !each.source().isPractice()).toList(),
        together(all, Profile::hot),
        together(all, Profile::cold),
        together(all, Profile::thawed),
        together(all, Profile::days),
        together(all, Profile::out),
        together(all, Profile::timeOnly));
  }

  private static <T> List<T> together(List<Profile> all, Function<Profile, List<T>> limits) {
    List<T> together = new ArrayList<>();
    all.forEach(each -> together.addAll(limits.apply(each)));
    return together;
  }
}
