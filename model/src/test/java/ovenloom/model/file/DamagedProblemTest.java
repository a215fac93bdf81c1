package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;

/** Whatever happens to a file, it reads or its mistakes are told; nothing falls over. */
@Timeout(20)
class DamagedProblemTest {

  private static final List<String> ODDITIES = List.of("", "0", "-1", "99999999999", "1e9", "24:00", "no",
      "[]", "{}", "[[]]",
      "{a: b}", "\"\"", "~", "x, y", "0 min", "366 days", "9999 h", "0 C", "-300 C", "600 C", "0 x 0 cm",
      "0 mm", "nothing",
      "throughout", "100 %", "0-0 min", "9999-12-31 23:59", "0001-01-01 00:00", "1000 days before", "*x",
      "&x y", "null", "👩‍🍳", "NaN", ".inf", "1/0", "20 C", "0 F", "0 C to 600 C", "20.001 C in 366 days",
      "600 C to 20.001 C in 1 min", "366 days + 1 day a portion", "20 x 20 mm", "raw otter",
      "{9999: 9999 min}", "9999", "0:00-24:00", "2011-12-30 12:00", "Pacific/Apia", "America/Sao_Paulo");

  private static final Pattern VALUE = Pattern.compile("(?<=: )[^,\\[{}\\]]+");

  @TempDir
  Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 400);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_damaged_problem_is_read_or_its_mistakes_are_told(long seed) throws IOException {
    Random random = new Random(seed);
    List<Path> problems = ProblemFileTest.problems();
    String text = Files.readString(problems.get(random.nextInt(problems.size())));
    for (int i = 0; i <= random.nextInt(4); i++) {
      text = damaged(text, random);
    }

    Reading<Event> read = new Desktop(folder).put("it.yaml", text).read("it.yaml");

    switch (read) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> {
        assertThat(Work.of(event).steps()).isNotEmpty();
        assertThat(new Desktop(folder).put("again.yaml", ProblemFile.yaml(event)).event("again.yaml"))
            .isEqualTo(event);
      }
      case Reading.Mistaken<Event>(List<Mistake> mistakes) -> {
        assertThat(mistakes).isNotEmpty();
        assertThat(MistakeText.of(mistakes).lines()).allMatch(line -> line.length() < 2_000);
      }
    }
  }

  private static String damaged(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    switch (random.nextInt(9)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(random.nextInt(lines.size()), line);
      case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
      case 3 -> lines.set(at, line.isEmpty() ? "?" : line.substring(random.nextInt(line.length())));
      case 4 -> lines.set(at, line.replaceFirst(", \\w[^,]*", ", {a: b}"));
      case 5 -> lines.set(at, line.replaceFirst("  ", "\t"));
      case 6 -> lines.replaceAll(each -> each + "\r");
      default -> lines.set(at, withAnOddity(line, random));
    }
    return String.join("\n", lines) + "\n";
  }

  private static String withAnOddity(String line, Random random) {
    List<MatchResult> values = VALUE.matcher(line).results().toList();
    if (values.isEmpty()) {
      return line;
    }
    MatchResult value = values.get(random.nextInt(values.size()));
    return line.substring(0, value.start()) + ODDITIES.get(random.nextInt(ODDITIES.size()))
        + line.substring(value.end());
  }
}
