package ovenloom.solver.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.variation.Result;

class ResultsTest {

  @TempDir
  private Path folder;

  private Path file() {
    return folder.resolve("results.jsonl");
  }

  @Test
  void a_result_is_a_line_and_is_there_the_next_time() throws IOException {
    try (Results results = Results.in(file())) {
      results.add(Errands.result("a"));
      results.add(Errands.result("b"));
    }

    try (Results again = Results.in(file())) {
      assertThat(again.has(Errands.result("a").run())).isTrue();
      assertThat(again.has(Errands.result("c").run())).isFalse();
      assertThat(again.count()).isEqualTo(2);
    }
    assertThat(all()).containsExactly(Errands.result("a"), Errands.result("b"));
  }

  @Test
  void nothing_is_written_twice() throws IOException {
    try (Results results = Results.in(file())) {
      results.add(Errands.result("a"));
      results.add(Errands.result("a"));
    }

    assertThat(all()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 200})
  void half_a_line_is_cut_off_and_the_rest_stays(int half) throws IOException {
    try (Results results = Results.in(file())) {
      results.add(Errands.result("a"));
    }
    byte[] whole = Files.readAllBytes(file());
    Files.write(file(),
        new String(whole, UTF_8).substring(0, Math.min(half, whole.length - 1)).getBytes(UTF_8),
        StandardOpenOption.APPEND);

    try (Results results = Results.in(file())) {
      results.add(Errands.result("b"));
    }

    assertThat(all()).containsExactly(Errands.result("a"), Errands.result("b"));
  }

  @Test
  void two_batches_do_not_write_into_one_file() throws IOException {
    try (Results results = Results.in(file())) {
      assertThatThrownBy(() -> Results.in(file())).isInstanceOf(Results.NotOurs.class)
          .hasMessageContaining("in use by another batch");
      assertThat(results.count()).isZero();
    }
  }

  @Test
  void a_line_that_is_no_result_is_told_by_its_number() throws IOException {
    try (Results results = Results.in(file())) {
      results.add(Errands.result("a"));
    }
    Files.writeString(file(), "{\"run\": 5}\n", StandardOpenOption.APPEND);

    assertThatThrownBy(() -> Results.in(file())).isInstanceOf(IOException.class)
        .hasMessageContaining("line 2 of")
        .hasMessageContaining("is no result");
  }

  @ParameterizedTest
  @ValueSource(strings = {"my shopping list", "{\"name\": \"no result\"}", "{\"run\":5"})
  void a_file_that_is_somebody_elses_is_left_as_it_is(String text) throws IOException {
    Files.writeString(file(), text);

    assertThatThrownBy(() -> Results.in(file())).isInstanceOf(Results.NotOurs.class);
    assertThat(file()).hasContent(text);
  }

  @Test
  void another_process_is_kept_away_too() throws Exception {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    try (Results results = Results.in(file())) {
      results.add(Errands.result("a"));
      Process other = new ProcessBuilder(java.toString(), "-cp", System.getProperty("java.class.path"),
          OtherBatch.class.getName(), file().toString()).redirectErrorStream(true).start();

      assertThat(new String(other.getInputStream().readAllBytes(), UTF_8))
          .contains("in use by another batch");
      assertThat(other.waitFor()).isEqualTo(2);
    }
  }

  /** Opens the results it is given, in a process of its own. */
  static final class OtherBatch {
    public static void main(String[] files) throws IOException {
      try (Results results = Results.in(Path.of(files[0]))) {
        System.out.println("opened with " + results.count());
      } catch (Results.NotOurs kept) {
        System.out.println(kept.getMessage());
        System.exit(2);
      }
    }
  }

  /** A disk of 64 kB, made by whoever may make one. */
  @Test
  void on_a_full_disk_all_lines_are_whole_and_the_rest_goes_on_where_there_is_room() throws Exception {
    Path small = Files.createDirectory(folder.resolve("small"));
    assumeTrue(did("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", small.toString()),
        "left out: no small disk can be made here");
    try {
      Path file = small.resolve("results.jsonl");
      int written = 0;
      try (Results results = Results.in(file)) {
        while (written < 1_000) {
          results.add(Errands.result("run " + written));
          written++;
        }
      } catch (IOException full) {
        assertThat(full).hasMessageContaining("No space left");
      }
      assertThat(written).isBetween(50, 999);

      List<Result> there = new ArrayList<>();
      Results.each(file, there::add);
      assertThat(there).hasSize(written);
      Files.copy(file, file());
    } finally {
      assertThat(did("umount", small.toString())).isTrue();
    }

    int before = all().size();
    try (Results results = Results.in(file())) {
      results.add(Errands.result("one more"));
    }
    assertThat(all()).hasSize(before + 1);
  }

  private static boolean did(String... words) throws Exception {
    try {
      return new ProcessBuilder(words).start().waitFor() == 0;
    } catch (IOException notHere) {
      return false;
    }
  }

  private List<Result> all() throws IOException {
    List<Result> all = new ArrayList<>();
    Results.each(file(), all::add);
    return all;
  }
}
