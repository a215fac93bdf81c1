package ovenloom.cli.list;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandResults.AXES;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.HandResults;
import ovenloom.model.measure.Calendar;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

class RunListTest {

  private static final Calendar JUNE = new Calendar(LocalDate.of(2027, 6, 12), null);

  @TempDir
  private Path folder;

  @Test
  void a_run_with_a_plan_has_its_choices_its_points_and_its_figures() throws IOException {
    NamedCsvRecord line = read(AXES, JUNE, HandResults.all()).getFirst();

    assertThat(line.getFieldsAsMap()).containsEntry("kitchen", "club")
        .containsEntry("guests", "80")
        .containsEntry("answer", "plan")
        .containsEntry("why", "")
        .containsEntry("decides", "Roast")
        .containsEntry("at the table", "1210")
        .containsEntry("at the table at least", "0")
        .containsEntry("wishes", "300")
        .containsEntry("wishes at least", "200")
        .containsEntry("begins", "day before 16:30")
        .containsEntry("begins minute", "-450")
        .containsEntry("on the day", "08:05")
        .containsEntry("on the day minute", "485")
        .containsEntry("hands on the day", "620")
        .containsEntry("hands in the last hour", "90")
        .containsEntry("hottest", "18:45")
        .containsEntry("at once", "5")
        .containsEntry("dial turns", "3")
        .containsEntry("energy Wh", "8100")
        .containsEntry("busy hands %", "61")
        .containsEntry("busy ovens %", "40")
        .containsEntry("busy burners %", "25");
  }

  @Test
  void a_run_without_says_why_on_one_line_and_leaves_figures_empty() throws IOException {
    NamedCsvRecord line = read(AXES, JUNE, HandResults.all()).get(1);

    assertThat(line.getField("answer")).isEqualTo("no plan");
    assertThat(line.getField("why")).isEqualTo("More is asked of the oven than there is.");
    assertThat(line.getField("decides")).isEqualTo("Soup");
    assertThat(line.getField("wishes")).isEmpty();
    assertThat(line.getField("begins")).isEmpty();
  }

  @Test
  void every_run_is_a_line_of_the_file() throws IOException {
    Path file = write(AXES, JUNE, HandResults.all());

    assertThat(Files.readString(file).lines()).hasSize(1 + HandResults.all().size());
  }

  @Test
  void an_axis_that_is_called_like_a_column_is_told_from_it() throws IOException {
    Axis wishes = new Axis("Wishes", List.of("calm", "little energy"));
    Result calm = HandResults.plan(Map.of("Wishes", "calm"), 0, 300, 90, 81);

    NamedCsvRecord line = read(List.of(wishes), JUNE, List.of(calm)).getFirst();

    assertThat(line.getField("Wishes (choice)")).isEqualTo("calm");
    assertThat(line.getField("wishes")).isEqualTo("300");
  }

  /** The clocks go forward in the night to 28 March 2027 in Berlin, so that 450 minutes before its midnight was 16:30 all the same. */
  @Test
  void times_are_by_the_clock_of_the_place() throws IOException {
    Calendar berlin = new Calendar(LocalDate.of(2027, 3, 28), ZoneId.of("Europe/Berlin"));

    NamedCsvRecord line = read(AXES, berlin, HandResults.all()).getFirst();

    assertThat(line.getField("begins")).isEqualTo("day before 16:30");
    assertThat(line.getField("on the day")).as("485 minutes after midnight, an hour of which was skipped")
        .isEqualTo("09:05");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(quoteCharacter = '`', textBlock = """
      =1+1, '=1+1
      -2, '-2
      @home, '@home
      1/2, '1/2
      3-4, '3-4
      12e5, '12e5
      1.5, '1.5
      'tis, ''tis
      12345678901234567, '12345678901234567
      2027-06-12, 2027-06-12
      10 min, 10 min
      18:30, 18:30
      two ovens, two ovens
      """)
  void no_spreadsheet_makes_something_else_of_a_choice(String choice, String cell) throws IOException {
    Axis axis = new Axis("choice", List.of(choice, "other"));

    NamedCsvRecord line = read(List.of(axis), JUNE,
        List.of(HandResults.without(Map.of("choice", choice), Answer.NO_PLAN, "why"))).getFirst();

    assertThat(line.getField("choice")).isEqualTo(cell);
  }

  @ParameterizedTest
  @CsvSource({"-2160, 2 days before 12:00", "-1, day before 23:59", "0, 00:00",
      "1440, day after 00:00", "2881, 2 days after 00:01"})
  void a_minute_is_told_as_people_say_it(int minute, String words) {
    assertThat(RunColumns.clock(JUNE, minute)).isEqualTo(words);
  }

  private List<NamedCsvRecord> read(List<Axis> axes, Calendar calendar, List<Result> results)
      throws IOException {
    try (var lines = CsvReader.builder().ofNamedCsvRecord(write(axes, calendar, results))) {
      return lines.stream().toList();
    }
  }

  private Path write(List<Axis> axes, Calendar calendar, List<Result> results) throws IOException {
    Path file = folder.resolve("runs.csv");
    try (RunList list = RunList.in(file, RunColumns.of(axes, calendar))) {
      for (Result result : results) {
        list.add(result);
      }
    }
    return file;
  }
}
