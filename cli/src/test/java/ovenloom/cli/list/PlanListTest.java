package ovenloom.cli.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static ovenloom.cli.sheet.HandPlan.at;

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
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.cli.sheet.SheetLines;
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
    Plan plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: Pie
            steps:
              - {do: fill, takes: 20 min, in: dish, keeps: {fridge: 2 days}}
              - {do: bake, takes: 40 min, bake: {at: 180 C}, keeps: {oven: 1 h, counter: 1 h}}
          - dish: Soup
            steps: [{do: simmer, takes: 30 min, burner: large, in: pot, keeps: {burner: 30 min}}]
        """)
        .run("Pie/fill", at("12:00"))
        .waits("Pie/fill", new Where.OnShelf("fridge", List.of("low")), at("18:00"))
        .run("Pie/bake", at("18:00"), run -> run.racks(1))
        .waits("Pie/bake", new Where.InOven("oven", null), at("18:50"), new Where.Counter(), at("19:00"))
        .run("Soup/simmer", at("18:15"))
        .waits("Soup/simmer", new Where.OnBurner(List.of("large burner 1")), at("19:00"))
        .wash("tray", 2, at("17:30"), "Host")
        .plan();

    assertThat(read(PlanList.of(plan)).stream().filter(line -> !line.getField("kind").equals("step")))
        .extracting(line -> line.getField("kind"), line -> line.getField("dish"),
            line -> line.getField("place"), line -> line.getField("part"), line -> line.getField("mark"),
            line -> line.getField("vessels"))
        .containsExactly(tuple("wait", "Pie", "fridge", "low", "", "dish"),
            tuple("wash", "", "", "", "", "2 x tray"), tuple("wait", "Pie", "oven", "rack 2", "off", "dish"),
            tuple("wait", "Soup", "burner", "large burner 1", "", "pot"),
            tuple("wait", "Pie", "counter", "", "", "dish"));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_wash_says_who_does_it(long seed) {
    Plan plan = plan(seed);

    assertThat(read(PlanList.of(plan)).stream().filter(line -> line.getField("kind").equals("wash")))
        .extracting(line -> when(plan, line), line -> line.getField("vessels"),
            line -> line.getField("cooks"))
        .containsExactlyInAnyOrderElementsOf(plan.washes()
            .stream()
            .map(wash -> tuple(wash.when(), wash.vessel(), shown(wash.cook())))
            .toList());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_cell_is_worked_out_by_a_spreadsheet(long seed) {
    String text = PlanList.of(plan(seed));

    assertThat(read(text).stream().flatMap(line -> line.getFields().stream()))
        .noneMatch(cell -> cell.matches("(?s)[=+\\-@\\t\\r].*"));
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
