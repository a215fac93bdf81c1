package ovenloom.cli.sheet;

/** A file may come from a stranger, and a name in it hold what a terminal obeys or what turns the words about it round. */
public final class Harmless {

  private Harmless() {}

  /** Words with a question mark for each letter that is none, but for those allowed. */
  public static String words(String words, String allowed) {
    return words.codePoints()
        .map(point -> isLetter(point) || allowed.indexOf(point) >= 0 ? point : '?')
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static boolean isLetter(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
        false;
      default -> true;
    };
  }
}
