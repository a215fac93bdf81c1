package ovenloom.solver.place;

import static java.util.stream.IntStream.range;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;

/** Plates that go out at the pass, one batch after the other. */
class ServingTest {

  private static final String TEN_PLATES_AT_A_TIME = """
      ovenloom: 1
      event: Terrine for thirty
      guests: 30
      courses: [{name: starter, at: 2027-06-12 19:00, served over: 30 min}]
      cooks: [{name: Ines, hours: {on the day: 17:00-20:00}}]
      dishes:
        - dish: Terrine
          portions: 10
          arrives: cold
          steps:
            - {do: slice, takes: 5 min, hands: throughout, keeps: {fridge: 2 h}}
            - {do: plate, takes: 4 min, hands: throughout, serve: yes}
      """;

  @TempDir
  private Path folder;

  @Test
  void the_first_ten_plates_go_out_first_whatever_is_thought_of_first() throws IOException {
    Runs runs = Runs.of(event());
    int count = runs.work().steps().size();

    for (int[] order : new int[][]{range(0, count).toArray(),
        range(0, count).map(run -> count - 1 - run).toArray()}) {
      Decisions decisions = Decisions.open(count);
      range(0, count).forEach(turn -> decisions.setStep(turn, order[turn]));

      Draft draft = new Decoder(runs).decode(decisions);

      int seven = 19 * 60;
      assertThat(runs.runs().stream().filter(run -> run.step().serve()).map(run -> draft.start[run.index()]))
          .containsExactly(seven, seven + 4, seven + 8);
    }
  }

  private Event event() throws IOException {
    Path file = Files.writeString(folder.resolve("terrine.yaml"), TEN_PLATES_AT_A_TIME);
    return switch (ProblemFile.read(file, folder, null)) {
      case Reading.Understood<Event> read -> read.value();
      case Reading.Mistaken<Event> wrong -> throw new AssertionError(wrong.mistakes());
    };
  }
}
