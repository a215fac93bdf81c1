package ovenloom.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.InstantSource;
import java.util.Arrays;

/** What came of something typed. */
record Typed(int code, String out, String err) {

  static final Terminal PIPE = new Terminal(80, false, false, false);

  /** Into a pipe, at the root of the repository. */
  static Typed ovenloom(Object... words) {
    return ovenloom(PIPE, new Stop(), words);
  }

  static Typed ovenloom(Terminal terminal, Stop stop, Object... words) {
    return ovenloom(terminal, stop, InstantSource.system(), words);
  }

  /** At that time. */
  static Typed ovenloom(InstantSource clock, Object... words) {
    return ovenloom(PIPE, new Stop(), clock, words);
  }

  private static Typed ovenloom(Terminal terminal, Stop stop, InstantSource clock, Object... words) {
    var out = new StringWriter();
    var err = new StringWriter();
    var program = new Ovenloom(new PrintWriter(out, true), new PrintWriter(err, true), terminal, stop, clock);
    int code = program.run(Arrays.stream(words).map(Object::toString).toArray(String[]::new));
    return new Typed(code, out.toString(), err.toString());
  }
}
