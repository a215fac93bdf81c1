package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.menu.RandomEvents;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The schema beside the page says what the reader says, as far as a schema can. */
class SchemaTest {

  private static final Path FILE = Path.of("../docs/problem.schema.json");
  private static final JsonNode SCHEMA = schema();
  private static final Schema CHECK = SchemaRegistry.withDialect(Dialects.getDraft202012()).getSchema(SCHEMA);

  @ParameterizedTest
  @MethodSource("ovenloom.model.file.ProblemFileTest#problems")
  void every_problem_in_the_house_is_as_the_schema_has_it(Path file) throws IOException {
    assertThat(errors(Files.readString(file))).isEmpty();
  }

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void so_is_whatever_is_written(long seed) {
    String json = ProblemFile.json(RandomEvents.event(seed));

    assertThat(CHECK.validate(new JsonMapper().readTree(json))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("ovenloom.model.file.AllKeys#entries")
  void each_table_of_keys_is_in_the_schema_word_for_word(Map.Entry<String, Keys> table) {
    String name = table.getKey().equals("burner") ? "burnerInFull" : table.getKey();
    JsonNode properties = SCHEMA.path("$defs").path(name).path("properties");

    assertThat(properties.propertyNames()).containsExactlyInAnyOrderElementsOf(table.getValue().names());
  }

  @ParameterizedTest
  @ValueSource(strings = {"gests: 4", "guests: many", "rules: us-hom", "clock: 5", "dishes: []",
      "apart: [[fish]]",
      "wishes: {calm: 11}", "courses: [{name: supper, at: 19:00}]", "cooks: [{name: Host}]",
      "kitchen: {ovens: [{name: o}]}",
      "kitchen: {landing: -1}", "kitchen: {burners: [big]}", "dishes: [{dish: Soup, steps: [{do: stir}]}]",
      "dishes: [{dish: Soup, steps: [{do: stir, takes: 5}]}]",
      "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min, bakes: 9}]}]"})
  void what_the_reader_refuses_a_schema_refuses_too(String line) {
    String key = line.substring(0, line.indexOf(':'));
    String supper = Desktop.SUPPER + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n";

    assertThat(errors(supper)).isEmpty();
    assertThat(errors(supper.replaceAll("(?m)^" + key + ":.*\n", "") + line + "\n")).isNotEmpty();
  }

  @Test
  void every_word_a_schema_explains_is_used() {
    String text = SCHEMA.toString();

    List<String> unused = new ArrayList<>();
    SCHEMA.path("$defs").propertyNames().forEach(name -> {
      if (!text.contains("\"#/$defs/" + name + "\"")) {
        unused.add(name);
      }
    });

    assertThat(unused).isEmpty();
  }

  private static List<Error> errors(String yaml) {
    return CHECK.validate(new YAMLMapper().readTree(yaml));
  }

  private static JsonNode schema() {
    return new JsonMapper().readTree(FILE);
  }
}
