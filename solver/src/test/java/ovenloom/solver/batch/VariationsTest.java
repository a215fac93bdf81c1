package ovenloom.solver.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Result;
import ovenloom.solver.search.Budget;

/** Variations of a small supper, planned. */
class VariationsTest {

  private static final Budget A_FEW = new Budget(null, 60L, 1, 1);

  private final Attempt attempt = new Attempt((event, outcome) -> "because", (run, plan) -> {}, () -> false);

  @TempDir
  private Path folder;

  @BeforeEach
  void a_supper() throws IOException {
    Files.writeString(folder.resolve("supper.yaml"), """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        cooks: [{name: Cook, hours: {on the day: 16:00-20:00}}]
        dishes:
          - dish: Leek soup
            steps:
              - {do: slice the leeks, takes: 15 min, hands: throughout, in: stock pot}
              - {do: simmer, takes: 30 min, burner: medium}
          - dish: Apples
            steps:
              - {do: core, takes: 10 min, hands: throughout, in: baking tray}
              - {do: bake, takes: 40 min, bake: {at: 180 C}}
        """);
    Files.writeString(folder.resolve("it.yaml"),
        """
            ovenloom: 1
            what if: Fewer hours?
            event: supper.yaml
            axes:
              hours:
                all: as it is
                few: {cooks: {Cook: {hours: {on the day: 17:45-19:30}}}}
                hardly any: {cooks: {Cook: {hours: {on the day: 18:10-19:30}}}, kitchen: {from: home, appliances: {corer: 1}}}
              apples: {by hand: {}, by machine: {dishes: {Apples: {steps: {core: {appliance: corer}}}}}}
            """);
  }

  @Test
  void what_changes_nothing_gives_the_same_plan() {
    Plan plain = plan(Outcome.planned(event(whatIf().base()), List.of(), A_FEW, null, () -> false));
    Plan patched = plan(Outcome.planned(event(whatIf().event(0)), List.of(), A_FEW, null, () -> false));

    assertThat(patched).isEqualTo(plain);
  }

  @Test
  void each_way_to_end_is_a_result() throws IOException {
    assertThat(List.of(result(0).answer(), result(4).answer(), result(1).answer())).containsExactly(
        Result.Answer.PLAN, Result.Answer.NO_PLAN, Result.Answer.MISTAKEN);
    assertThat(result(4).why()).isEqualTo("because");
    assertThat(result(1).why()).contains("it.yaml:").contains("\"corer\"");
    assertThat(result(0).decides()).isIn("Leek soup", "Apples");
  }

  @Test
  void a_fault_of_ours_is_a_result_too() throws IOException {
    Attempt failing = new Attempt((event, outcome) -> {
      throw new IllegalStateException("no words");
    }, (run, plan) -> {}, () -> false);

    Result result = Objects.requireNonNull(failing.of(run(4, null)));

    assertThat(result.answer()).isEqualTo(Result.Answer.FAILED);
    assertThat(result.why()).contains("no words");
  }

  @Test
  void so_is_one_while_a_variation_is_read_and_the_others_are_planned() throws IOException {
    WhatIf whatIf = whatIf();
    Path file = folder.resolve("results.jsonl");

    try (Results results = Results.in(file)) {
      new Runner(results, 2, attempt, (done, all, isNew) -> {}, () -> false).run(3,
          index -> Run.of("supper", whatIf.variation(index),
              () -> index == 0 ? unread() : whatIf.event(index),
              A_FEW, null, "test"));
    }

    Map<String, Result> all = new HashMap<>();
    Results.each(file, result -> all.put(result.name(), result));
    assertThat(all).hasSize(3)
        .hasEntrySatisfying("all, by hand", failed -> {
          assertThat(failed.answer()).isEqualTo(Result.Answer.FAILED);
          assertThat(failed.why()).contains("cannot be read");
        })
        .hasEntrySatisfying("few, by hand",
            planned -> assertThat(planned.answer()).isEqualTo(Result.Answer.PLAN));
  }

  private static Reading<Event> unread() {
    throw new UncheckedIOException(new IOException("soup.yaml cannot be read"));
  }

  @Test
  void a_warm_start_begins_with_a_plan_of_nearly_the_same_event() throws IOException {
    Plan base = plan(Outcome.planned(event(whatIf().base()), List.of(), A_FEW, null, () -> false));

    Result cold = Objects.requireNonNull(attempt.of(run(2, null)));
    Result warm = Objects.requireNonNull(attempt.of(run(2, base)));
    Result again = Objects.requireNonNull(attempt.of(run(2, base)));

    assertThat(warm.answer()).isEqualTo(Result.Answer.PLAN);
    assertThat(warm).isEqualTo(again);
    assertThat(warm.warm()).isTrue();
    assertThat(warm.run()).isNotEqualTo(cold.run());
  }

  private Result result(long index) throws IOException {
    return Objects.requireNonNull(attempt.of(run(index, null)));
  }

  private Run run(long index, @Nullable Plan from) {
    WhatIf whatIf = whatIf();
    return Run.of(Digest.of(whatIf.written()), whatIf.variation(index), () -> whatIf.event(index), A_FEW,
        from,
        "test");
  }

  private WhatIf whatIf() {
    return whatIf("it.yaml");
  }

  private WhatIf whatIf(String file) {
    return switch (WhatIfFile.read(folder.resolve(file), folder)) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private static Event event(Reading<Event> reading) {
    return switch (reading) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private static Plan plan(Outcome outcome) {
    return outcome instanceof Outcome.APlan(Plan plan) ? plan : throwing(outcome);
  }

  private static Plan throwing(Outcome outcome) {
    throw new AssertionError("no plan: " + outcome);
  }
}
