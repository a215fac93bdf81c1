package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.RandomEvents;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.RandomPlans;

class PlanFileTest {

  private static final Event SUPPER = new Desktop(Path.of("src/test/resources/ovenloom/model/file"))
      .event("winter-dinner.yaml");

  @TempDir
  Path folder;
  private Path file = Path.of("plan.json");

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("plan.json");
  }

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_plan_reads_as_it_was_written(long seed) throws IOException {
    Plan plan = RandomPlans.plan(seed, SUPPER);

    WholeFile.write(PlanFile.json(plan), file);

    assertThat(read()).isEqualTo(plan);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void so_does_one_of_an_event_with_names_that_play_tricks(long seed) {
    Plan plan = RandomPlans.plan(seed, RandomEvents.event(seed));
    Desk desk = new Desk();

    Written written = new WrittenReader(
        new Sheet("plan.json", file, PlanFile.json(plan)), Limits.PLAN, desk.mistakes()).read();
    Plan read = written == null ? null : new PlanReader(desk).plan(written);

    assertThat(read).isEqualTo(plan);
  }

  @Test
  void a_plan_that_replaces_another_leaves_nothing_else_behind() throws IOException {
    WholeFile.write(PlanFile.json(RandomPlans.plan(1, SUPPER)), file);
    WholeFile.write(PlanFile.json(RandomPlans.plan(2, SUPPER)), file);

    assertThat(read()).isEqualTo(RandomPlans.plan(2, SUPPER));
    assertThat(folder.toFile().list()).containsExactly("plan.json");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "{}", "[]", "[1, 2]", "null", "hello", "{\"ovenloom\": 1}", "{\"ovenloom plan\": 2}",
          "{\"ovenloom plan\": 1}", "{\"ovenloom plan\": 1, \"event\": {}, \"runs\": [3], \"score\": []}"})
  void what_is_no_plan_of_ours_is_a_mistake(String text) throws IOException {
    Files.writeString(file, text);

    assertThat(PlanFile.read(file)).isInstanceOf(Reading.Mistaken.class);
  }

  @Test
  void a_plan_of_a_later_version_says_so_and_nothing_else() throws IOException {
    Files.writeString(file, "{\"ovenloom plan\": 2, \"news\": true}");

    Reading<Plan> read = PlanFile.read(file);

    assertThat(read).isInstanceOfSatisfying(Reading.Mistaken.class,
        mistaken -> assertThat((List<?>) mistaken.mistakes()).singleElement()
            .asString()
            .contains("NotUnderstood[written=2"));
  }

  @Test
  void a_missing_plan_is_a_mistake_and_a_link_to_one_is_not() throws IOException {
    assertThat(PlanFile.read(file)).isInstanceOf(Reading.Mistaken.class);
    WholeFile.write(PlanFile.json(RandomPlans.plan(1, SUPPER)),
        Files.createDirectory(folder.resolve("elsewhere")).resolve("p.json"));
    Files.createSymbolicLink(file, folder.resolve("elsewhere/p.json"));

    assertThat(read()).isEqualTo(RandomPlans.plan(1, SUPPER));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_damaged_plan_is_read_or_refused_but_never_breaks_anything(long seed) throws IOException {
    Random random = new Random(seed);
    var text = new StringBuilder(PlanFile.json(RandomPlans.plan(seed, SUPPER)));
    for (int i = 0; i <= random.nextInt(3); i++) {
      int at = random.nextInt(text.length() - 60);
      switch (random.nextInt(3)) {
        case 0 -> text.delete(at, at + 1 + random.nextInt(50));
        case 1 -> text.setLength(at + 60);
        default -> text.setCharAt(at, "\"{}[]:,-9x".charAt(random.nextInt(10)));
      }
    }
    Files.writeString(file, text);

    Reading<Plan> read = PlanFile.read(file);

    if (read instanceof Reading.Mistaken<Plan>(List<Mistake> mistakes)) {
      assertThat(MistakeText.of(mistakes)).isNotBlank();
    }
  }

  private Plan read() {
    return switch (PlanFile.read(file)) {
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) -> plan;
      case Reading.Mistaken<Plan>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
