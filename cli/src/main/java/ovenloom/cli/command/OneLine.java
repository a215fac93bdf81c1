package ovenloom.cli.command;

/** A line among the errors that is written over and over, where somebody watches; else nothing. */
final class OneLine {

  private final Kit kit;
  private int written;

  OneLine(Kit kit) {
    this.kit = kit;
  }

  void show(String words) {
    if (kit.terminal().progress()) {
      write(words);
    }
  }

  void clear() {
    if (written > 0) {
      write("");
      kit.err().print("\r");
      kit.err().flush();
    }
  }

  private void write(String words) {
    String line = words.substring(0, Math.min(words.length(), kit.terminal().width() - 1));
    kit.err().print("\r" + line + " ".repeat(Math.max(0, written - line.length())));
    kit.err().flush();
    written = line.length();
  }
}
