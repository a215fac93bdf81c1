package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans that are found are as the schema in docs has them. */
class PlanSchemaTest {

  private static final Path DOCS = Path.of("../docs");

  @TempDir
  private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"first-soup", "easter-lamb-two-ovens", "birthday-buffet", "village-feast"})
  void a_plan_that_was_found_is_as_the_schema_has_it(String name) throws IOException {
    var plan = folder.resolve("plan.json");

    var typed = ovenloom("solve", "../problems/" + name + ".yaml", "--tries", 300, "-o", plan);

    assertThat(typed.code()).isZero();
    assertThat(schema().validate(Files.readString(plan), InputFormat.JSON)).isEmpty();
  }

  /** As if both lay beside each other on some server, which nobody asks. */
  private static Schema schema() throws IOException {
    String folder = "https://docs.invalid/";
    String event = Files.readString(DOCS.resolve("problem.schema.json"));
    return SchemaRegistry
        .withDialect(Dialects.getDraft202012(),
            registry -> registry.schemas(Map.of(folder + "problem.schema.json", event)))
        .getSchema(SchemaLocation.of(folder + "plan.schema.json"),
            Files.readString(DOCS.resolve("plan.schema.json")), InputFormat.JSON);
  }
}
