package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page on {@code compare} holds what its command prints; with {@code -Dovenloom.sheets=write} that is written into it
 * anew, to be read before it is kept.
 */
class ComparePageOfDocsTest {

  private static final Path DOCS = Path.of("../docs");
  private static final Pattern YAML = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern SHOWN = Pattern
      .compile("(\\$ ovenloom compare hands.yaml --tries 500\n)(.*?)```", Pattern.DOTALL);

  @TempDir
  private Path folder;

  @Test
  void the_command_prints_what_stands_under_it() throws IOException {
    var page = Files.readString(DOCS.resolve("compare.md"));
    Files.writeString(folder.resolve("supper.yaml"), yaml(Files.readString(DOCS.resolve("show.md"))));
    var whatIf = Files.writeString(folder.resolve("hands.yaml"), yaml(page));

    var typed = ovenloom("compare", whatIf, "--tries", 500);

    assertThat(typed.err()).isEmpty();
    var shown = SHOWN.matcher(page).results().findFirst().orElseThrow();
    if ("write".equals(System.getProperty("ovenloom.sheets"))) {
      Files.writeString(DOCS.resolve("compare.md"),
          page.substring(0, shown.start(2)) + typed.out() + page.substring(shown.end(2)));
    }
    assertThat(shown.group(2)).isEqualTo(typed.out());
  }

  private static String yaml(String page) {
    return YAML.matcher(page).results().findFirst().orElseThrow().group(1);
  }
}
