package ovenloom.cli.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.component.VEvent;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Acts;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.cli.sheet.Sinkful;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.life.Life;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Plan;

/** Laws of a plan's calendar, over suppers in nights in which the clocks change, and with names that play tricks. */
@Execution(ExecutionMode.CONCURRENT)
class PlanCalendarTest {

  private static final Instant NOW = Instant.parse("2026-09-01T10:00:30Z");
  private static final TimeZone HERE = TimeZone.getDefault();

  /** What has no zone is read by the clock that hangs here. */
  @BeforeAll
  static void in_utc() {
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
  }

  @AfterAll
  static void back_home() {
    TimeZone.setDefault(HERE);
  }

  static LongStream seeds() {
    return LongStream.range(0, 1_000);
  }

  static LongStream some() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void another_hand_reads_each_stretch_of_work_when_it_is_and_all_that_is_to_be_done_as_it_is_due(long seed) {
    Plan plan = plan(seed);

    var events = ReadBack.of(PlanCalendar.of(plan, null, NOW)).events().values();

    assertThat(events.stream().filter(event -> !isAMinute(event)).map(ReadBack::when))
        .containsExactlyInAnyOrderElementsOf(stretches(plan).filter(each -> each.minutes() > 1)
            .map(each -> when(plan, each))
            .toList());
    assertThat(events.stream().map(ReadBack::when)).containsAll(stretches(plan).map(each -> when(plan, each))
        .toList());
    assertThat(acts(plan)).isNotEmpty()
        .filteredOn(act -> events.stream()
            .noneMatch(event -> tells(event, act)
                && !instant(plan, act.at()).isBefore(ReadBack.when(event).getFirst())
                && !instant(plan, act.at()).isAfter(ReadBack.when(event).getLast())))
        .isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("some")
  void whoever_must_do_something_is_called_when_it_begins_or_as_the_stretch_before_it_does(long seed) {
    Plan plan = plan(seed);

    var events = ReadBack.of(PlanCalendar.of(plan, null, NOW)).events().values();

    assertThat(acts(plan)).filteredOn(act -> !act.cooks().isEmpty() && events.stream()
        .noneMatch(event -> tells(event, act) && event.getAlarms().size() == 1)).isEmpty();
    assertThat(events).noneMatch(event -> event.getAlarms().size() > 1);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("some")
  void a_later_plan_laid_over_it_leaves_exactly_its_own(long seed) {
    String problem = RandomHandPlans.problem(seed);
    Plan earlier = RandomHandPlans.plan(problem, seed);
    Plan later = RandomHandPlans.plan(problem, seed + 5_000);
    String cook = later.event().cooks().getFirst().name();

    var all = ReadBack.of(PlanCalendar.of(later, null, NOW));
    var own = ReadBack.of(PlanCalendar.of(later, cook, NOW));

    assertThat(all.uids()).doesNotHaveDuplicates();
    assertThat(Diary.of(earlier, null).stream().map(Entry::slot)).isSubsetOf(Slots.of(earlier.event()));
    assertThat(all.over(ReadBack.of(PlanCalendar.of(earlier, null, NOW)).events()).keySet())
        .isEqualTo(all.events().keySet());
    assertThat(own.over(ReadBack.of(PlanCalendar.of(earlier, cook, NOW)).events()).keySet())
        .isEqualTo(own.events().keySet());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("some")
  void each_cooks_own_touches_no_others_and_together_they_are_all_of_it(long seed) {
    Plan plan = plan(seed);
    Map<String, VEvent> all = new HashMap<>();
    int count = 0;
    for (Cook cook : plan.event().cooks()) {
      var own = ReadBack.of(PlanCalendar.of(plan, cook.name(), NOW)).events();
      count += own.size();
      all.putAll(own);
    }

    assertThat(all).hasSize(count);
    assertThat(lines(all.values())).containsExactlyInAnyOrderElementsOf(
        lines(ReadBack.of(PlanCalendar.of(plan, null, NOW)).events().values()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("some")
  void no_line_is_longer_than_seventy_five_octets_and_the_same_plan_is_the_same_file(long seed) {
    String text = PlanCalendar.of(plan(seed), null, NOW);

    assertThat(List.of(text.split("\r\n", -1))).noneMatch(line -> line.getBytes(UTF_8).length > 75)
        .noneMatch(line -> line.matches(".*[\n\r].*|.*[\\uD800-\\uDBFF]| ?[\\uDC00-\\uDFFF].*"));
    assertThat(PlanCalendar.of(plan(seed), null, NOW)).isEqualTo(text);
  }

  @Test
  void what_turns_words_round_is_shown_as_a_question_mark_and_pictures_stay_joined() {
    Plan plan = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
        dishes:
          - dish: "Pie \\u202E\uD83D\uDC69\u200D\uD83C\uDF73"
            steps: [{do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {counter: 1 h}}]
        """).run("Pie \u202E\uD83D\uDC69\u200D\uD83C\uDF73/fill", HandPlan.at("18:30")).plan();

    var events = ReadBack.of(PlanCalendar.of(plan, null, NOW)).events().values();

    assertThat(events).noneMatch(event -> (event.getSummary().getValue() + told(event)).contains("\u202E"))
        .anyMatch(event -> event.getSummary()
            .getValue()
            .contains("Pie ?\uD83D\uDC69\u200D\uD83C\uDF73"));
  }

  @Test
  void of_two_files_the_later_counts() {
    Plan plan = plan(1);

    var first = ReadBack.of(PlanCalendar.of(plan, null, NOW));
    var second = ReadBack.of(PlanCalendar.of(plan, null, NOW.plusSeconds(60)));

    assertThat(second.sequence()).isGreaterThan(first.sequence());
    assertThat(PlanCalendar.of(plan, null, NOW.plusSeconds(1))).contains("DTSTAMP:20260901T100031Z")
        .contains("SEQUENCE:" + first.sequence());
  }

  private static Plan plan(long seed) {
    return RandomHandPlans.plan(RandomHandPlans.problem(seed), seed);
  }

  private static List<Act> acts(Plan plan) {
    return Acts.of(plan, Life.of(plan, 1));
  }

  private static boolean tells(VEvent event, Act act) {
    return told(event).contains(harmless(act.thing() + ": " + act.words()));
  }

  private static boolean isAMinute(VEvent event) {
    List<Instant> when = ReadBack.when(event);
    return when.getFirst().plusSeconds(60).equals(when.getLast());
  }

  private static List<Instant> when(Plan plan, Stretch when) {
    return List.of(instant(plan, when.from()), instant(plan, when.to()));
  }

  private static Instant instant(Plan plan, int minute) {
    return plan.event().calendar().instant(minute);
  }

  private static Stream<Stretch> stretches(Plan plan) {
    Stream<Stretch> hands = Stream.concat(plan.placements().stream().flatMap(run -> run.hands().stream()),
        plan.stays().stream().flatMap(stay -> stay.hands().stream())).map(HandsOn::when);
    Stream<Stretch> washes = Sinkful.of(plan.washes()).stream().map(Sinkful::when);
    Stream<Stretch> courses = plan.event()
        .courses()
        .stream()
        .map(course -> new Stretch(course.at(), course.at() + Math.max(1, course.servedOver())));
    return Stream.of(hands, washes, courses).flatMap(each -> each);
  }

  private static List<String> lines(Collection<VEvent> events) {
    return events.stream().flatMap(event -> told(event).lines()).distinct().toList();
  }

  private static String told(VEvent event) {
    return event.getDescription() == null ? "" : event.getDescription().getValue();
  }

  private static String harmless(String words) {
    return words.replace('\u0007', '?');
  }
}
