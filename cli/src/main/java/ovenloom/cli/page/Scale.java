package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;

/**
 * Whole numbers on a line of a picture, with some room at both ends.
 *
 * @param step from one number that is written to the next
 */
record Scale(long from, long to, long step) {

  private static final int TICKS = 6;
  private static final int ROOM = 8;

  /** For all numbers from one to another. */
  static Scale of(long least, long most) {
    long room = Math.max(1, (most - least) / ROOM);
    return new Scale(least - room, most + room, step(most - least + 2 * room));
  }

  /** 1, 2 or 5 with noughts. */
  private static long step(long range) {
    long step = 1;
    while (range / step > TICKS) {
      boolean isTwo = Long.toString(step).startsWith("2");
      step = isTwo ? step / 2 * 5 : step * 2;
    }
    return step;
  }

  /** How far along a number is, in percent. */
  double percent(long number) {
    return 100.0 * (number - from) / (to - from);
  }

  String at(long number) {
    return written(percent(number));
  }

  /** The same from the other end. */
  String down(long number) {
    return written(100 - percent(number));
  }

  private static String written(double percent) {
    return String.format(Locale.ROOT, "%.2f%%", percent);
  }

  /** The numbers that are written. */
  List<Long> ticks() {
    return LongStream.rangeClosed(Math.ceilDiv(Math.max(0, from), step), Math.floorDiv(to, step))
        .map(count -> count * step)
        .boxed()
        .toList();
  }
}
