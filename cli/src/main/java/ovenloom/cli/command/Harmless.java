package ovenloom.cli.command;

/** Text for a terminal: a file may come from a stranger, and hold what a terminal obeys. */
final class Harmless {

  private Harmless() {}

  static String text(String words) {
    return words.replaceAll("[\\p{Cc}\\p{Cf}&&[^\n\t]]", "?");
  }
}
