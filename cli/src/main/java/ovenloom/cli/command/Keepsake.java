package ovenloom.cli.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.calendar.PlanCalendar;
import ovenloom.cli.list.PlanList;
import ovenloom.cli.page.PlanPage;
import ovenloom.model.plan.Plan;

/** What a plan can be kept as, beside itself. */
enum Keepsake {

  /** A page for phone and paper. */
  PAGE(".html"),

  /** Entries for a calendar. */
  CALENDAR(".ics"),

  /** A table. */
  LIST(".csv");

  private final String ending;

  Keepsake(String ending) {
    this.ending = ending;
  }

  /** By the ending of a file's name; null where that says nothing. */
  static @Nullable Keepsake called(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(each -> name.endsWith(each.ending)).findFirst().orElse(null);
  }

  /** Whether one cook can have their own. */
  boolean canBeOneCooks() {
    return switch (this) {
      case PAGE, LIST -> false;
      case CALENDAR -> true;
    };
  }

  /** Of all of a plan, or of a cook's own part of it. */
  String of(Plan plan, @Nullable String cook, Instant now) {
    return switch (this) {
      case PAGE -> PlanPage.of(plan);
      case CALENDAR -> PlanCalendar.of(plan, cook, now);
      case LIST -> PlanList.of(plan);
    };
  }

  /** All endings there are. */
  static final class Endings implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(values()).map(each -> each.ending).iterator();
    }
  }
}
