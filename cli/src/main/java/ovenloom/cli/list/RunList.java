package ovenloom.cli.list;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import ovenloom.model.variation.Result;

/** Runs as comma-separated values (RFC 4180), a line each, the names of the columns first; written as they come. */
public final class RunList implements Closeable {

  private final List<RunColumn> columns;
  private final CsvWriter table;

  private RunList(List<RunColumn> columns, CsvWriter table) {
    this.columns = columns;
    this.table = table;
  }

  /**
   * A new table in a file.
   *
   * @throws IOException where it cannot be written
   */
  public static RunList in(Path file, List<RunColumn> columns) throws IOException {
    CsvWriter table = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(file);
    RunList list = new RunList(columns, table);
    list.write(columns.stream().map(column -> Shown.withoutFormula(column.name())).toList());
    return list;
  }

  /**
   * Writes one down.
   *
   * @throws IOException where it cannot be written
   */
  public void add(Result result) throws IOException {
    write(columns.stream().map(column -> column.shown(result)).toList());
  }

  private void write(List<String> cells) throws IOException {
    try {
      table.writeRecord(cells);
    } catch (UncheckedIOException trouble) {
      throw trouble.getCause();
    }
  }

  @Override
  public void close() throws IOException {
    table.close();
  }
}
