package ovenloom.cli.command;

import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** {@code 20s}, {@code 90 sec}, {@code 5min}, {@code 1h}. */
final class TimeOption implements ITypeConverter<Duration> {

  private static final Pattern TIME = Pattern.compile("(\\d{1,6}) ?(s|sec|m|min|h)");

  @Override
  public Duration convert(String words) {
    Matcher time = TIME.matcher(words.strip().toLowerCase(Locale.ROOT));
    if (!time.matches() || Long.parseLong(time.group(1)) == 0) {
      throw new TypeConversionException("\"" + words + "\" is no time; write it like 20s, 5min or 1h");
    }
    long count = Long.parseLong(time.group(1));
    return switch (time.group(2)) {
      case "s", "sec" -> Duration.ofSeconds(count);
      case "m", "min" -> Duration.ofMinutes(count);
      default -> Duration.ofHours(count);
    };
  }
}
