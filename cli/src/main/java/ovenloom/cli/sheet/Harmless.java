package ovenloom.cli.sheet;

/** A file may come from a stranger, and a name in it hold what a terminal obeys or what turns the words about it round. */
public final class Harmless {

  private Harmless() {}

  /** Text for a terminal, of one line or more. */
  public static String text(String words) {
    return words(words, "\n\t");
  }

  /** Words with a question mark for each letter that is none, but for those allowed. */
  public static String words(String words, String allowed) {
    StringBuilder harmless = new StringBuilder();
    int written = 0;
    for (int at = 0; at < words.length(); at++) {
      if (!isPlain(words.charAt(at)) && !isLetter(words.codePointAt(at))
          && allowed.indexOf(words.codePointAt(at)) < 0) {
        harmless.append(words, written, at).append('?');
        written = at + Character.charCount(words.codePointAt(at));
      }
    }
    return harmless.append(words, written, words.length()).toString();
  }

  /** As nearly all are. */
  private static boolean isPlain(char letter) {
    return letter >= ' ' && letter <= '~';
  }

  private static boolean isLetter(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
        false;
      default -> true;
    };
  }
}
