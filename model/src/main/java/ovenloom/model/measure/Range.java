package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How long something takes, in whole minutes: one figure, or from a least to a most when it is
 * uncertain ({@code 40-45 min}). A day is 24 hours of elapsed time.
 *
 * @param least the shortest it may take, 0 or more
 * @param most the longest it may take, which is what a plan books
 */
public record Range(int least, int most) {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;
  private static final int LONGEST_IN_MINUTES = 3 * HOUR;

  private static final Reader<Range> READER = new Reader<>(
      "a time like \"40 min\", \"1 h 15 min\", \"40-45 min\" or \"3 days\"", Range::understand,
      Range::written,
      texts -> guesses(texts, "min", "h"));
  private static final Pattern WRONG_WAY_ROUND = Pattern.compile("([^-]+)-([^-]*[^-\\p{L}])(\\p{L}+)");
  private static final Pattern HYPHENATED_FRACTION = Pattern.compile("(?<=\\d)-(?=\\d/\\d)");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");

  /** Refuses less than nothing, and a most below the least. */
  public Range {
    if (least < 0 || most < least) {
      throw new IllegalArgumentException("no time takes from " + least + " to " + most + " minutes");
    }
  }

  /**
   * Reads how long something takes, at most 366 days, each end rounded up to whole minutes:
   * {@code 40-45 min}, {@code 1-1 1/2 h}, {@code 1 h 15 min}, {@code 3 days}, {@code 30 s}; or as
   * ISO 8601, {@code PT1H15M}. A lone {@code m} is refused: it might be metres or months.
   */
  public static Parsed<Range> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Range understand(Scanner s) {
    Elapsed elapsed = Elapsed.read(s);
    return elapsed == null ? null : elapsed.minutes();
  }

  /** What someone may have meant who wrote these and no time; each ending is tried on a bare number. */
  static List<String> guesses(List<String> texts, String... endings) {
    var guesses = new ArrayList<>(Guesses.spelling(Guesses.ending(texts, endings), ClockUnit.WORDS));
    for (String text : texts) {
      guesses.add(HYPHENATED_FRACTION.matcher(text).replaceAll(" "));
      guesses.add(WRONG_WAY_ROUND.matcher(text).replaceAll("$2-$1$3"));
      guesses.add(CLOCK.matcher(text).replaceAll("$1 h $2 min"));
      guesses.add(text.replaceFirst("^p(?=\\d{1,9}m)", "pt"));
    }
    return guesses;
  }

  /** A time that is certain. */
  public static Range exactly(int minutes) {
    return new Range(minutes, minutes);
  }

  /**
   * In the largest units that fit: {@code 45 min}, {@code 1 h 15 min}, {@code 36 h},
   * {@code 3 days}, {@code 40-45 min}, {@code 2-3 h}, {@code 3 h 10 min - 4 h}.
   */
  public String written() {
    if (least == most) {
      return written(least);
    }
    if (least % DAY == 0 && most % DAY == 0) {
      return least / DAY + "-" + days(most / DAY);
    }
    if (least % HOUR == 0 && most % HOUR == 0) {
      return least / HOUR + "-" + most / HOUR + " h";
    }
    return most <= LONGEST_IN_MINUTES ? least + "-" + most + " min" : written(least) + " - " + written(most);
  }

  private static String written(int minutes) {
    if (minutes % DAY == 0 && minutes > DAY) {
      return days(minutes / DAY);
    }
    String hours = minutes / HOUR + " h";
    String rest = minutes % HOUR + " min";
    if (minutes < HOUR) {
      return rest;
    }
    return minutes % HOUR == 0 ? hours : hours + " " + rest;
  }

  private static String days(int days) {
    return days == 1 ? "1 day" : days + " days";
  }

  @Override
  public String toString() {
    return written();
  }
}
