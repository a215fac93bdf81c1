package ovenloom.model.audit;

import java.util.List;
import java.util.Random;

/** What a seed decides. */
final class Chance {

  private final Random random;

  Chance(long seed) {
    random = new Random(seed);
  }

  /** From one whole number to another, both of them included. */
  int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
