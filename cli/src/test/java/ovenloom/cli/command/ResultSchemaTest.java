package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Lines of results are as the schema in docs has them. */
class ResultSchemaTest {

  private static final Path DOCS = Path.of("../docs");

  @TempDir
  private Path folder;

  @Test
  void a_plan_a_proof_and_a_mistake_are_as_the_schema_has_them() throws IOException {
    List<String> lines = lines();

    assertThat(lines).anyMatch(line -> line.contains("\"answer\":\"plan\""))
        .anyMatch(line -> line.contains("\"answer\":\"no plan\""))
        .anyMatch(line -> line.contains("\"answer\":\"mistaken\""))
        .allSatisfy(line -> assertThat(schema().validate(line, InputFormat.JSON)).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      "answer":"plan"                  | "answer":"maybe"
      "answer":"plan"                  | "answer":"no plan"
      "seed":1                         | "seed":"1"
      "tries":20,                      | ''
      "version":                       | "edition":
      "hands in the last hour":        | "hands at last":
      """)
  void what_no_line_says_the_schema_refuses(String said, String never) throws IOException {
    String plan = lines().stream()
        .filter(line -> line.contains("\"answer\":\"plan\""))
        .findFirst()
        .orElseThrow();

    assertThat(plan).contains(said);
    assertThat(schema().validate(plan.replace(said, never), InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void every_key_is_on_the_page_about_it() throws IOException {
    String page = Files.readString(DOCS.resolve("batch.md"));
    JsonNode kinds = new JsonMapper().readTree(DOCS.resolve("result.schema.json")).path("$defs");

    assertThat(kinds.findValues("properties").stream().flatMap(each -> each.propertyNames().stream()))
        .hasSizeGreaterThan(30)
        .allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
  }

  private List<String> lines() throws IOException {
    Kitchens.tooMuchForOne(folder);
    Path whatIf = Files.writeString(folder.resolve("omelettes.what-if.yaml"), """
        ovenloom: 1
        what if: How many omelettes?
        event: too-much.yaml
        axes:
          mixer:
            none: as it is
            one: {kitchen: {appliances: {mixer: 1}}}
          menu:
            both: as it is
            whipped: {dishes: {Pancakes: null, Omelette: {steps: [
              {do: whip, takes: 5 min, hands: throughout, appliance: mixer}]}}}
        """);
    ovenloom("batch", whatIf, "-o", folder.resolve("runs"), "--tries", 20);
    return Files.readAllLines(folder.resolve("runs").resolve("results.jsonl"));
  }

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDialect(Dialects.getDraft202012())
        .getSchema(Files.readString(DOCS.resolve("result.schema.json")), InputFormat.JSON);
  }
}
