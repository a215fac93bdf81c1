package ovenloom.solver.bench;

import java.util.List;
import java.util.stream.Stream;

/** All there is to measure, in the order of the table. */
final class Sheets {

  private Sheets() {}

  static List<Sheet> all() {
    return Stream.concat(Academic.sheets().stream(), Kitchens.sheets().stream()).toList();
  }
}
