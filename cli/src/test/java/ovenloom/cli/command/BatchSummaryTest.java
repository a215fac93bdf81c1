package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.solver.batch.Results;

/** Soup for one cook and half an hour: there is a plan for some guests and none for more. */
class BatchSummaryTest {

  private static final String WHAT_IF = """
      ovenloom: 1
      what if: How many omelettes?
      event: too-much.yaml
      axes:
        guests: [4, 6]
        menu:
          both: as it is
          omelettes: {dishes: {Pancakes: null}}
          pancakes: {dishes: {Omelette: null}}
      """;

  @TempDir
  private Path folder;

  private Path results;

  @BeforeEach
  void write() throws IOException {
    Kitchens.tooMuchForOne(folder);
    Files.writeString(folder.resolve("omelettes.what-if.yaml"), WHAT_IF);
    results = folder.resolve("runs");
  }

  private Typed batch(Object... more) {
    Stream<Object> words = Stream.of("batch", folder.resolve("omelettes.what-if.yaml"), "-o", results,
        "--tries", 20);
    return ovenloom(Stream.concat(words, Arrays.stream(more)).toArray());
  }

  @Test
  void a_batch_ends_with_a_table_and_with_where_all_is() {
    var typed = batch();

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("""
        How many omelettes?
        6 runs: 4 with a plan, 2 proven to have none.

        guests     runs  plan  no  open  table  wishes  hands  kWh
        4             3     2   1     0      0""")
        .contains("In " + results + ": results.jsonl, runs.csv, runs.html.\n")
        .contains("Best of all: 4 guests, pancakes: at the table 0, wishes ");
    assertThat(results).isDirectoryContaining("glob:**/runs.csv").isDirectoryContaining("glob:**/runs.html");
  }

  @Test
  void where_duck_db_is_there_is_a_parquet_file_too() {
    assertThat(batch().out()).endsWith("runs.csv is there as runs.parquet, too.\n");
    assertThat(results).isDirectoryContaining("glob:**/runs.parquet");
  }

  @Test
  void runs_are_listed_in_their_order_whatever_core_was_done_first() throws IOException {
    batch("--cores", "4");

    assertThat(Files.readAllLines(results.resolve("runs.csv"))
        .stream()
        .map(line -> line.replaceAll("^[^,]*,([^,]*,[^,]*),.*", "$1")))
        .containsExactly("guests,menu", "4,both", "4,omelettes", "4,pancakes", "6,both", "6,omelettes",
            "6,pancakes");
  }

  @Test
  void done_again_it_says_and_writes_the_same() throws IOException {
    var first = batch();
    String table = Files.readString(results.resolve("runs.csv"));
    String page = Files.readString(results.resolve("runs.html"));

    var again = batch();

    assertThat(again).isEqualTo(first);
    assertThat(results.resolve("runs.csv")).hasContent(table);
    assertThat(results.resolve("runs.html")).hasContent(page);
  }

  @Test
  void where_plans_are_asked_for_later_it_says_how_many_are_not_kept() {
    batch();

    assertThat(batch("--plans").out())
        .contains("\nPlans of 4 runs done before are not kept. With another folder all are.\n");
    assertThat(results.resolve("plans")).isEmptyDirectory();
  }

  @Test
  void where_they_are_asked_for_from_the_beginning_all_are_kept() {
    assertThat(batch("--plans").out()).doesNotContain("not kept");
    assertThat(results.resolve("plans"))
        .isDirectoryContaining("glob:**/????????????????????????????????.json");
    assertThat(batch("--plans").out()).doesNotContain("not kept");
  }

  @Test
  void results_of_other_runs_in_the_folder_are_not_told_of() throws IOException {
    batch("--seed", "2");

    var typed = batch();

    assertThat(typed.out()).contains("\n6 runs: 4 with a plan")
        .contains("\nNot told of here: 6 more in results.jsonl, of other runs");
    assertThat(Files.readAllLines(results.resolve("runs.csv"))).hasSize(7);
    assertThat(Files.readAllLines(results.resolve("results.jsonl"))).hasSize(12);
  }

  @Test
  void one_that_was_stopped_says_what_is_left() throws IOException {
    batch();
    var out = new StringWriter();
    var kit = new Kit(new PrintWriter(out), new PrintWriter(new StringWriter()), Typed.PIPE, new Stop(),
        InstantSource.system());

    try (Results all = Results.in(results.resolve("results.jsonl"))) {
      List<String> cameTo = Files.readAllLines(results.resolve("runs.csv"))
          .subList(1, 4)
          .stream()
          .map(line -> line.substring(0, line.indexOf(',')))
          .toList();
      new BatchSummary(kit, results, whatIf(), null).write(all, cameTo);
    }

    assertThat(out.toString()).startsWith("""
        How many omelettes?
        3 runs: 2 with a plan, 1 proven to have none.
        3 runs are left. The same command goes on from here.
        """).contains("Not told of here: 3 more in results.jsonl, of other runs or not come to this time.");
    assertThat(Files.readAllLines(results.resolve("runs.csv"))).hasSize(4);
    assertThat(Files.readString(results.resolve("runs.html"))).contains("3 runs are left");
  }

  private WhatIf whatIf() {
    return switch (WhatIfFile.read(folder.resolve("omelettes.what-if.yaml"), folder)) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(var mistakes) -> throw new AssertionError(mistakes);
    };
  }
}
