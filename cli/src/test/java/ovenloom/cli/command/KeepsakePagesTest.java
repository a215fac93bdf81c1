package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pages show of a plan kept as something else is what comes out, of the soup of {@code first-soup.yaml}. */
class KeepsakePagesTest {

  private static final Path DOCS = Path.of("../docs");

  @TempDir
  private Path folder;

  @Test
  void the_entry_on_the_page_on_calendars_is_one_of_the_soup() throws IOException {
    String calendar = kept("plan.ics");

    assertThat(calendar.replaceAll("\r\n", "\n")).contains(shown("calendar.md", "BEGIN:VEVENT"));
  }

  @Test
  void the_table_on_the_page_on_lists_is_that_of_the_soup() throws IOException {
    assertThat(shown("list.md", "kind,")).isEqualTo(kept("plan.csv").replaceAll("\r\n", "\n"));
  }

  private String kept(String name) throws IOException {
    var file = folder.resolve(name);
    var out = new PrintWriter(new StringWriter());
    var written = InstantSource.fixed(Instant.parse("2026-11-01T09:00:00Z"));
    int code = new Ovenloom(out, out, Typed.PIPE, new Stop(), written)
        .run("show", Kitchens.aPlan(folder).toString(), "-o", file.toString());
    assertThat(code).isZero();
    return Files.readString(file);
  }

  /** The block on a page that begins so. */
  private static String shown(String page, String begin) throws IOException {
    return Pattern.compile("```\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(DOCS.resolve(page)))
        .results()
        .map(block -> block.group(1))
        .filter(block -> block.startsWith(begin))
        .findFirst()
        .orElseThrow();
  }
}
