package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReadmeTest {

  private static final Path README = Path.of("../README.md");
  private static final Path EASTER = Path.of("../problems/easter-lamb.sheet.txt");

  @TempDir
  private Path folder;

  @Test
  void the_plan_it_shows_is_one_that_is_printed() throws IOException {
    var readme = Files.readString(README);

    assertThat(readme).isEqualTo(showing(readme, Files.readString(EASTER)));
  }

  @Test
  void the_shortest_problem_is_the_one_that_is_solved_elsewhere() throws IOException {
    var soup = Files.readAllLines(Kitchens.SOUP).stream().filter(line -> !line.startsWith("#"));

    assertThat(problems().findFirst()).contains(soup.collect(Collectors.joining("\n", "", "\n")));
  }

  @ParameterizedTest
  @MethodSource("problems")
  void there_is_a_plan_for_whatever_it_lets_you_type(String yaml) throws IOException {
    var file = Files.writeString(folder.resolve("typed.yaml"), yaml);

    var typed = ovenloom("solve", file, "--tries", 1000);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
  }

  @Test
  void every_command_it_shows_exists_and_every_option_is_of_one() throws IOException {
    var help = Stream.of("solve", "check", "show", "explain", "compare")
        .map(command -> ovenloom(command, "--help").out())
        .collect(Collectors.joining());
    var options = Pattern.compile("`(--?[a-z]+)").matcher(Files.readString(README)).results().toList();

    assertThat(options).hasSizeGreaterThan(5)
        .allSatisfy(option -> assertThat(help).contains(option.group(1)));
  }

  static Stream<String> problems() throws IOException {
    return Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(README))
        .results()
        .map(block -> block.group(1));
  }

  /** The same page with what is on the sheet from one in the afternoon until the lamb is at the table. */
  static String showing(String readme, String sheet) {
    String shown = sheet.lines()
        .dropWhile(line -> !line.startsWith("13:"))
        .takeWhile(line -> !line.startsWith("14:"))
        .collect(Collectors.joining("\n"))
        .strip();
    int from = readme.indexOf("```\n13:") + "```\n".length();
    return readme.substring(0, from) + shown + readme.substring(readme.indexOf("\n```", from));
  }
}
