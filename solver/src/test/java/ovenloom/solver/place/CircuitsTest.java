package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Event;

/** A ring on which an oven of 3 kW, a plate of 2 kW and a mixer of 2.5 kW hang, and a blender and a stove on none. */
class CircuitsTest {

  private static final String KITCHEN = """
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2027-06-12 19:00}]
      cooks: [{name: Ines, hours: {on the day: 8:00-20:00}}]
      kitchen:
        ovens:
          - name: oven
            circuit: ring
            heating: 3 kW
            racks: [{size: 45 x 38 cm, clear: 15 cm}]
          - name: stove
            racks: [{size: 45 x 38 cm, clear: 15 cm}]
        burners:
          - {name: plate, size: small, power: 2 kW, circuit: ring}
        appliances:
          mixer: {count: 1, draws: 2.5 kW, circuit: ring}
          blender: {count: 1, draws: 5 kW}
        vessels:
          tray: {count: 1, size: 42 x 30 x 3 cm}
        circuits: {ring: LIMIT}
      dishes:
        - dish: Sauce
          steps:
            - {do: simmer, takes: 30 min, burner: small, hands: throughout}
        - dish: Cream
          steps:
            - {do: whisk, takes: 20 min, appliance: mixer, hands: throughout}
        - dish: Soup
          steps:
            - {do: blend, takes: 20 min, appliance: blender, hands: throughout}
        - dish: Bread
          steps:
            - {do: bake, takes: 40 min, bake: {at: 220 C}, in: tray}
      """;

  private static final int SAUCE = 0;
  private static final int CREAM = 1;
  private static final int SOUP = 2;
  private static final int BREAD = 3;

  private static final int OVEN = 0;
  private static final int STOVE = 1;

  private static final int NOON = 720;

  /** What a break costs, and so many minutes. */
  private static final int BROKEN = 30;

  @TempDir
  private Path folder;

  private Draft draft(String limit) throws IOException {
    Path file = Files.writeString(folder.resolve("supper.yaml"), KITCHEN.replace("LIMIT", limit));
    Event event = switch (ProblemFile.read(file, folder, null)) {
      case Reading.Understood<Event> read -> read.value();
      case Reading.Mistaken<Event> wrong -> throw new AssertionError(wrong.mistakes());
    };
    return new Draft(Runs.of(event));
  }

  private static void put(Draft draft, int run, int from) {
    draft.start[run] = from;
    draft.end[run] = from + draft.runs().runs().get(run).minutes();
  }

  private static void sauceAtNoon(Draft draft) {
    put(draft, SAUCE, NOON);
    draft.burners[SAUCE] = new int[]{0};
  }

  private static long shortfall(Draft draft) {
    new Circuits(draft.runs()).check(draft);
    return draft.shortfall();
  }

  @Test
  void a_plate_and_a_mixer_are_too_much_for_the_minutes_they_share() throws IOException {
    Draft draft = draft("4.4 kW");
    sauceAtNoon(draft);
    put(draft, CREAM, NOON + 25);

    assertThat(shortfall(draft)).isEqualTo(BROKEN + 5);
  }

  @Test
  void what_a_ring_just_gives_may_be_drawn() throws IOException {
    Draft draft = draft("4.5 kW");
    sauceAtNoon(draft);
    put(draft, CREAM, NOON + 5);

    assertThat(shortfall(draft)).isZero();
  }

  @Test
  void the_cream_may_be_whisked_the_minute_the_plate_is_free() throws IOException {
    Draft draft = draft("3 kW");
    sauceAtNoon(draft);
    put(draft, CREAM, NOON + 30);

    assertThat(shortfall(draft)).isZero();
  }

  @Test
  void what_hangs_on_no_ring_draws_nothing_from_it() throws IOException {
    Draft draft = draft("3 kW");
    sauceAtNoon(draft);
    put(draft, CREAM, NOON + 60);
    put(draft, SOUP, NOON);
    breadAtNoon(draft, STOVE);

    assertThat(shortfall(draft)).isZero();
  }

  @Test
  void a_pot_that_waits_on_its_plate_draws_on_the_ring_too() throws IOException {
    Draft draft = draft("4.4 kW");
    sauceAtNoon(draft);
    put(draft, CREAM, NOON + 35);
    draft.waits.set(0, List.of(WaitPart.onBurners(new int[]{0}, NOON + 30, NOON + 40)));

    assertThat(shortfall(draft)).isEqualTo(BROKEN + 5);
  }

  @Test
  void an_oven_draws_from_the_minute_it_is_switched_on() throws IOException {
    Draft draft = draft("5.4 kW");
    breadAtNoon(draft, OVEN);
    put(draft, CREAM, NOON - preheat(draft) - 20);
    assertThat(shortfall(draft)).as("before it is warmed").isZero();

    put(draft, CREAM, NOON - preheat(draft) - 19);
    assertThat(shortfall(draft)).as("as it is switched on").isEqualTo(BROKEN + 1);
  }

  @Test
  void an_oven_draws_until_the_bread_is_out() throws IOException {
    Draft draft = draft("5.4 kW");
    breadAtNoon(draft, OVEN);
    put(draft, CREAM, NOON + 40);
    assertThat(shortfall(draft)).isZero();

    put(draft, CREAM, NOON + 39);
    assertThat(shortfall(draft)).isEqualTo(BROKEN + 1);
  }

  private static void breadAtNoon(Draft draft, int oven) {
    Runs runs = draft.runs();
    put(draft, BREAD, NOON);
    draft.choice[BREAD] = new BakeChoices(runs.event(), runs.minutes()).of(runs.runs().get(BREAD))
        .getFirst()
        .stream()
        .filter(choice -> choice.oven() == oven)
        .findFirst()
        .orElseThrow();
  }

  private static int preheat(Draft draft) {
    Warmth warmth = draft.runs().event().kitchen().ovens().getFirst().warmth();
    return warmth.minutes(warmth.room(), Temperature.celsius(220));
  }
}
