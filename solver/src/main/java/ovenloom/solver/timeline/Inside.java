package ovenloom.solver.timeline;

import java.util.Arrays;

/** What is put into an oven, in the order in which it was thought of. */
final class Inside {

  int count;
  int[] start = new int[16];
  Bake[] bake = new Bake[16];
  int[] owner = new int[16];

  void add(int from, Bake what, int whose) {
    if (count == start.length) {
      start = Arrays.copyOf(start, 2 * count);
      bake = Arrays.copyOf(bake, 2 * count);
      owner = Arrays.copyOf(owner, 2 * count);
    }
    start[count] = from;
    bake[count] = what;
    owner[count++] = whose;
  }

  int end(int which) {
    return start[which] + bake[which].minutes();
  }

  boolean isSet(int setting) {
    for (int i = 0; i < count; i++) {
      for (int stage = 0; stage < bake[i].stages(); stage++) {
        if (bake[i].setting(stage) == setting) {
          return true;
        }
      }
    }
    return false;
  }

  /** Of those that go in by a moment, the one that comes out last; below 0 if there is none. */
  int lastOutOf(int moment) {
    int last = -1;
    for (int i = 0; i < count; i++) {
      if (start[i] <= moment && (last < 0 || end(i) > end(last))) {
        last = i;
      }
    }
    return last;
  }
}
