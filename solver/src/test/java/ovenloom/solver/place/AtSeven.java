package ovenloom.solver.place;

import java.io.IOException;
import java.nio.file.Path;
import ovenloom.solver.supper.Decoded;

/** Suppers for four at 19:00, planned to the minute, in whatever kitchen a test is about. */
final class AtSeven {

  private static final String ANN = "{name: Ann, hours: {on the day: 10:00-20:00}}";

  private AtSeven() {}

  /** With Ann alone. */
  static Decoded supper(Path folder, String kitchen, String dishes) throws IOException {
    return supper(folder, kitchen, ANN, dishes);
  }

  static Decoded supper(Path folder, String kitchen, String cooks, String dishes) throws IOException {
    return Decoded.of(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        clock: 1 min
        courses: [{name: supper, at: 2026-11-20 19:00, served over: 12 min}]
        kitchen: {%s}
        cooks: [%s]
        dishes:
        """.formatted(kitchen, cooks) + dishes);
  }
}
