package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.measure.Stretch;

/**
 * A while as one line of letters.
 *
 * @param step minutes a letter stands for; the while begins and ends on a multiple of it
 */
record Strip(Stretch when, int step) {

  private static final List<Integer> STEPS = List.of(1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 60, 120, 240);

  /** Between the times of a ruler, minutes. */
  private static final List<Integer> INTERVALS = List.of(15, 30, 60, 120, 180, 360, 720, 1440);

  /** A time, and something before the next. */
  private static final int TIME = "13:30".length() + 2;

  /** In steps as fine as so many letters allow. */
  static Strip of(Stretch when, int letters) {
    return STEPS.stream()
        .map(step -> new Strip(aligned(when, step), step))
        .filter(strip -> strip.letters() <= letters)
        .findFirst()
        .orElseThrow();
  }

  private static Stretch aligned(Stretch when, int step) {
    return new Stretch(Math.floorDiv(when.from(), step) * step, -Math.floorDiv(-when.to(), step) * step);
  }

  int letters() {
    return when.minutes() / step;
  }

  /** The minutes that a letter stands for. */
  Stretch column(int letter) {
    return new Stretch(when.from() + letter * step, when.from() + (letter + 1) * step);
  }

  /** {@code 15:00---17:00---}; where no such time has room, the first minute: {@code 17:50--}. */
  String ruler(Clock clock, char rule) {
    int interval = INTERVALS.stream()
        .filter(each -> each >= TIME * step)
        .findFirst()
        .orElse(INTERVALS.getLast());
    StringBuilder ruler = new StringBuilder();
    while (ruler.length() < letters()) {
      int minute = column(ruler.length()).from();
      boolean isTold = Math.floorMod(minute, interval) == 0 && ruler.length() + TIME - 2 <= letters();
      ruler.append(isTold ? clock.column(minute) : rule);
    }
    return ruler.chars().anyMatch(letter -> letter != rule) ? ruler.toString() : first(clock, rule);
  }

  private String first(Clock clock, char rule) {
    String time = clock.column(when.from());
    return time + String.valueOf(rule).repeat(Math.max(0, letters() - time.length()));
  }

  /** What is there; of several things at once the letters take turns. */
  String drawn(StripLine line, char free) {
    StringBuilder drawn = new StringBuilder();
    for (int letter = 0; letter < letters(); letter++) {
      List<Character> there = line.during(column(letter));
      drawn.append(there.isEmpty() ? free : there.get(letter % there.size()).charValue());
    }
    return drawn.toString();
  }
}
