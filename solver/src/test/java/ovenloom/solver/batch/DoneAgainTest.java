package ovenloom.solver.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.Reading;
import ovenloom.model.file.ResultLine;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;
import ovenloom.solver.search.Budget;

/** A line of results, and the event it tells of, are all it takes to do its run again. */
class DoneAgainTest {

  private static final int ALL = 12;

  private final Attempt attempt = new Attempt((event, outcome) -> "because", (run, plan) -> {}, () -> false);

  @TempDir
  private Path folder;

  @BeforeEach
  void a_supper_of_soup_or_stew_in_two_kitchens() throws IOException {
    Files.writeString(folder.resolve("supper.yaml"), """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Cook, hours: {on the day: 16:00-20:00}}]
        dishes:
          - from: soup.yaml
          - dish: Apples
            steps:
              - {do: core, takes: 10 min, hands: throughout, in: baking tray}
              - {do: bake, takes: 40 min, bake: {at: 180 C}}
        """);
    Files.writeString(folder.resolve("soup.yaml"), """
        dish: Leek soup
        steps:
          - {do: slice the leeks, takes: 15 min, hands: throughout, in: stock pot}
          - {do: simmer, takes: 30 min, burner: medium}
        """);
    Files.writeString(folder.resolve("stew.yaml"), """
        dish: Stew
        steps:
          - {do: cut, takes: 25 min, hands: throughout, in: stock pot}
          - {do: stew, takes: 90 min, burner: small}
        """);
    Files.writeString(folder.resolve("cabin.yaml"), "{from: home, burners: [large, large], landing: 3}\n");
    Files.writeString(folder.resolve("ham.yaml"),
        "{dish: Ham, steps: [{do: boil, takes: 5 h, burner: large, in: stock pot}]}\n");
    Files.writeString(folder.resolve("it.yaml"),
        """
            ovenloom: 1
            what if: Soup or stew?
            event: supper.yaml
            axes:
              kitchen: {home: as it is, cabin: {kitchen: {from: cabin.yaml}}}
              main: {soup: as it is, stew: {dishes: {Leek soup: {from: stew.yaml, portions: 4}}}}
              beside:
                nothing: as it is
                too much: {dishes: {Salad: {steps: [{do: chop, takes: 170 min, hands: throughout}]}}}
                too long: {dishes: {Ham: {from: ham.yaml}}}
            """);
  }

  private List<String> lines(long count) throws IOException {
    WhatIf whatIf = whatIf("it.yaml");
    List<String> lines = new ArrayList<>();
    for (long index = 0; index < count; index++) {
      lines.add(done(whatIf, index, new Budget(null, 40L, 7, 1), "test"));
    }
    return lines;
  }

  @Test
  void every_run_of_a_batch_comes_to_the_same_line_from_its_line_and_the_event() throws IOException {
    List<String> lines = lines(ALL);
    lose("it.yaml", "stew.yaml", "cabin.yaml", "ham.yaml");

    List<String> planned = lines.stream().filter(line -> !tellsOfAFile(line)).toList();
    assertThat(planned).hasSize(8)
        .extracting(line -> Objects.requireNonNull(ResultLine.read(line)).answer())
        .contains(Answer.PLAN, Answer.NO_PLAN);
    assertThat(planned).allSatisfy(line -> assertThat(again(line)).isEqualTo(line));
    assertThat(lines).filteredOn(DoneAgainTest::tellsOfAFile)
        .as("where these tell of places in a file, they now tell of those in the new one")
        .hasSize(4)
        .allSatisfy(line -> assertThat(told(again(line))).isEqualTo(told(line)));
  }

  private static boolean tellsOfAFile(String line) {
    return line.contains(".yaml:");
  }

  /** What a run is, and how it ended. */
  private static List<Object> told(String line) {
    Result result = Objects.requireNonNull(ResultLine.read(line));
    return List.of(result.run(), result.event(), result.choices(), result.patches(), result.answer());
  }

  private void lose(String... files) throws IOException {
    for (String file : files) {
      Files.delete(folder.resolve(file));
    }
  }

  @Test
  void where_the_event_or_a_file_of_its_own_was_changed_it_is_another_run_of_another_event()
      throws IOException {
    String line = lines(1).getFirst();
    Result before = Objects.requireNonNull(ResultLine.read(line));
    Path soup = folder.resolve("soup.yaml");
    Files.writeString(soup, Files.readString(soup).replace("30 min", "31 min"));

    Result after = Objects.requireNonNull(ResultLine.read(again(line)));

    assertThat(after.event()).isNotEqualTo(before.event());
    assertThat(after.run()).isNotEqualTo(before.run());
    assertThat(after.patches()).isEqualTo(before.patches());
  }

  @Test
  void a_comment_or_another_layout_changes_nothing() throws IOException {
    String line = lines(1).getFirst();
    Path soup = folder.resolve("soup.yaml");
    Files.writeString(soup, "# As ever.\n" + Files.readString(soup).replace(": ", ":  "));

    assertThat(again(line)).isEqualTo(line);
  }

  private String again(String line) throws IOException {
    Result result = Objects.requireNonNull(ResultLine.read(line));
    StringBuilder axes = new StringBuilder();
    List<String> names = List.copyOf(result.choices().keySet());
    for (int i = 0; i < names.size(); i++) {
      axes.append("  %s: {%s: %s}\n".formatted(names.get(i), result.choices().get(names.get(i)),
          result.patches().get(i)));
    }
    Files.writeString(folder.resolve("again.yaml"),
        "ovenloom: 1\nwhat if: Again?\nevent: supper.yaml\naxes:\n" + axes);
    return done(whatIf("again.yaml"), 0, new Budget(null, result.tries(), result.seed(), 1),
        result.version());
  }

  private String done(WhatIf whatIf, long index, Budget budget, String version) throws IOException {
    Run run = Run.of(Digest.of(whatIf.written()), whatIf.variation(index), () -> whatIf.event(index), budget,
        null, version);
    return ResultLine.json(Objects.requireNonNull(attempt.of(run)));
  }

  private WhatIf whatIf(String file) {
    return switch (WhatIfFile.read(folder.resolve(file), folder)) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
