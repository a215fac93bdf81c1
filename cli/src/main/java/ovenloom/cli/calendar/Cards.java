package ovenloom.cli.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;

/** Entries as a calendar file has them. */
final class Cards {

  /** Line breaks, which the library writes as such, tabs, and what joins several pictures to one. */
  private static final String ALLOWED = "\n\t\u200D";

  private final Event event;
  private final @Nullable String cook;
  private final Instant now;
  private final Zoned zoned;
  private final Clock clock;

  Cards(Event event, @Nullable String cook, Instant now) {
    this.event = event;
    this.cook = cook;
    this.now = now.truncatedTo(ChronoUnit.SECONDS);
    this.zoned = new Zoned(event.calendar());
    this.clock = new Clock(event.calendar());
  }

  VEvent card(Entry entry) {
    VEvent card = card(entry.slot());
    zoned.stretch(entry.when()).forEach(card::add);
    String title = harmless(entry.headline() + cooks(entry));
    card.add(new Summary(title));
    if (!entry.acts().isEmpty()) {
      card.add(new Description(harmless(entry.description(clock))));
    }
    card.add(ImmutableStatus.VEVENT_CONFIRMED);
    card.add(entry.cooks().isEmpty() ? ImmutableTransp.TRANSPARENT : ImmutableTransp.OPAQUE);
    if (entry.rings()) {
      card.setComponentList(new ComponentList<>(List.of(alarm(title))));
    }
    return card;
  }

  /** At the end of the service, where it is in nobody's way if it is shown at all. */
  VEvent calledOff(Slot slot) {
    VEvent card = card(slot);
    zoned.stretch(new Stretch(event.to(), event.to() + 1)).forEach(card::add);
    card.add(new Summary("Not in this plan"));
    card.add(ImmutableStatus.VEVENT_CANCELLED);
    card.add(ImmutableTransp.TRANSPARENT);
    return card;
  }

  /** Of two with one UID the greater sequence counts, then the later stamp (RFC 5546, 2.1.5); minutes since 1970 grow by themselves. */
  private VEvent card(Slot slot) {
    VEvent card = new VEvent(false);
    card.add(new Uid(slot.uid(event, cook)));
    card.add(new DtStamp(now));
    card.add(new LastModified(now));
    card.add(new Sequence(Math.toIntExact(now.getEpochSecond() / 60)));
    return card;
  }

  /** When it begins, and not before: a minute early is a minute in which something else is to be done. */
  private static VAlarm alarm(String title) {
    VAlarm alarm = new VAlarm();
    alarm.add(new Trigger(new ParameterList(List.of(Related.START)), Duration.ZERO));
    alarm.add(ImmutableAction.DISPLAY);
    alarm.add(new Description(title));
    return alarm;
  }

  private String cooks(Entry entry) {
    boolean isPlain = cook != null || event.cooks().size() < 2 || entry.cooks().isEmpty();
    return isPlain ? "" : " (" + String.join(", ", entry.cooks()) + ")";
  }

  private static String harmless(String words) {
    return Harmless.words(words.replaceAll("\\R", "\n"), ALLOWED);
  }
}
