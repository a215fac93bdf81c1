package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody pulls the plug on a batch, again and again. */
class BatchKilledIT {

  private static final int RUNS = 300;
  private static final int KILLS = 20;
  /** Bytes after which it is killed at the latest, so that there are some lines left for the last. */
  private static final int A_FEW_LINES = 6_000;
  private static final int A_MOMENT = 900;

  @TempDir
  private Path folder;

  @Test
  void killed_twenty_times_it_comes_to_the_same_results_byte_for_byte() throws Exception {
    Files.copy(Path.of("../problems/first-soup.yaml"), folder.resolve("soup.yaml"));
    String guests = IntStream.rangeClosed(1, RUNS / 3)
        .mapToObj(Integer::toString)
        .collect(Collectors.joining(", "));
    Files.writeString(folder.resolve("it.yaml"), """
        ovenloom: 1
        what if: Soup for how many?
        event: soup.yaml
        axes:
          clock: [5 min, 10 min, 15 min]
          guests: [%s]
        """.formatted(guests));

    assertThat(batch("undisturbed").waitFor()).isZero();
    Random lot = new Random(20);
    for (int kill = 0; kill < KILLS; kill++) {
      killed(batch("disturbed"), lot);
    }
    int before = lines("disturbed").size();
    assertThat(batch("disturbed").waitFor()).isZero();

    assertThat(before).isBetween(1, RUNS - 1);
    assertThat(lines("undisturbed")).hasSize(RUNS);
    assertThat(lines("disturbed")).isEqualTo(lines("undisturbed"));
  }

  private Process batch(String name) throws Exception {
    var builder = new ProcessBuilder(Path.of("target/ovenloom/bin/ovenloom").toAbsolutePath().toString(),
        "batch",
        folder.resolve("it.yaml").toString(), "-o", folder.resolve(name).toString(), "--tries", "20")
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile());
    builder.environment().put("OVENLOOM_JAVA", System.getProperty("java.home"));
    return builder.start();
  }

  /** At a random moment: of four kills one as it begins, the others so many bytes on, most in the middle of a line. */
  private void killed(Process batch, Random lot) throws Exception {
    if (lot.nextInt(4) == 0) {
      Thread.sleep(lot.nextInt(A_MOMENT));
    } else {
      long enough = size() + lot.nextInt(1, A_FEW_LINES);
      while (size() < enough && batch.isAlive()) {
        Thread.sleep(1);
      }
    }
    batch.destroyForcibly().waitFor();
  }

  private long size() throws Exception {
    Path file = folder.resolve("disturbed/results.jsonl");
    return Files.exists(file) ? Files.size(file) : 0;
  }

  private List<String> lines(String name) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve(name).resolve("results.jsonl")));
    lines.sort(String::compareTo);
    return lines;
  }
}
