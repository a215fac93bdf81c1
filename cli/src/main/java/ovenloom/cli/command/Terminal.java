package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is at the other end of the two outputs.
 *
 * @param width of a line, in characters
 * @param colour whether results may be coloured: they go to a terminal, and nobody asked for none
 * @param progress whether somebody watches the errors as they come
 * @param utf8 whether letters are read that ASCII does not have, drawn lines and blocks among them
 */
public record Terminal(int width, boolean colour, boolean progress, boolean utf8) {

  private static final int WIDTH = 80;
  private static final int WIDEST = 1000;
  private static final Pattern UTF_8 = Pattern.compile("utf-?8", Pattern.CASE_INSENSITIVE);
  private static final int OUT = 1;
  private static final int ERR = 2;

  /** This process's own. */
  public static Terminal ofThisProcess() {
    // From Java 22 to 24 there is a console even where no terminal is, unless one asks for the plain one.
    System.setProperty("jdk.console", "java.base");
    Map<String, String> env = System.getenv();
    return new Terminal(
        width(env.get("COLUMNS")), isColourWanted(env) && isATerminal(OUT), isATerminal(ERR),
        isUtf8(env, System.getProperty("stdout.encoding")));
  }

  static int width(@Nullable String columns) {
    boolean isANumber = columns != null && columns.matches("[1-9]\\d{1,3}");
    return isANumber ? Math.min(WIDEST, Integer.parseInt(columns)) : WIDTH;
  }

  /** As no-color.org has it: any words in NO_COLOR mean none. */
  static boolean isColourWanted(Map<String, String> env) {
    return env.getOrDefault("NO_COLOR", "").isEmpty() && !"dumb".equals(env.get("TERM"));
  }

  /**
   * As the locale says, of whose words the first that is set counts; where none is, as Java takes it to be. The launcher
   * says so where it has put a bare locale right.
   */
  static boolean isUtf8(Map<String, String> env, @Nullable String encoding) {
    String locale = Stream.of("LC_ALL", "LC_CTYPE", "LANG")
        .map(name -> env.getOrDefault(name, ""))
        .filter(value -> !value.isEmpty())
        .findFirst()
        .orElse(String.valueOf(encoding));
    return !env.containsKey("OVENLOOM_ASCII") && UTF_8.matcher(locale).find();
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
