package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is at the other end of the two outputs.
 *
 * @param width of a line, in characters
 * @param colour whether results may be coloured: they go to a terminal, and nobody asked for none
 * @param progress whether somebody watches the errors as they come
 */
public record Terminal(int width, boolean colour, boolean progress) {

  private static final int WIDTH = 80;
  private static final int WIDEST = 1000;
  private static final int OUT = 1;
  private static final int ERR = 2;

  /** This process's own. */
  public static Terminal ofThisProcess() {
    // From Java 22 to 24 there is a console even where no terminal is, unless one asks for the plain one.
    System.setProperty("jdk.console", "java.base");
    Map<String, String> env = System.getenv();
    return new Terminal(
        width(env.get("COLUMNS")), isColourWanted(env) && isATerminal(OUT), isATerminal(ERR));
  }

  static int width(@Nullable String columns) {
    boolean isANumber = columns != null && columns.matches("[1-9]\\d{1,3}");
    return isANumber ? Math.min(WIDEST, Integer.parseInt(columns)) : WIDTH;
  }

  /** As no-color.org has it: any words in NO_COLOR mean none. */
  static boolean isColourWanted(Map<String, String> env) {
    return env.getOrDefault("NO_COLOR", "").isEmpty() && !"dumb".equals(env.get("TERM"));
  }

  @SuppressWarnings("SystemConsoleNull") // the plain console was asked for above
  private static boolean isATerminal(int descriptor) {
    Path link = Path.of("/proc/self/fd/" + descriptor);
    try {
      String to = Files.readSymbolicLink(link).toString();
      return to.startsWith("/dev/pts/") || to.startsWith("/dev/tty") || to.equals("/dev/console");
    } catch (IOException | UnsupportedOperationException notHere) {
      return System.console() != null;
    }
  }
}
