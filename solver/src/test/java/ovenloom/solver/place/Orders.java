package ovenloom.solver.place;

import java.util.Random;
import java.util.stream.IntStream;

/** Orders of steps to try. */
final class Orders {

  private Orders() {}

  static int[] asWritten(int count) {
    return IntStream.range(0, count).toArray();
  }

  static int[] shuffled(int count, Random random) {
    int[] order = asWritten(count);
    for (int i = count - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      int step = order[i];
      order[i] = order[other];
      order[other] = step;
    }
    return order;
  }

  /** Takes a step out and puts it back elsewhere. */
  static int[] shifted(int[] order, Random random) {
    int from = random.nextInt(order.length);
    int to = random.nextInt(order.length);
    int[] shifted = order.clone();
    int step = shifted[from];
    if (from < to) {
      System.arraycopy(shifted, from + 1, shifted, from, to - from);
    } else {
      System.arraycopy(shifted, to, shifted, to + 1, from - to);
    }
    shifted[to] = step;
    return shifted;
  }
}
