package ovenloom.model.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.measure.Stretch;

/** Reads when someone is there, or something can be used: stretches of the clock by day. */
final class HoursReader {

  static final Keys TAKEN = Keys.of("what is taken", "when", "count");

  private final Desk desk;
  private final Days days;

  HoursReader(Desk desk, Days days) {
    this.desk = desk;
    this.days = days;
  }

  /** The hours and what is taken of a thing; both may be absent. */
  Availability availability(Fields fields) {
    Written hours = fields.value("hours");
    Written taken = fields.value("taken");
    return new Availability(hours == null ? List.of() : hours(hours),
        taken == null ? List.of() : taken(taken));
  }

  /** Stretches by day, in order; those that touch are one. */
  List<Stretch> hours(Written written) {
    List<Stretch> all = new ArrayList<>();
    for (Written.Entry entry : desk.entries(written, "hours", "on the day: 9:00-13:00")) {
      LocalDate day = desk.read(entry.key(), days::day);
      List<Days.Clock> clocks = desk.each(entry.value(), each -> desk.read(each, Days::stretch));
      if (day != null) {
        clocks.forEach(clock -> all.add(stretch(day, clock)));
      }
    }
    return joined(all);
  }

  private List<Availability.Taken> taken(Written written) {
    List<Availability.Taken> all = new ArrayList<>();
    for (Written.Entry entry : desk.entries(written, "taken", "on the day: 9:00-13:00")) {
      LocalDate day = desk.read(entry.key(), days::day);
      for (Written each : desk.items(entry.value())) {
        taken(day == null ? days.calendar().day() : day, each, all);
      }
    }
    return all;
  }

  private void taken(LocalDate day, Written written, List<Availability.Taken> all) {
    Days.Clock clock;
    int count = 1;
    if (written instanceof Written.Keyed) {
      Fields fields = desk.fields(written, TAKEN);
      clock = fields.needed("when", Days::stretch);
      count = fields.read("count", Scalars::count, 1);
    } else {
      clock = desk.read(written, Days::stretch);
    }
    if (clock != null) {
      all.add(new Availability.Taken(stretch(day, clock), count));
    }
  }

  private Stretch stretch(LocalDate day, Days.Clock clock) {
    return new Stretch(days.minuteOf(day, clock.from()), days.minuteOf(day, clock.to()));
  }

  private static List<Stretch> joined(List<Stretch> all) {
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next : all.stream().sorted(Comparator.comparingInt(Stretch::from)).toList()) {
      Stretch last = joined.isEmpty() ? null : joined.getLast();
      if (last != null && next.from() <= last.to()) {
        joined.set(joined.size() - 1, new Stretch(last.from(), Math.max(last.to(), next.to())));
      } else {
        joined.add(next);
      }
    }
    return joined;
  }
}
