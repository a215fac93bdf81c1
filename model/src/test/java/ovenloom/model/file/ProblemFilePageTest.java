package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page on the problem file shows what reads, and leaves no key out. */
class ProblemFilePageTest {

  private static final Path PAGE = Path.of("../docs/problem-file.md");
  private static final Pattern BLOCK = Pattern.compile("```yaml ?([a-z/.-]*)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern KEY = Pattern.compile("(?m)^([a-z ]+):");
  /** What a block that does not say it all is completed with. */
  private static final Map<String, String> REST = rest();

  @TempDir
  Path folder;

  @ParameterizedTest
  @MethodSource("blocks")
  void every_example_on_the_page_reads(String block) throws IOException {
    Desktop desk = new Desktop(folder);
    for (Matcher named = BLOCK.matcher(Files.readString(PAGE)); named.find();) {
      if (!named.group(1).isEmpty()) {
        desk.put(named.group(1), named.group(2));
      }
    }

    assertThat(desk.mistakesIn(completed(block))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("ovenloom.model.file.AllKeys#names")
  void every_key_is_on_the_page(String key) throws IOException {
    String page = Files.readString(PAGE);

    assertThat(page).containsPattern("`" + key + "[`:]|`" + key + ": [^`]*`|[{ ]" + key + ": ");
  }

  @Test
  void the_limits_on_the_page_are_those_that_are_kept() throws IOException {
    String page = Files.readString(PAGE).replaceAll("\\s+", " ");

    assertThat(page).contains(Limits.PROBLEM.bytes() + " bytes")
        .contains(Limits.PROBLEM.values() + " values")
        .contains(WrittenReader.DEEPEST + " levels")
        .contains(Limits.PROBLEM.files() + " others")
        .contains(Extent.MOST_RUNS + " steps")
        .contains(Extent.MOST_LINKS + " links");
  }

  static List<String> blocks() throws IOException {
    List<String> blocks = new ArrayList<>();
    for (Matcher block = BLOCK.matcher(Files.readString(PAGE)); block.find();) {
      if (block.group(1).isEmpty()) {
        blocks.add(block.group(2));
      }
    }
    assertThat(blocks).hasSizeGreaterThan(5);
    return blocks;
  }

  private static String completed(String block) {
    Map<String, String> rest = new LinkedHashMap<>(REST);
    for (Matcher key = KEY.matcher(block); key.find();) {
      rest.remove(key.group(1));
    }
    return String.join("", rest.values()) + block;
  }

  private static Map<String, String> rest() {
    Map<String, String> rest = new LinkedHashMap<>();
    rest.put("ovenloom", "ovenloom: 1\n");
    rest.put("event", "event: Supper\n");
    rest.put("guests", "guests: 10\n");
    rest.put("courses", "courses: [{name: supper, at: 2026-10-10 19:00, served over: 20 min}]\n");
    rest.put("cooks", "cooks: [{name: Host, hours: {on the day: 10:00-20:00}}]\n");
    rest.put("dishes", "dishes: [{dish: Bread, steps: [{do: slice, takes: 5 min}]}]\n");
    return rest;
  }
}
