package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page on {@code show} holds what its commands print; with {@code -Dovenloom.sheets=write} that is written into it
 * anew, to be read before it is kept.
 */
class ShowPageTest {

  private static final Path PAGE = Path.of("../docs/show.md");
  private static final Pattern PROBLEM = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern SHOWN = Pattern.compile("```\n\\$ ovenloom show plan.json (.*?)\n(.*?)```",
      Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir
  private Path folder;

  @Test
  void every_command_prints_what_stands_under_it() throws IOException {
    var page = Files.readString(PAGE);
    var problem = PROBLEM.matcher(page).results().findFirst().orElseThrow();
    var file = Files.writeString(folder.resolve("supper.yaml"), problem.group(1));
    var plan = folder.resolve("plan.json");
    assertThat(ovenloom("solve", file, "--tries", 500, "-o", plan).code()).isZero();

    var printed = SHOWN.matcher(page).replaceAll(each -> Matcher.quoteReplacement(printed(each, plan)));

    if ("write".equals(System.getProperty("ovenloom.sheets"))) {
      Files.writeString(PAGE, printed);
    }
    assertThat(SHOWN.matcher(page).results()).isNotEmpty();
    assertThat(page).isEqualTo(printed);
  }

  private static String printed(MatchResult shown, Path plan) {
    var typed = ovenloom(Stream.concat(Stream.of("show", plan), words(shown.group(1)).stream()).toArray());

    assertThat(typed.err()).isEmpty();
    return "```\n$ ovenloom show plan.json " + shown.group(1) + "\n" + typed.out() + "```";
  }

  private static List<String> words(String line) {
    return WORD.matcher(line)
        .results()
        .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
        .toList();
  }
}
