package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.menu.RandomEvents;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.RandomPlans;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page on the plan file and the schema beside it say what is written, and what is read. */
class PlanPageTest {

  private static final Path PAGE = Path.of("../docs/plan-file.md");
  private static final Path SCHEMA = Path.of("../docs/plan.schema.json");
  private static final JsonMapper JSON = new JsonMapper();
  private static final JsonNode WORDS = JSON.readTree(SCHEMA);
  private static final Schema CHECK = check();

  @TempDir
  Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatever_is_written_is_as_the_schema_has_it(long seed) {
    Plan plan = RandomPlans.plan(seed, RandomEvents.event(seed));

    assertThat(errors(PlanFile.json(plan))).isEmpty();
    assertThat(errors(PlanFile.json(plan.with(new Bound(seed, 2 * seed))))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("ovenloom.model.file.PlanPageTest#tables")
  void each_table_of_keys_is_in_the_schema_word_for_word_and_on_the_page(String name, Keys table)
      throws IOException {
    JsonNode properties = WORDS.path("$defs").path(name).path("properties");
    String page = Files.readString(PAGE);

    assertThat(properties.propertyNames()).containsExactlyInAnyOrderElementsOf(table.names());
    assertThat(table.names())
        .allSatisfy(key -> assertThat(page).contains("\"" + key + "\": ").containsPattern("`" + key + "`"));
  }

  static Stream<Arguments> tables() {
    return Stream.of(Arguments.of("plan", PlanReader.PLAN), Arguments.of("file", PlanReader.SOURCE),
        Arguments.of("score", PlanReader.SCORE), Arguments.of("bound", PlanReader.BOUND),
        Arguments.of("log", PlanReader.LOG), Arguments.of("span", PlanReader.SPAN),
        Arguments.of("wash", PlanReader.WASH), Arguments.of("layout", PlanReader.SPREAD),
        Arguments.of("spot", PlanReader.SPOT), Arguments.of("run", RunReader.RUN),
        Arguments.of("baking", RunReader.BAKING), Arguments.of("stage", RunReader.STAGE),
        Arguments.of("shelf", RunReader.SHELF), Arguments.of("hands", RunReader.HANDS),
        Arguments.of("stay", RunReader.STAY), Arguments.of("part", RunReader.PART));
  }

  @Test
  void the_example_on_the_page_reads_and_is_as_the_schema_has_it() throws IOException {
    assertThat(mistakes(example())).isEmpty();
    assertThat(errors(example())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '#', textBlock = """
      "ovenloom plan": 1               | "ovenloom plan": 2
      "files": [                       | "flies": [
      "when": [1075, 1085],            | "when": [1075],
      "act": "load"                    | "act": "lode"
      "on": "counter"                  | "on": "floor"
      "on": "shelf", "store": "fridge" | "on": "shelf"
      "mark": "200 C", "mode"          | "mark": "hot", "mode"
      "batches": [1, 1], "piece"       | "batches": [0, 1], "piece"
      "guests": 2                      | "guests": "many"
      "calm": 12                       | "clam": 12
      "count": 1                       | "count": 0
      "turned": "yes"                  | "turned": "perhaps"
      "state": "rested"                | "state": "tired"
      "breaks": 0                      | "breaks": "none"
      """)
  void what_the_reader_refuses_the_schema_refuses_too(String right, String wrong) throws IOException {
    String spoilt = example().replaceFirst(Pattern.quote(right), Matcher.quoteReplacement(wrong));

    assertThat(mistakes(spoilt)).isNotEmpty();
    assertThat(errors(spoilt)).isNotEmpty();
  }

  @Test
  void every_word_the_schema_explains_is_used() {
    assertThat(WORDS.path("$defs").propertyNames())
        .allSatisfy(name -> assertThat(WORDS.toString()).contains("\"#/$defs/" + name + "\""));
  }

  private String mistakes(String json) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.json"), json);
    return PlanFile.read(file) instanceof Reading.Mistaken<Plan>(List<Mistake> mistakes)
        ? MistakeText.of(mistakes)
        : "";
  }

  private static String example() throws IOException {
    Matcher block = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(PAGE));
    assertThat(block.find()).isTrue();
    return block.group(1);
  }

  /** As if both lay beside each other on some server, which nobody asks. */
  private static Schema check() {
    String folder = "https://docs.invalid/";
    String event = JSON.readTree(SCHEMA.resolveSibling("problem.schema.json")).toString();
    return SchemaRegistry
        .withDialect(Dialects.getDraft202012(),
            registry -> registry.schemas(Map.of(folder + "problem.schema.json", event)))
        .getSchema(SchemaLocation.of(folder + "plan.schema.json"), WORDS);
  }

  private static List<Error> errors(String json) {
    return CHECK.validate(JSON.readTree(json));
  }
}
