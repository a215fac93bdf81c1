package ovenloom.solver.wish;

import java.io.IOException;
import java.nio.file.Path;
import ovenloom.solver.supper.Decoded;

/** Suppers for four at 19:00, planned to the minute. */
final class WishedFor {

  /** From room to 180 C in 15 minutes at 3 kW, held at 1 kW; a burner takes 1.5 kW. */
  static final String KITCHEN = """
      kitchen:
        ovens: [{name: oven, dial: 50 C to 250 C, step: 1 C, modes: [still, fan], racks: {count: 2, size: 45 x 38 cm, clear: 15 cm}}]
        burners: [large, small]
        cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 60 x 40 x 30 cm}]}]
        hot: [{name: cabinet, holds: 70 C, shelves: [{name: only, size: 60 x 40 x 30 cm}]}]
        vessels: {tray: {count: 4, size: 40 x 30 x 3 cm}, pot: {count: 2, size: 24 x 24 x 15 cm}}
      """;

  private static final String ONE_COOK = """
      cooks: [{name: Cook, hours: {on the day: 6:00-20:00}}]
      """;

  private WishedFor() {}

  /** With one cook, on the day. */
  static Decoded supper(Path folder, String dishes) throws IOException {
    return supper(folder, ONE_COOK, dishes);
  }

  static Decoded supper(Path folder, String cooks, String dishes) throws IOException {
    return Decoded.of(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        clock: 1 min
        courses: [{name: supper, at: 2026-11-20 19:00, served over: 30 min}]
        """ + KITCHEN + cooks + "dishes:\n" + dishes);
  }
}
