package ovenloom.cli.calendar;

import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/**
 * A plan as a calendar file (RFC 5545). One of a later plan of the same event, taken into the same calendar, moves what is there and
 * calls off what is no longer to be done.
 */
public final class PlanCalendar {

  private final Event event;
  private final Calendar calendar = new Calendar();
  private final Cards cards;

  private PlanCalendar(Event event, @Nullable String cook, Instant now) {
    this.event = event;
    this.cards = new Cards(event, cook, now);
  }

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param cook whose; null for all
   * @param now when it is written, by which programs tell the later of two files
   */
  public static String of(Plan plan, @Nullable String cook, Instant now) {
    return new PlanCalendar(plan.event(), cook, now).write(Diary.of(plan, cook));
  }

  private String write(List<Entry> entries) {
    calendar.add(new ProdId("-//Ovenloom//Ovenloom//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    zone(entries);
    entries.stream().map(cards::card).forEach(this::add);
    Set<Slot> unused = new LinkedHashSet<>(Slots.of(event));
    entries.stream().map(Entry::slot).forEach(unused::remove);
    unused.stream().map(cards::calledOff).forEach(this::add);
    return new Folded(calendar.toString()).toString();
  }

  private void add(VEvent card) {
    calendar.add(card);
  }

  private void zone(List<Entry> entries) {
    ZoneId zone = event.calendar().zone();
    if (zone != null) {
      int from = entries.stream().mapToInt(entry -> entry.when().from()).min().orElse(event.to());
      calendar.add(new Changes(zone, event.calendar().instant(from), event.calendar().instant(event.to() + 1))
          .card());
    }
  }
}
