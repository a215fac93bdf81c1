package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.calendar.ReadBack;

/** What is true of calendars of plans made up is true of calendars of plans found. */
class CalendarOfProblemsTest {

  private static final int TRIES = 300;

  @TempDir
  private Path folder;

  @ParameterizedTest
  @CsvSource({"birthday-buffet, Hanna", "easter-lamb, Jonas", "friday-dinner, Nora", "village-feast, Greta"})
  void another_plan_laid_over_one_leaves_exactly_its_own(String name, String cook) throws IOException {
    var one = keep(name, 1);
    var other = keep(name, 2);

    assertThat(calendar(other).over(calendar(one).events()).keySet())
        .isEqualTo(calendar(other).events().keySet());
    assertThat(calendar(other, "--cook", cook).over(calendar(one, "--cook", cook).events()).keySet())
        .isEqualTo(calendar(other, "--cook", cook).events().keySet());
  }

  private Path keep(String name, int seed) {
    var plan = folder.resolve(name + "-" + seed + ".json");
    var typed = ovenloom("solve", "../problems/" + name + ".yaml", "--tries", TRIES, "--seed", seed, "-o",
        plan);
    assertThat(typed.err()).isEmpty();
    return plan;
  }

  private ReadBack calendar(Path plan, Object... more) throws IOException {
    var file = folder.resolve("plan.ics");
    var typed = more.length == 0 ? ovenloom("show", plan, "-o", file)
        : ovenloom("show", plan, "-o", file, more[0], more[1]);
    assertThat(typed.err()).isEmpty();
    return ReadBack.of(Files.readString(file));
  }
}
