package ovenloom.cli.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A whole number from 1; of nine figures at most. */
final class AtLeastOne implements ITypeConverter<Long> {

  @Override
  public Long convert(String words) {
    if (!words.matches("\\d{1,9}") || Long.parseLong(words) < 1) {
      throw new TypeConversionException("\"" + words + "\" is no whole number from 1");
    }
    return Long.valueOf(words);
  }
}
