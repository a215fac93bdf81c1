package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.solver.order.Amiss;
import ovenloom.solver.order.Option;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/** A schedule that is remembered comes to what it comes to when it is decoded. */
class MemoryTest {

  private static final int ORDERS = 60;
  private static int again;
  private static int told;

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {100, 200, 300, 400, 500, 600, 700, 800, 900, 1000})
  void what_is_remembered_is_what_would_be_decoded(long seed) throws IOException {
    Runs runs = Runs.of(supper(seed));
    Decoder decoder = new Decoder(runs);
    Trial remembering = trial(runs);
    List<Turn> turns = new ArrayList<>(new Turns(runs, decoder).open());
    List<Option> options = new Order(remembering, turns, runs.event().clock(), List.of()).getOptions();
    Random lot = new Random(seed);
    Set<Long> prints = new HashSet<>();

    for (int i = 0; i < ORDERS; i++) {
      change(turns, options, lot);
      Order order = new Order(remembering, turns, runs.event().clock(), List.of());
      Trial forgetful = trial(runs);

      assertThat(remembering.of(order)).isEqualTo(forgetful.of(order));
      assertThat(remembering.amiss().copy()).usingRecursiveComparison().isEqualTo(forgetful.amiss().copy());
      again += prints.add(decoder.print(decisions(turns))) ? 0 : 1;
      told += forgetful.of(order) > 0 ? 1 : 0;
    }
    assertThat(remembering.decoded()).as("what is remembered counts as tried").isEqualTo(ORDERS);
  }

  /** A law that is never put to the test holds easily. */
  @AfterAll
  static void many_were_tried_again() {
    assertThat(again).isPositive();
    assertThat(told).isPositive();
  }

  private static Trial trial(Runs runs) {
    return new Trial(runs, plan -> List.of());
  }

  /** The supper of a seed, or of the first after it that could be. */
  private Event supper(long seed) throws IOException {
    for (long each = seed; each < seed + 100; each++) {
      Path file = Files.writeString(folder.resolve("supper.yaml"), RandomSupper.of(each));
      if (ProblemFile.read(file, folder,
          null) instanceof Reading.Understood<Event>(var event, var sources, var notes)) {
        return event;
      }
    }
    throw new AssertionError("none of a hundred suppers could be");
  }

  /** Two neighbours change places in the queue; or one thing is decided otherwise. */
  private static void change(List<Turn> turns, List<Option> options, Random lot) {
    int one = lot.nextInt(turns.size() - 1);
    switch (lot.nextInt(4)) {
      case 0 -> turns.get(one).setEarlier(5 * lot.nextInt(3));
      case 1 -> choose(options.get(lot.nextInt(options.size())), turns);
      default -> Collections.swap(turns, one, one + 1);
    }
  }

  private static void choose(Option option, List<Turn> turns) {
    Turn turn = turns.stream().filter(each -> each.getStep() == option.step()).findFirst().orElseThrow();
    switch (option.variable()) {
      case "start" -> turn.setStart(option.value());
      case "bake" -> turn.setBake(option.value());
      case "stay" -> turn.setStay(option.value());
      default -> turn.setTogether(option.value());
    }
  }

  @Test
  void what_is_asked_for_is_what_was_added_last_under_its_print() {
    Memory memory = new Memory();
    Memory.Known known = new Memory.Known(7, 1, 2, new Amiss(3));
    Memory.Known inItsPlace = new Memory.Known(7 + 4_096, 3, 4, new Amiss(3));

    memory.add(known);
    assertThat(memory.of(7)).isSameAs(known);
    assertThat(memory.of(7 + 4_096)).isNull();
    memory.add(inItsPlace);
    assertThat(memory.of(7)).isNull();
    memory.clear();
    assertThat(memory.of(7 + 4_096)).isNull();
  }

  private static Decisions decisions(List<Turn> turns) {
    Decisions decisions = Decisions.open(turns.size());
    for (int turn = 0; turn < turns.size(); turn++) {
      decisions.setStep(turn, turns.get(turn).getStep());
      turns.get(turn).tell(decisions);
    }
    return decisions;
  }
}
