package ovenloom.cli.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A whole number from 1 to 64: each is a thread. */
final class Threads implements ITypeConverter<Integer> {

  private static final int MOST = 64;

  @Override
  public Integer convert(String words) {
    long seeds = new AtLeastOne().convert(words);
    if (seeds > MOST) {
      throw new TypeConversionException("\"" + words + "\" is more than " + MOST);
    }
    return (int) seeds;
  }
}
