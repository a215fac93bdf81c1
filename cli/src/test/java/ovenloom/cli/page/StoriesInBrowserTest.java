package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.cli.command.Ovenloom;
import ovenloom.cli.command.Stop;
import ovenloom.cli.command.Terminal;

/** Three people with a question, from the file they write to the page they look at. */
class StoriesInBrowserTest {

  private static final Path PROBLEMS = Path.of("../problems");
  private static final List<Integer> WIDTHS = List.of(360, 1280);

  @TempDir
  private static Path folder;

  @AutoClose
  private final Browser browser = Browser.open();

  @BeforeAll
  static void copy() throws IOException {
    try (Stream<Path> files = Files.walk(PROBLEMS)) {
      for (Path from : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(PROBLEMS.relativize(from).toString());
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
      }
    }
  }

  @Test
  void a_hobbyist_asks_what_a_second_oven_buys() {
    Path page = folder.resolve("compare.html");

    Typed typed = typed("compare", file("one-oven-or-two"), "--tries", "60", "-o", page.toString());

    assertThat(typed.code()).as(typed.err()).isZero();
    assertThat(typed.out()).contains("Fits  ", "one oven", "two ovens");
    looksWell(page, "One oven or two?");
    assertThat(browser.ask("document.body.textContent")).asString()
        .contains("one oven", "two ovens", "What is done otherwise");
  }

  @Test
  void a_caterer_asks_which_menu_fits_which_kitchen_for_how_many() throws IOException {
    Path out = folder.resolve("menus");

    Typed typed = typed("batch", sample("clubhouse-menus", 8), "-o", out.toString(), "--tries", "30");

    assertThat(typed.code()).as(typed.err()).isZero();
    assertThat(Files.readAllLines(out.resolve("results.jsonl"))).hasSize(8);
    assertThat(typed.out()).contains("guests", "kitchen", "main");
    looksWell(out.resolve("runs.html"), "Which menu fits which kitchen?");
    assertThat(browser.ask("document.body.textContent")).asString().contains("guests by ", "haddock", "160");
  }

  @Test
  void a_planner_leaves_it_running_and_finds_all_of_it_the_next_day() throws IOException {
    Path out = folder.resolve("night");
    String[] words = {"batch", sample("birthday-by-the-thousand", 6), "-o", out.toString(), "--tries", "30",
        "--plans"};

    Typed first = typed(words);
    byte[] results = Files.readAllBytes(out.resolve("results.jsonl"));
    Typed again = typed(words);

    assertThat(first.code()).as(first.err()).isZero();
    assertThat(again.out()).isEqualTo(first.out());
    assertThat(Files.readAllBytes(out.resolve("results.jsonl"))).isEqualTo(results);
    looksWell(out.resolve("runs.html"), "How large may the party be?");
  }

  private void looksWell(Path page, String title) {
    for (int width : WIDTHS) {
      browser.wide(width, 800).open(page);

      assertThat(browser.ask("document.querySelector('h1').textContent")).asString().contains(title);
      assertThat(browser.number("document.scrollingElement.scrollWidth")).isLessThanOrEqualTo(width);
      assertThat(browser.serious()).isEmpty();
    }
  }

  private record Typed(int code, String out, String err) {}

  private static Typed typed(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal pipe = new Terminal(80, false, false, false);
    int code = new Ovenloom(new PrintWriter(out, true), new PrintWriter(err, true), pipe, new Stop(),
        InstantSource.system()).run(words);
    return new Typed(code, out.toString(), err.toString());
  }

  private static String file(String name) {
    return folder.resolve(name + ".what-if.yaml").toString();
  }

  /** A few of all variations of a what-if file. */
  private static String sample(String name, int count) throws IOException {
    Path few = folder.resolve(name + "-a-few.what-if.yaml");
    Files.writeString(few,
        Files.readString(Path.of(file(name))) + "take: {sample: " + count + ", seed: 3}\n");
    return few.toString();
  }
}
