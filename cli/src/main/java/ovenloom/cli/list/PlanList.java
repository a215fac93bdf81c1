package ovenloom.cli.list;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import ovenloom.model.measure.Calendar;
import ovenloom.model.plan.Plan;

/** A plan as comma-separated values (RFC 4180), the names of the columns first. */
public final class PlanList {

  /** The columns, in their order. */
  static final List<String> COLUMNS = List.of("kind", "dish", "step", "batches", "begin", "end", "minutes",
      "place", "part", "mark", "mode", "vessels", "cooks");

  /** No name holds a comma, so that it parts several in one cell. */
  private static final String SEVERAL = ", ";

  private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm",
      Locale.ROOT);
  private static final DateTimeFormatter WITH_OFFSET = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx",
      Locale.ROOT);

  private PlanList() {}

  /** Writes it out. */
  public static String of(Plan plan) {
    StringWriter text = new StringWriter();
    try (CsvWriter table = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      table.writeRecord(COLUMNS);
      Rows.of(plan).forEach(row -> table.writeRecord(cells(row, plan.event().calendar())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> cells(Row row, Calendar calendar) {
    List<String> cells = List.of(row.kind(), row.dish(), row.step(), row.batches(),
        time(calendar, row.when().from()), time(calendar, row.when().to()),
        Integer.toString(row.when().minutes()), row.place(), String.join(SEVERAL, row.parts()),
        String.join(SEVERAL, row.marks()), row.mode(), String.join(SEVERAL, row.vessels()),
        String.join(SEVERAL, row.cooks()));
    return cells.stream().map(Shown::withoutFormula).toList();
  }

  private static String time(Calendar calendar, int minute) {
    ZoneId zone = calendar.zone();
    return zone == null ? LOCAL.format(calendar.at(minute))
        : WITH_OFFSET.format(calendar.instant(minute).atZone(zone));
  }
}
