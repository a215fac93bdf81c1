package ovenloom.cli.list;

import java.util.List;
import ovenloom.model.measure.Stretch;

/**
 * One line of the table.
 *
 * @param kind what it tells of: {@code step}, {@code wait} or {@code wash}
 * @param parts of the place: racks, burners, shelves
 * @param marks of the dial, one for each stage
 */
record Row(String kind, String dish, String step, String batches, Stretch when, String place,
    List<String> parts,
    List<String> marks, String mode, List<String> vessels, List<String> cooks) {

  Row {
    parts = List.copyOf(parts);
    marks = List.copyOf(marks);
    vessels = List.copyOf(vessels);
    cooks = List.copyOf(cooks);
  }

  Row at(String other, List<String> itsParts, List<String> itsMarks) {
    return new Row(kind, dish, step, batches, when, other, itsParts, itsMarks, mode, vessels, cooks);
  }
}
