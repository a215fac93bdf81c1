package ovenloom.solver.place;

import static java.util.stream.IntStream.range;
import static java.util.stream.IntStream.rangeClosed;
import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.solver.place.ACook.aCook;
import static ovenloom.solver.place.ACook.withBreak;
import static ovenloom.solver.place.ARun.aRun;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.solver.timeline.Timeline;

/** Cooks looked at minute by minute. */
class CrewLawTest {

  private static final int FROM = -20;
  private static final int TO = 200;

  private record Busy(int cook, int from, int to, int door) {}

  private final List<Busy> all = new ArrayList<>();

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Hands that work together may be free one by one before they are all free; a search that goes on finds when. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void hands_are_found_as_if_every_minute_were_looked_at(long seed) {
    var random = new Random(seed);
    List<Cook> cooks = cooks(random);
    var crew = new Crew(cooks, FROM, TO);

    for (int turn = 0; turn < 40; turn++) {
      int minutes = 4 + random.nextInt(20);
      HandsNeed need = need(random, minutes);
      int door = random.nextInt(2);
      Run run = aRun(turn, need);
      int asked = random.nextInt(TO) - 10;

      int start = crew.latestStart(asked, run.hands(), minutes, door);
      while (start > Timeline.NONE && crew.latestStart(start, run.hands(), minutes, door) < start) {
        start = crew.latestStart(start, run.hands(), minutes, door);
      }

      assertThat(start).as("turn %d, %s", turn, need).isEqualTo(latest(cooks, asked, need, minutes, door));
      if (start != Timeline.NONE) {
        var taken = Objects.requireNonNull(crew.take(start, run, need, minutes, door));
        int tag = need.isDoor() ? door : -1;
        taken.cooks()
            .forEach(cook -> assertThat(isFree(cooks, cook, taken.from(), taken.to(), tag)).isTrue());
        taken.cooks().forEach(cook -> all.add(new Busy(cook, taken.from(), taken.to(), tag)));
      }
    }
  }

  private static List<Cook> cooks(Random random) {
    List<Cook> cooks = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      int from = random.nextInt(60);
      Cook cook = random.nextBoolean() ? aCook("Ines", from, TO - 10, "carving")
          : aCook("Tom", from, TO - 10);
      cooks.add(withBreak(cook, 80 + 10 * i, 95 + 10 * i));
    }
    return cooks;
  }

  private static HandsNeed need(Random random, int minutes) {
    return switch (random.nextInt(4)) {
      case 0 -> new HandsNeed(Act.LOAD, 0, 1 + random.nextInt(2), 0, 1, null);
      case 1 -> new HandsNeed(Act.UNLOAD, -2, 2, 0, 1, null);
      case 2 -> new HandsNeed(Act.WORK, random.nextInt(minutes - 2), 2, 3, 1, null);
      default -> new HandsNeed(Act.WORK, 0, HandsNeed.TO_THE_END, 0, 1 + random.nextInt(2),
          random.nextBoolean() ? "carving" : null);
    };
  }

  private int latest(List<Cook> cooks, int asked, HandsNeed need, int minutes, int door) {
    for (int start = asked; start >= FROM; start--) {
      int begin = start;
      int lasting = need.lasting(minutes);
      boolean found = rangeClosed(-need.slip(), need.slip())
          .map(slip -> need.offset(minutes) + slip)
          .filter(offset -> offset >= 0 && offset + lasting <= minutes)
          .anyMatch(offset -> enough(cooks, begin + offset, begin + offset + lasting, need, door));
      if (found) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private boolean enough(List<Cook> cooks, int from, int to, HandsNeed need, int door) {
    int tag = need.isDoor() ? door : -1;
    List<Cook> free = range(0, cooks.size()).filter(cook -> isFree(cooks, cook, from, to, tag))
        .mapToObj(cooks::get)
        .toList();
    return free.size() >= need.cooks()
        && (need.skill() == null || free.stream().anyMatch(cook -> cook.skills().contains(need.skill())));
  }

  private boolean isFree(List<Cook> cooks, int cook, int from, int to, int tag) {
    Stretch hours = cooks.get(cook).hours().getFirst();
    Stretch pause = cooks.get(cook).breaks().getFirst();
    return range(from, to).allMatch(minute -> hours.from() <= minute && minute < hours.to()
        && (minute < pause.from() || pause.to() <= minute)
        && all.stream()
            .filter(busy -> busy.cook == cook && busy.from <= minute && minute < busy.to)
            .allMatch(busy -> busy.door >= 0 && busy.door == tag && busy.from == from));
  }
}
