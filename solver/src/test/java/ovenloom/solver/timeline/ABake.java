package ovenloom.solver.timeline;

import java.util.ArrayList;
import java.util.List;

/** Bakes for tests: a minute each to load and to unload, and a door that may be opened. */
final class ABake {

  private record Middle(int at, int lasting) {}

  private final List<int[]> stages = new ArrayList<>();
  private int load = 1;
  private int unload = 1;
  private int shut;
  private long tags;
  private long avoids;
  private final List<Middle> middles = new ArrayList<>();

  private ABake() {}

  /** {@code aBake(30).at(HOT)}. */
  static ABake aBake(int minutes, int setting) {
    return new ABake().then(minutes, setting);
  }

  /** One more stage. */
  ABake then(int minutes, int setting) {
    stages.add(new int[]{minutes, setting});
    return this;
  }

  ABake load(int minutes) {
    load = minutes;
    return this;
  }

  ABake unload(int minutes) {
    unload = minutes;
    return this;
  }

  ABake shutFor(int minutes) {
    shut = minutes;
    return this;
  }

  /** Turned or basted. */
  ABake opensAt(int minute, int lasting) {
    middles.add(new Middle(minute, lasting));
    return this;
  }

  ABake tagged(long bits) {
    tags = bits;
    return this;
  }

  ABake avoiding(long bits) {
    avoids = bits;
    return this;
  }

  Bake bake() {
    return new Bake(
        stages.stream().mapToInt(stage -> stage[0]).toArray(),
        stages.stream().mapToInt(stage -> stage[1]).toArray(),
        load,
        unload,
        shut,
        middles.stream().mapToInt(Middle::at).toArray(),
        middles.stream().mapToInt(Middle::lasting).toArray(),
        tags,
        avoids);
  }
}
