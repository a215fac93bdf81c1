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
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.solver.supper.Decoded;

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

  private static String supper(String cook, String kitchen, String dishes) {
    return """
        ovenloom: 1
        event: Served at the pass
        guests: 4
        courses: [{name: soup, at: 2027-06-12 18:30, served over: 10 min}, {name: supper, at: 2027-06-12 19:00, served over: 40 min}]
        cooks: [{name: Ines, hours: {on the day: 16:00-20:00}%s}]
        kitchen: {from: home%s}
        dishes:
        """
        .formatted(cook, kitchen) + dishes;
  }

  @Test
  void a_roast_is_carved_and_then_plated() throws IOException {
    Decoded decoded = Decoded.of(folder, supper("", "", """
          - dish: Roast
            course: supper
            steps:
              - {do: cook, takes: 30 min, burner: medium, in: casserole}
              - {do: carve, takes: 5 min, hands: throughout, in: carving board, serve: yes}
              - {do: plate, takes: 5 min, hands: throughout, in: platter, serve: yes}
        """));

    assertThat(decoded.breaks()).isEmpty();
    assertThat(decoded.plan().placement("Roast", "carve", 1).when()).isEqualTo(new Stretch(1140, 1145));
    assertThat(decoded.plan().placement("Roast", "plate", 1).when()).isEqualTo(new Stretch(1145, 1150));
  }

  @Test
  void what_is_eaten_off_the_soup_plates_waits_until_somebody_has_washed_them() throws IOException {
    Decoded decoded = Decoded.of(folder, supper(", breaks: {on the day: 18:40-19:00}",
        ", vessels: {deep plate: 4}", """
              - dish: Soup
                course: soup
                steps:
                  - {do: simmer, takes: 10 min, burner: medium, in: casserole}
                  - {do: serve, takes: 5 min, hands: throughout, serve: yes, in: {deep plate: 4}}
              - dish: Stew
                course: supper
                steps:
                  - {do: simmer, takes: 10 min, burner: medium, in: stock pot}
                  - {do: serve, takes: 5 min, hands: throughout, serve: yes, in: {deep plate: 4}}
            """)).first("Soup/serve");

    assertThat(decoded.breaks()).isEmpty();
    assertThat(decoded.plan().placement("Stew", "serve", 1).when().from()).isEqualTo(1145);
  }

  @Test
  void two_waves_that_are_served_together_wait_for_the_second() throws IOException {
    Decoded decoded = Decoded.of(folder, supper("", "", """
          - dish: Pizza
            course: supper
            portions: 2
            waves: yes
            steps:
              - {do: top, takes: 10 min, hands: throughout, in: baking tray, keeps: {counter: 2 h}}
              - {do: slice, takes: 5 min, hands: throughout, serve: yes, together: 2}
        """));

    assertThat(decoded.breaks()).isEmpty();
    assertThat(decoded.plan().placement("Pizza", "slice", 1).when().from()).isEqualTo(1160);
  }

  @Test
  void what_is_served_may_be_served_later_but_never_too_late() throws IOException {
    String stew = supper("", "", """
          - dish: Stew
            course: supper
            steps:
              - {do: simmer, takes: 10 min, burner: medium, in: stock pot, keeps: {burner: 1 h}}
              - {do: serve, takes: 5 min, hands: throughout, serve: yes}
        """);

    assertThat(Decoded.of(folder, stew).earlier("Stew/serve", 7).plan().placement("Stew", "serve", 1).when())
        .isEqualTo(new Stretch(1147, 1152));
    assertThat(
        Decoded.of(folder, stew).earlier("Stew/serve", 240).plan().placement("Stew", "serve", 1).when())
        .isEqualTo(new Stretch(1175, 1180));
  }

  private Event event() throws IOException {
    Path file = Files.writeString(folder.resolve("terrine.yaml"), TEN_PLATES_AT_A_TIME);
    return switch (ProblemFile.read(file, folder, null)) {
      case Reading.Understood<Event> read -> read.value();
      case Reading.Mistaken<Event> wrong -> throw new AssertionError(wrong.mistakes());
    };
  }
}
