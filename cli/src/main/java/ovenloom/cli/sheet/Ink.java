package ovenloom.cli.sheet;

/** The colour of words in a terminal: few, and none of them tells what no word does. */
public enum Ink {
  PLAIN(""),
  TIME("36"),
  TABLE("32"),
  CAUTION("31");

  private static final String BOLD = "1";

  private final String code;

  Ink(String code) {
    this.code = code;
  }

  String on(String words) {
    return coded(code, words);
  }

  String bold(String words) {
    return coded(code.isEmpty() ? BOLD : BOLD + ";" + code, words);
  }

  private static String coded(String code, String words) {
    return code.isEmpty() || words.isEmpty() ? words : "\u001b[" + code + "m" + words + "\u001b[0m";
  }
}
