package ovenloom.model.file;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Range;

/** Minutes as they are written. */
final class Times {

  private Times() {}

  static String written(int minutes) {
    return Range.exactly(minutes).written();
  }

  /** Nothing where there are none. */
  static @Nullable String orAbsent(@Nullable Integer minutes) {
    return minutes == null ? null : written(minutes);
  }
}
