package ovenloom.cli.list;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

class PlanListTest {

  /** A line of the table, with what a plan says of it. */
  private record Said(String kind, String dish, String step, Stretch when) {}

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void each_run_each_part_of_a_wait_and_each_wash_is_a_line_of_its_own(long seed) {
    Plan plan = plan(seed);

    List<NamedCsvRecord> lines = read(PlanList.of(plan));

    assertThat(lines.stream().map(line -> said(plan, line))).containsExactlyInAnyOrderElementsOf(said(plan));
    assertThat(lines).isSortedAccordingTo((one, other) -> when(plan, one).from() - when(plan, other).from())
        .allSatisfy(line -> assertThat(Integer.parseInt(line.getField("minutes")))
            .isEqualTo(when(plan, line).minutes()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_line_says_where_at_what_mark_and_who(long seed) {
    Plan plan = plan(seed);

    List<NamedCsvRecord> lines = read(PlanList.of(plan));

    for (Placement run : plan.placements()) {
      assertThat(lines).anySatisfy(line -> {
        assertThat(said(plan, line))
            .isEqualTo(new Said("step", shown(run.dish()), shown(run.step()), run.when()));
        assertThat(line.getField("batches")).startsWith(Integer.toString(run.batches().first()))
            .endsWith(Integer.toString(run.batches().last()));
        assertThat(line.getField("place")).isEqualTo(place(run));
        assertThat(line.getField("mark")).isEqualTo(marks(run));
        assertThat(line.getField("cooks")).isEqualTo(cooks(run));
      });
    }
  }

  private static String place(Placement run) {
    return run.baking() != null ? "oven"
        : !run.burners().isEmpty() ? "burner" : run.shelves().isEmpty() ? "counter" : "fridge";
  }

  private static String marks(Placement run) {
    return run.baking() == null ? ""
        : String.join(", ", run.baking().stages().stream().map(stage -> stage.mark().written()).toList());
  }

  private static String cooks(Placement run) {
    Stream<String> cooks = run.hands().stream().map(HandsOn::cooks).flatMap(List::stream).distinct();
    return shown(String.join(", ", cooks.toList()));
  }

  @Test
  void a_wait_says_its_place_and_a_wash_its_vessels() {
    Plan plan = plan(3);

    List<NamedCsvRecord> lines = read(PlanList.of(plan));

    for (Stay stay : plan.stays()) {
      for (Stay.Part part : stay.parts()) {
        String place = switch (part.where()) {
          case Where.Counter() -> "counter";
          case Where.OnShelf(String store, var shelves) -> store;
          case Where.InOven(String oven, var mark) -> oven;
          case Where.OnBurner(var burners) -> "burner";
        };
        assertThat(lines).anySatisfy(line -> {
          assertThat(said(plan, line))
              .isEqualTo(new Said("wait", shown(stay.dish()), shown(stay.step()), part.when()));
          assertThat(line.getField("place")).isEqualTo(place);
        });
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_cell_is_worked_out_by_a_spreadsheet_and_all_of_it_is_utf_8(long seed) {
    String text = PlanList.of(plan(seed));

    assertThat(read(text).stream().flatMap(line -> line.getFields().stream()))
        .noneMatch(cell -> cell.matches("(?s)[=+\\-@\\t\\r].*"));
    assertThat(new String(text.getBytes(UTF_8), UTF_8)).isEqualTo(text);
    assertThat(text).endsWith("\r\n");
  }

  @Test
  void what_begins_like_a_formula_stands_behind_an_apostrophe() {
    List<String> dishes = LongStream.range(0, 40)
        .boxed()
        .flatMap(seed -> read(PlanList.of(plan(seed))).stream())
        .map(line -> line.getField("dish"))
        .toList();

    assertThat(dishes).contains("'=1+1 0").doesNotContain("=1+1 0");
  }

  private static Plan plan(long seed) {
    return RandomHandPlans.plan(RandomHandPlans.problem(seed), seed);
  }

  private static List<NamedCsvRecord> read(String text) {
    return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
  }

  private static List<Said> said(Plan plan) {
    List<Said> all = new ArrayList<>();
    for (Placement run : plan.placements()) {
      all.add(new Said("step", shown(run.dish()), shown(run.step()), run.when()));
    }
    for (Stay stay : plan.stays()) {
      stay.parts()
          .forEach(part -> all.add(new Said("wait", shown(stay.dish()), shown(stay.step()), part.when())));
    }
    for (Wash wash : plan.washes()) {
      all.add(new Said("wash", "", "", wash.when()));
    }
    return all;
  }

  private static Said said(Plan plan, NamedCsvRecord line) {
    return new Said(line.getField("kind"), line.getField("dish"), line.getField("step"), when(plan, line));
  }

  private static Stretch when(Plan plan, NamedCsvRecord line) {
    return new Stretch(minute(plan, line.getField("begin")), minute(plan, line.getField("end")));
  }

  /** Of a time with its offset, or without one where the event has no zone. */
  private static int minute(Plan plan, String time) {
    var calendar = plan.event().calendar();
    if (calendar.zone() == null) {
      return calendar.minuteOf(LocalDateTime.parse(time));
    }
    return (int) Duration.between(calendar.instant(0), OffsetDateTime.parse(time).toInstant()).toMinutes();
  }

  private static String shown(String cell) {
    return cell.startsWith("=") || cell.startsWith("-") ? "'" + cell : cell;
  }
}
