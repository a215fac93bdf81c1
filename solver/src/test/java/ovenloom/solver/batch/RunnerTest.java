package ovenloom.solver.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.variation.Result;

class RunnerTest {

  private static final int ALL = 200;

  @TempDir
  private Path folder;

  private final AtomicInteger done = new AtomicInteger();

  @Test
  void every_run_is_done_once_and_all_are_there_in_the_end() throws IOException {
    doing(Errands::result).run(ALL, RunnerTest::run);

    assertThat(names())
        .containsExactlyInAnyOrderElementsOf(IntStream.range(0, ALL).mapToObj(i -> "run " + i).toList());
  }

  @Test
  void what_is_there_is_not_done_again() throws IOException {
    doing(this::counted).run(50, RunnerTest::run);
    doing(this::counted).run(ALL, RunnerTest::run);

    assertThat(done).hasValue(ALL);
    assertThat(names()).hasSize(ALL).doesNotHaveDuplicates();
  }

  @Test
  void a_run_that_is_asked_for_twice_has_one_result() throws IOException {
    doing(Errands::result).run(10, index -> run(index % 5));

    assertThat(names()).hasSize(5).doesNotHaveDuplicates();
  }

  @Test
  void whoever_stops_it_keeps_what_is_done_and_goes_on_later() throws IOException {
    AtomicInteger seen = new AtomicInteger();
    try (Results results = Results.in(folder.resolve("results.jsonl"))) {
      new Runner(results, 2, Errands::result, (done, all, isNew) -> seen.incrementAndGet(),
          () -> seen.get() >= 20)
          .run(ALL, RunnerTest::run);
    }
    int stopped = names().size();
    doing(this::counted).run(ALL, RunnerTest::run);

    assertThat(stopped).isBetween(20, 25);
    assertThat(done).hasValue(ALL - stopped);
    assertThat(names()).hasSize(ALL).doesNotHaveDuplicates();
  }

  @Test
  void a_run_stopped_on_the_way_has_no_result() throws IOException {
    doing(run -> null).run(ALL, RunnerTest::run);

    assertThat(names()).isEmpty();
  }

  @Test
  void what_cannot_be_written_ends_it_and_it_can_go_on() throws IOException {
    assertThatThrownBy(() -> doing(run -> {
      if (done.incrementAndGet() == 30) {
        throw new IOException("No space left on device");
      }
      return Errands.result(run);
    }).run(ALL, RunnerTest::run)).isInstanceOf(IOException.class).hasMessage("No space left on device");
    int before = names().size();
    doing(Errands::result).run(ALL, RunnerTest::run);

    assertThat(before).isBetween(28, 33);
    assertThat(names()).hasSize(ALL).doesNotHaveDuplicates();
  }

  @Test
  void no_more_runs_are_in_memory_than_are_being_done_and_the_next() throws IOException {
    AtomicInteger made = new AtomicInteger();
    List<Integer> ahead = Collections.synchronizedList(new ArrayList<>());

    doing(run -> {
      ahead.add(made.get() - done.getAndIncrement());
      return Errands.result(run);
    }).run(ALL, index -> {
      made.incrementAndGet();
      return run(index);
    });

    assertThat(ahead).hasSize(ALL).allSatisfy(runs -> assertThat(runs).isLessThanOrEqualTo(4));
  }

  private Result counted(Run run) {
    done.incrementAndGet();
    return Errands.result(run);
  }

  /** Two at a time, into one file. */
  private Doer doing(Runner.Doing how) {
    return (all, runs) -> {
      try (Results results = Results.in(folder.resolve("results.jsonl"))) {
        new Runner(results, 2, how, (done, of, isNew) -> {}, () -> false).run(all, runs);
      }
    };
  }

  private interface Doer {
    void run(long all, LongFunction<Run> runs) throws IOException;
  }

  private static Run run(long index) {
    return Errands.run("run " + index);
  }

  private List<String> names() throws IOException {
    List<String> names = new ArrayList<>();
    Results.each(folder.resolve("results.jsonl"),
        result -> names.add(String.valueOf(result.choices().get("errand"))));
    return names;
  }
}
