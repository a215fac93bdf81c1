package ovenloom.model.file;

import java.util.Objects;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Guesses from the parser's own words what someone did to a file that cannot be taken apart. */
final class Slips {

  private Slips() {}

  static Fault fault(MarkedYamlEngineException e, Place place, Limits limits) {
    String problem = Objects.requireNonNullElse(e.getProblem(), "it cannot be read");
    if (problem.contains("aliases")) {
      return aliases(limits);
    }
    return new Fault.NotLaidOut(slip(problem, place), problem);
  }

  static Fault fault(YamlEngineException e, Limits limits) {
    String problem = Objects.requireNonNullElse(e.getMessage(), "it cannot be read");
    return problem.contains("aliases") ? aliases(limits)
        : new Fault.NotLaidOut(Fault.Slip.OTHER, problem.lines().findFirst().orElse(problem));
  }

  private static Fault aliases(Limits limits) {
    return new Fault.TooMuch("values once its aliases are written out", limits.values());
  }

  /** The line as far as the place; a first colon that is one too many belongs to a line moved in too far. */
  private static String before(Place place) {
    int[] line = place.text().codePoints().toArray();
    return new String(line, 0, Math.min(place.column() - 1, line.length));
  }

  private static Fault.Slip slip(String problem, Place place) {
    if (problem.contains("another document")) {
      return Fault.Slip.SECOND_DOCUMENT;
    }
    if (problem.contains("'<scalar>'")) {
      return Fault.Slip.QUOTE_INSIDE;
    }
    if (problem.contains("TAB")) {
      return Fault.Slip.TAB;
    }
    if (problem.contains("but got :")) {
      return Fault.Slip.COLON_IN_NAME;
    }
    if (problem.contains("mapping values are not allowed")) {
      return before(place).contains(": ") ? Fault.Slip.COLON_IN_NAME : Fault.Slip.INDENTATION;
    }
    if (problem.contains("cannot start any token")) {
      return Fault.Slip.SIGN_AT_START;
    }
    if (problem.contains("expected ',' or") || problem.contains("unexpected end of stream")) {
      return Fault.Slip.NOT_CLOSED;
    }
    return problem.contains("<block") || problem.contains("<document start>") ? Fault.Slip.INDENTATION
        : Fault.Slip.OTHER;
  }
}
