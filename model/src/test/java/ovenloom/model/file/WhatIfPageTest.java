package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.menu.Event;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The page on what-if files and their schema say what the reader says. */
class WhatIfPageTest {

  private static final Path PROBLEMS = Path.of("../problems");
  private static final Path PAGE = Path.of("../docs/what-if.md");
  private static final Pattern BLOCK = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
  private static final JsonNode SCHEMA = new JsonMapper().readTree(Path.of("../docs/what-if.schema.json"));
  private static final Schema CHECK = SchemaRegistry.withDialect(Dialects.getDraft202012()).getSchema(SCHEMA);

  @TempDir
  private Path folder;

  static Stream<String> blocks() throws IOException {
    List<String> blocks = BLOCK.matcher(Files.readString(PAGE))
        .results()
        .map(block -> block.group(1))
        .toList();
    return blocks.stream().map(block -> completed(block, blocks.getFirst()));
  }

  /** What a block that does not say it all is completed with. */
  private static String completed(String block, String first) {
    if (block.startsWith("take:")) {
      return first.replaceAll("(?s)take:.*", "") + block;
    }
    return block.startsWith("ovenloom:") ? block
        : "ovenloom: 1\nwhat if: It?\nevent: easter-lamb.yaml\naxes:\n" + (block.startsWith(" ") ? block
            : "  some:\n    choice:\n" + block.indent(6));
  }

  static Stream<String> problems() throws IOException {
    try (Stream<Path> files = Files.list(PROBLEMS)) {
      List<Path> all = files.filter(file -> file.toString().endsWith(".what-if.yaml")).sorted().toList();
      return all.stream().map(file -> file.getFileName().toString());
    }
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void every_example_on_the_page_reads_and_so_does_each_of_its_variations(String yaml) throws IOException {
    copyProblems();
    Path file = Files.writeString(folder.resolve("it.yaml"), yaml);

    assertThat(mistakes(file)).isEmpty();
    assertThat(CHECK.validate(new YAMLMapper().readTree(yaml))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("problems")
  void every_what_if_in_the_house_is_as_the_schema_has_it(String file) throws IOException {
    assertThat(CHECK.validate(new YAMLMapper().readTree(Files.readString(PROBLEMS.resolve(file))))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"axis: {a: {b: as it is}}", "axes: {}", "axes: {guests: []}", "axes: {guests: {a: b}}",
          "take: some", "take: {seed: 7}", "event: [a.yaml]"})
  void what_the_reader_refuses_the_schema_refuses_too(String line) throws IOException {
    String key = line.substring(0, line.indexOf(':'));
    String good = "ovenloom: 1\nwhat if: It?\nevent: a.yaml\naxes: {guests: [4, 8]}\n";
    String bad = good.replaceAll("(?m)^" + key + ":.*\n", "") + line + "\n";
    Files.writeString(folder.resolve("a.yaml"),
        Desktop.SUPPER + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n");

    assertThat(mistakes(Files.writeString(folder.resolve("it.yaml"), good))).isEmpty();
    assertThat(CHECK.validate(new YAMLMapper().readTree(good))).isEmpty();
    assertThat(mistakes(Files.writeString(folder.resolve("it.yaml"), bad))).isNotEmpty();
    assertThat(CHECK.validate(new YAMLMapper().readTree(bad))).isNotEmpty();
  }

  @Test
  void the_keys_of_the_schema_are_those_of_the_reader() {
    assertThat(SCHEMA.path("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(WhatIfFile.WHAT_IF.names());
    assertThat(SCHEMA.path("$defs").path("sample").path("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(WhatIfFile.SAMPLE.names());
  }

  private void copyProblems() throws IOException {
    try (Stream<Path> files = Files.walk(PROBLEMS)) {
      for (Path from : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(PROBLEMS.relativize(from).toString());
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
      }
    }
  }

  private static String mistakes(Path file) {
    return switch (WhatIfFile.read(file, Objects.requireNonNull(file.getParent()))) {
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) -> MistakeText.of(mistakes);
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> mistakes(whatIf);
    };
  }

  /** Of the first and the last. */
  private static String mistakes(WhatIf whatIf) {
    return Stream.of(0L, whatIf.size() - 1)
        .map(whatIf::event)
        .map(event -> event instanceof Reading.Mistaken<Event>(List<Mistake> mistakes)
            ? MistakeText.of(mistakes) : "")
        .reduce("", String::concat);
  }
}
