package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Problems beside the run sheets they give. A new case is an empty {@code problems/NAME.sheet.txt}; with
 * {@code -Dovenloom.sheets=write} the sheets are written anew, and into the README what it shows of one, to be read
 * before they are kept.
 */
class RunSheetsOfProblemsTest {

  private static final Path PROBLEMS = Path.of("../problems");
  private static final Path README = Path.of("../README.md");
  private static final String SHEET = ".sheet.txt";
  private static final int TRIES = 10_000;

  static Stream<String> names() {
    return Arrays.stream(Objects.requireNonNull(PROBLEMS.toFile().list(), "a folder with problems"))
        .filter(name -> name.endsWith(SHEET))
        .map(name -> name.substring(0, name.length() - SHEET.length()))
        .sorted();
  }

  @ParameterizedTest
  @MethodSource("names")
  void a_problem_gives_the_run_sheet_beside_it(String name) throws IOException {
    var sheet = PROBLEMS.resolve(name + SHEET);

    var typed = Typed.ovenloom("solve", PROBLEMS.resolve(name + ".yaml"), "--tries", TRIES, "--seed", 1);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    if ("write".equals(System.getProperty("ovenloom.sheets"))) {
      Files.writeString(sheet, typed.out());
      if (name.equals("easter-lamb")) {
        Files.writeString(README, ReadmeTest.showing(Files.readString(README), typed.out()));
      }
    }
    assertThat(typed.out()).isEqualTo(Files.readString(sheet));
  }
}
